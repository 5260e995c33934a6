import { withDecision } from '../../compare/changed-decisions.ts';
import type { Quantity } from '../../language/quantity-formats.ts';
import type { Words } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import { type Decision, decisionTable } from '../../model/decisions.ts';
import { totalKg } from '../../model/lot.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { predictions } from '../../predict/predictions.ts';
import { guessQuantity } from '../season/predict-text.ts';

/** Two ways to decide at a station, and what is counted of each. */
interface StationChoices {
  readonly sides: (scenario: Scenario) => readonly [Scenario, Scenario];
  /** Left out, it is the station's own question that is answered. */
  readonly outcome?: (season: Season, words: Words) => Quantity | null;
}

type Value = number | string | boolean;
/** A decision put to a value, held to its limits. */
function put(scenario: Scenario, station: StationId, key: string, value: Value): Scenario {
  const decision = (decisionTable[station] as Readonly<Record<string, Decision>>)[key]!;
  const held = decision.kind === 'number' ? Math.min(decision.high, Math.max(decision.low, Number(value))) : value;
  return withDecision(scenario, { station, key }, held);
}
const either =
  (station: StationId, key: string, one: Value, other: Value) =>
  (scenario: Scenario): readonly [Scenario, Scenario] => [
    put(scenario, station, key, one),
    put(scenario, station, key, other),
  ];

/** Four weeks, days. */
const early = -28;
const sownEarly = (scenario: Scenario): readonly [Scenario, Scenario] => [
  scenario,
  put(scenario, 'planting', 'plantingDayOfYear', scenario.decisions.planting.plantingDayOfYear + early),
];
/** A coarser yarn, and a weave with more room: the count and the threads to the inch by this share. */
const coarser = 0.6;
const opener = 0.8;

/** How many pounds of lint are baled from a hundred of the load. */
function turnout({ module, pressing }: Season, { formats }: Words): Quantity | null {
  if (!module || !pressing) return null;
  const lintKg = pressing.bales.reduce((sum, { netKg }) => sum + netKg, 0);
  return formats.percentage((100 * lintKg) / totalKg(module.lot), 1);
}

const choices: Readonly<Record<StationId, StationChoices>> = {
  planting: { sides: sownEarly },
  bloom: { sides: either('bloom', 'irrigationInches', 0, 12) },
  boll: { sides: either('planting', 'variety', 'uplandMedium', 'pima') },
  harvest: { sides: either('harvest', 'method', 'spindle', 'stripper') },
  module: { sides: either('harvest', 'moisturePercent', 8, 15) },
  cleaning: {
    sides: (scenario) => [
      put(put(scenario, 'cleaning', 'cylinderCleaners', 0), 'cleaning', 'stickMachines', 0),
      put(put(scenario, 'cleaning', 'cylinderCleaners', 3), 'cleaning', 'stickMachines', 2),
    ],
  },
  ginning: { sides: either('ginning', 'lintCleaners', 0, 3), outcome: turnout },
  pressing: { sides: either('pressing', 'netPounds', 470, 510) },
  classing: { sides: either('planting', 'variety', 'uplandShort', 'uplandLong') },
  spinning: {
    sides: (scenario) => [
      scenario,
      put(scenario, 'spinning', 'countNe', Math.round(scenario.decisions.spinning.countNe * coarser)),
    ],
  },
  weaving: { sides: either('weaving', 'finish', 'grey', 'bleached') },
  sewing: {
    sides: (scenario) => {
      const { endsPerInch, picksPerInch } = scenario.decisions.weaving;
      const ends = put(scenario, 'weaving', 'endsPerInch', Math.round(endsPerInch * opener));
      return [scenario, put(ends, 'weaving', 'picksPerInch', Math.round(picksPerInch * opener))];
    },
  },
};

/** Two seasons of one farm and one year that differ by one choice. */
export const seasonsOfChoice = ({ scenario, seed }: Season, station: StationId): readonly [Season, Season] => {
  const [one, other] = choices[station].sides(scenario);
  return [runSeason(one, seed, null), runSeason(other, seed, null)];
};

/** What the station's question comes to in a season, written out; null where it did not come so far. */
export function stationNumber(season: Season, station: StationId, words: Words): string | null {
  const { answer, quantity } = predictions[station];
  const value = answer(season);
  return value === null ? null : guessQuantity(quantity, value, words).text;
}

/** What is counted where a station's two choices are set side by side, written out. */
export function choiceNumber(season: Season, station: StationId, words: Words): string | null {
  const { outcome } = choices[station];
  return outcome ? (outcome(season, words)?.text ?? null) : stationNumber(season, station, words);
}
