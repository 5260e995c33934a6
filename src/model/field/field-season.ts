import type { CountLedger } from '../ledger.ts';
import type { Lot } from '../lot.ts';
import type { FruitCalendar } from './fruit-calendar.ts';
import type { Variety } from './varieties.ts';

/** One day of the field, as the mean plant stands that evening. */
export interface FieldDay {
  readonly dayOfYear: number;
  readonly dd60: number;
  readonly dd60SincePlanting: number;
  /** Arizona heat units, 55 to 86 °F. */
  readonly hu8655SincePlanting: number;
  readonly maxF: number;
  readonly minF: number;
  readonly rainInches: number;
  readonly irrigationInches: number;
  /** 0 none, 1 wilted. */
  readonly waterStress: number;
  /** Water in the root zone over what it can hold. */
  readonly soilWaterFraction: number;
  /** Main-stem nodes above the seed leaves. */
  readonly nodes: number;
  /** Null while no first-position flower is white. */
  readonly nodesAboveWhiteFlower: number | null;
  readonly plantHeightInches: number;
  /** Mean numbers for one plant. Green bolls hold no flower of today. */
  readonly perPlant: {
    readonly squares: number;
    readonly flowersToday: number;
    readonly greenBolls: number;
    readonly openBolls: number;
    readonly shed: number;
  };
  /** Open bolls, percent of the bolls kept. */
  readonly openPercent: number;
}

/** Days of the year on which the mean plant passed its stages; null for a stage not reached. */
interface FieldEvents {
  readonly emerged: number | null;
  readonly firstSquare: number | null;
  readonly firstFlower: number | null;
  readonly cutOut: number | null;
  readonly firstOpenBoll: number | null;
  readonly harvestAid: number | null;
  readonly killingFrost: number | null;
}

/** Why a crop came to nothing. */
export interface FieldStop {
  readonly station: 'planting' | 'bloom' | 'boll';
  readonly reason: 'neverEmerged' | 'killedByFrost' | 'neverSquared' | 'neverFlowered' | 'noBollOpened';
  /** DD60 from planting to the end. */
  readonly dd60: number;
  /** DD60 from planting that the stage not reached would have needed; null where heat was not the lack. */
  readonly dd60Needed: number | null;
}

/** What stands in the open bolls on the day of picking. */
export interface FieldCrop {
  /** Seed cotton before weather loss, whole field: lint, seed and motes, air-dry. */
  readonly grown: Lot;
  /** Share of it that rain has taken since opening. */
  readonly weatheredFraction: number;
  readonly openPercentAtHarvest: number;
  /** Leaf still on the plant, 0 to 1. */
  readonly leafRemaining: number;
  readonly rainAfterOpeningInches: number;
  /** Days an open boll waited, mean over the lint. */
  readonly daysOpenMean: number;
  /** Air-dry lint before weather loss, lb/acre. */
  readonly lintLbPerAcre: number;
}

/** A season in the field. */
export interface FieldSeason {
  readonly variety: Variety;
  readonly plantedDay: number;
  /** Days of the year; several only for hand picking. Empty when the crop failed. */
  readonly harvestDays: readonly number[];
  readonly events: FieldEvents;
  /** From planting to the last picking, or to the end of the season when it fails. */
  readonly days: readonly FieldDay[];
  readonly stopped: FieldStop | null;
  /** Whole field: planting, bloom, boll. */
  readonly counts: readonly CountLedger[];
  readonly dd60PlantingToHarvest: number;
  readonly nodesAboveWhiteFlowerAtFirstFlower: number | null;
  /** Shares of the lint by position; zero when the crop failed. */
  readonly yieldShares: {
    readonly first: number;
    readonly second: number;
    readonly third: number;
    readonly vegetative: number;
  };
  /** Bolls picked from one plant. */
  readonly bollsPerPlant: number;
  readonly plantsPerAcre: number;
  /** Bolls picked from a foot of row, and how many such bolls would make one 480-lb bale an acre; null when there is none. */
  readonly bollsPerRowFoot: { readonly picked: number; readonly forOneBale: number | null };
  /** Mean seed cotton of a picked boll, g, air-dry; 0 when there is none. */
  readonly bollGrams: number;
  /** Mean lint of a picked boll, g, air-dry; 0 when there is none. */
  readonly lintGramsPerBoll: number;
  readonly seasonWaterInches: { readonly rain: number; readonly irrigation: number; readonly used: number };
  readonly crop: FieldCrop | null;
  /** When each square, flower and boll of the mean plant came and went: what a sampled plant is drawn from. */
  readonly calendar: FruitCalendar;
}
