import type { ClassingOutcome } from '../classing/class-bales.ts';
import type { WeavingOutcome } from '../cloth/weave.ts';
import type { FieldSeason } from '../field/field-season.ts';
import { harvestFacts } from '../harvest/facts.ts';
import type { MassEntry, MassLedger } from '../ledger.ts';
import { meanLengthMm } from '../length/statistics.ts';
import { totalDryKg, totalKg } from '../lot.ts';
import type { SpinningOutcome } from '../mill/spin.ts';
import { moduleFacts } from '../module/facts.ts';
import type { Scenario } from '../scenario.ts';
import type { StationId } from '../station.ts';
import { KILO, ouncesPerSquareYardFromGsm } from '../units.ts';
import type { ChainAverages } from './chain-averages.ts';

/** What the trace reads of a season. */
export interface TracedSeason {
  readonly scenario: Scenario;
  readonly field: FieldSeason;
  readonly classing: ClassingOutcome | null;
  readonly spinning: SpinningOutcome | null;
  readonly weaving: WeavingOutcome | null;
  readonly ledgers: readonly MassLedger[];
}

/** Masses of a whole season where they pass from one link to the next, kg, as they lay on the scale. */
export interface SeasonMasses {
  /** Picked, the whole field's. */
  readonly bolls: number;
  /** Seed cotton in them. */
  readonly grownKg: number;
  /** As it came to the gin. */
  readonly deliveredKg: number;
  readonly lintKg: number;
  readonly seedKg: number;
  /** Trash of the cleaners and waste of the lint cleaners. */
  readonly ginWasteKg: number;
  /** Lint behind the card; null where nothing was spun. */
  readonly cardedKg: number | null;
  readonly yarnKg: number | null;
  /** Yarn and size left at the loom as hard waste; null where nothing was woven. */
  readonly loomWasteKg: number | null;
  readonly clothKg: number | null;
  readonly clothSquareMetres: number | null;
}

const entryKg = ({ dryKg, waterKg }: MassEntry): number => totalDryKg(dryKg) + waterKg;

function sumKg(ledgers: readonly MassLedger[], station: StationId, side: 'in' | 'out', accounts: readonly string[]) {
  const entries: readonly MassEntry[] = ledgers.find((each) => each.station === station)?.[side] ?? [];
  return entries.reduce((sum, entry) => (accounts.includes(entry.account) ? sum + entryKg(entry) : sum), 0);
}

/** Reads a season's masses off its ledgers; null where no lint was pressed. */
export function seasonMasses({ scenario, field, spinning, weaving, ledgers }: TracedSeason): SeasonMasses | null {
  const sum = (station: StationId, side: 'in' | 'out', ...accounts: string[]) =>
    sumKg(ledgers, station, side, accounts);
  const lintKg = sum('pressing', 'out', 'lot');
  const bolls = field.bollsPerPlant * field.plantsPerAcre * scenario.acres;
  if (!(lintKg > 0 && bolls > 0)) return null;
  const carded = spinning?.yarn ? spinning.steps.find(({ machine }) => machine === 'card') : undefined;
  const cloth = weaving?.cloth ?? null;
  return {
    bolls,
    grownKg: sum('harvest', 'in', 'grown'),
    deliveredKg: sum('cleaning', 'in', 'lot'),
    lintKg,
    seedKg: sum('ginning', 'out', 'seedHouse'),
    ginWasteKg: sum('cleaning', 'out', 'ginTrash') + sum('ginning', 'out', 'ginTrash', 'lintCleanerWaste'),
    cardedKg: carded ? totalKg(carded.out) : null,
    yarnKg: carded ? sum('spinning', 'out', 'lot') : null,
    loomWasteKg: cloth ? sum('weaving', 'out', 'hardWaste') : null,
    clothKg: cloth ? sum('weaving', 'out', 'lot') : null,
    clothSquareMetres: cloth ? cloth.squareMetres : null,
  };
}

/** What a season's masses make of one another, link by link; nothing for a link that it did not come to. */
export function massAverages(masses: SeasonMasses): Partial<ChainAverages> {
  const { bolls, grownKg, deliveredKg, lintKg, yarnKg, cardedKg, loomWasteKg, clothKg } = masses;
  return {
    ginTurnout: lintKg / deliveredKg,
    deliveredPerGrown: deliveredKg / grownKg,
    bollGrams: (grownKg * KILO) / bolls,
    seedPerLint: masses.seedKg / lintKg,
    ginWastePerLint: masses.ginWasteKg / lintKg,
    ...(yarnKg !== null && cardedKg !== null
      ? { yarnRealisation: yarnKg / lintKg, battingYield: cardedKg / lintKg }
      : {}),
    ...(yarnKg !== null && loomWasteKg !== null && clothKg !== null
      ? { weavingYield: (yarnKg - loomWasteKg) / yarnKg, finishingYield: clothKg / (yarnKg - loomWasteKg) }
      : {}),
  };
}

/** The averages of a season's own chain, as far as it went: none where no lint was pressed. */
export function seasonAverages(season: TracedSeason): Partial<ChainAverages> {
  const masses = seasonMasses(season);
  if (!masses) return {};
  const { scenario, field, classing, spinning } = season;
  const { decisions } = scenario;
  const stripped = decisions.harvest.method === 'stripper' || decisions.harvest.method === 'stripperFieldCleaner';
  const lint = classing?.lot.fibre;
  return {
    ...massAverages(masses),
    bollsPerPlant: field.bollsPerPlant,
    plantsPerAcre: field.plantsPerAcre,
    rowInches: decisions.planting.rowInches,
    rainInches: field.seasonWaterInches.rain,
    irrigationInches: field.seasonWaterInches.irrigation,
    machineAcresPerHour: (stripped ? harvestFacts.stripperAcresPerHour : harvestFacts.pickerAcresPerHour).value,
    moduleLb: moduleFacts[decisions.module.kind].seedCottonLb.value,
    ...(lint ? { fibreMtex: lint.linearDensityMtex, fibreLengthMm: meanLengthMm(lint.lengths, 'number') } : {}),
    ...(spinning?.yarn ? { yarnNe: decisions.spinning.countNe } : {}),
  };
}

/** Weight of a season's own cloth, oz/yd2, off its scale and its length; null where none was woven. */
export function seasonClothOunces(season: TracedSeason): number | null {
  const masses = seasonMasses(season);
  if (!masses?.clothKg || !masses.clothSquareMetres) return null;
  return ouncesPerSquareYardFromGsm((masses.clothKg * KILO) / masses.clothSquareMetres);
}
