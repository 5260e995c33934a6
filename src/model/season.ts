import type { ClassingOutcome } from './classing/class-bales.ts';
import type { Payments } from './classing/payments.ts';
import type { SewingOutcome } from './cloth/sew.ts';
import type { WeavingOutcome } from './cloth/weave.ts';
import type { Fibre } from './fibre.ts';
import type { FieldSeason } from './field/field-season.ts';
import type { WeatherYear } from './field/weather.ts';
import type { CleaningOutcome } from './gin/clean.ts';
import type { GinningOutcome, GinningStage } from './gin/gin-lot.ts';
import type { PressingOutcome } from './gin/press.ts';
import type { HarvestOutcome } from './harvest/harvest.ts';
import type { MassLedger } from './ledger.ts';
import type { SpinningOutcome } from './mill/spin.ts';
import type { ModuleOutcome } from './module/store.ts';
import type { Scenario } from './scenario.ts';
import type { StationId } from './station.ts';

/** Where in the chain a fibre was read. */
export type FibrePlace = 'boll' | 'harvest' | 'seedCottonCleaning' | GinningStage | 'card' | 'comber';

/** Where and why a season ended early. A failed crop, or a yarn or cloth that cannot be made, is a result, not an error. */
export interface SeasonStop {
  readonly station: StationId;
  readonly reason: string;
  /** Heat from planting to the end of the season, DD60; null when the crop was fine. */
  readonly dd60: number | null;
  /** Heat that the stage not reached needed, DD60; null where heat was not the lack. */
  readonly dd60Needed: number | null;
}

/** A whole season: what each station did. A station past the stop is null. */
export interface Season {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly weather: WeatherYear;
  readonly field: FieldSeason;
  readonly harvest: HarvestOutcome | null;
  readonly module: ModuleOutcome | null;
  readonly cleaning: CleaningOutcome | null;
  readonly ginning: GinningOutcome | null;
  readonly pressing: PressingOutcome | null;
  readonly classing: ClassingOutcome | null;
  /** Who is paid what. */
  readonly payments: Payments | null;
  readonly spinning: SpinningOutcome | null;
  readonly weaving: WeavingOutcome | null;
  readonly sewing: SewingOutcome | null;
  /** One mass ledger for each station from Harvest on, as far as the season went. */
  readonly ledgers: readonly MassLedger[];
  readonly fibreTrail: readonly { readonly after: FibrePlace; readonly fibre: Fibre }[];
  readonly stopped: SeasonStop | null;
}
