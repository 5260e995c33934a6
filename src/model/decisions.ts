import type { StationId } from './station.ts';

/** A number a visitor may set, with the limits inside which the balance stays meaningful. */
export interface NumberDecision {
  readonly kind: 'number';
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly unit: DecisionUnit;
}
/** One of a few named ways. */
export interface ChoiceDecision<Option extends string = string> {
  readonly kind: 'choice';
  readonly options: readonly Option[];
}
/** Yes or no. */
export interface SwitchDecision {
  readonly kind: 'switch';
}
export type Decision = NumberDecision | ChoiceDecision | SwitchDecision;

export type DecisionUnit =
  | 'dayOfYear'
  | 'inches'
  | 'perFoot'
  | 'percent'
  | 'days'
  | 'count'
  | 'fahrenheit'
  | 'pounds'
  | 'Ne'
  | 'perInch';

const number = (low: number, high: number, step: number, unit: DecisionUnit) =>
  ({ kind: 'number', low, high, step, unit }) as const;
const choice = <const Option extends string>(...options: Option[]) => ({ kind: 'choice', options }) as const;
const yesNo = { kind: 'switch' } as const;

/**
 * Every decision of a season, by station. This one table gives the controls, the limits, the validation of scenario files
 * and the share link; nothing else states a limit.
 */
export const decisionTable = {
  planting: {
    plantingDayOfYear: number(60, 191, 1, 'dayOfYear'),
    variety: choice('uplandShort', 'uplandMedium', 'uplandLong', 'pima'),
    rowInches: number(15, 40, 1, 'inches'),
    seedsPerFoot: number(1, 8, 0.25, 'perFoot'),
  },
  bloom: {
    irrigationInches: number(0, 48, 1, 'inches'),
  },
  boll: {
    harvestAid: yesNo,
    openPercent: number(20, 95, 5, 'percent'),
  },
  harvest: {
    method: choice('hand', 'spindle', 'stripper', 'stripperFieldCleaner'),
    daysToHarvest: number(0, 60, 1, 'days'),
    pickings: number(1, 3, 1, 'count'),
    moisturePercent: number(6, 18, 0.5, 'percent'),
  },
  module: {
    kind: choice('round', 'conventional', 'wagon'),
    cover: choice('good', 'poor', 'none'),
    storageDays: number(0, 90, 1, 'days'),
  },
  cleaning: {
    dryers: number(0, 2, 1, 'count'),
    dryerAirF: number(80, 350, 10, 'fahrenheit'),
    cylinderCleaners: number(0, 3, 1, 'count'),
    stickMachines: number(0, 2, 1, 'count'),
  },
  ginning: {
    stand: choice('saw', 'roller'),
    lintCleaner: choice('saw', 'roller', 'air'),
    lintCleaners: number(0, 3, 1, 'count'),
    moistureAddedPoints: number(0, 3, 0.5, 'percent'),
  },
  pressing: {
    netPounds: number(470, 510, 1, 'pounds'),
    restoreToPercent: number(4, 8, 0.5, 'percent'),
  },
  classing: {
    market: choice('southeast', 'sanJoaquin', 'eastTexas', 'westTexas'),
    moduleAveraging: yesNo,
  },
  spinning: {
    system: choice('ringCarded', 'ringCombed', 'rotor'),
    countNe: number(4, 120, 1, 'Ne'),
    noilPercent: number(8, 20, 1, 'percent'),
  },
  weaving: {
    structure: choice('plain', 'twill', 'sateen', 'jersey'),
    endsPerInch: number(20, 220, 1, 'perInch'),
    picksPerInch: number(20, 200, 1, 'perInch'),
    finish: choice('grey', 'scoured', 'bleached', 'mercerised', 'printed'),
  },
  sewing: {
    prewash: yesNo,
    seamInches: number(0.25, 0.625, 0.125, 'inches'),
  },
} as const satisfies Record<StationId, Record<string, Decision>>;

type ValueOf<D> = D extends ChoiceDecision<infer Option> ? Option : D extends SwitchDecision ? boolean : number;
type Table = typeof decisionTable;
/** The decisions of one station. */
export type DecisionsOf<Station extends StationId> = {
  readonly [Key in keyof Table[Station]]: ValueOf<Table[Station][Key]>;
};
/** Every decision of a season. */
export type Decisions = { readonly [Station in StationId]: DecisionsOf<Station> };
