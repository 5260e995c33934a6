import type { PracticeId } from '../checks/practice.ts';
import type { Season } from '../model/season.ts';
import type { OutcomeKey } from '../model/season-outcomes.ts';
import type { StationId } from '../model/station.ts';
import { type BaleKey, baleWorking } from './bale.ts';
import { bloomWorkings } from './bloom.ts';
import { bollWorkings } from './boll.ts';
import { classingWorkings } from './classing.ts';
import { cleaningWorkings } from './cleaning.ts';
import { type CountPlace, countWorking } from './counts.ts';
import { arrayWorking, type FibreKey, fibreWorking } from './fibre.ts';
import { ginningWorkings } from './ginning.ts';
import { harvestWorkings } from './harvest.ts';
import { type JourneyPlace, journeyWorking } from './journey.ts';
import { type LedgerPlace, ledgerWorking } from './ledger.ts';
import { moduleWorkings } from './module.ts';
import { type MoneyKey, moneyWorking } from './money.ts';
import { differencePrinted } from './outcome-style.ts';
import { colourWorking, outcomeWorking } from './outcomes.ts';
import { plantingWorkings } from './planting.ts';
import { practiceWorking } from './practice.ts';
import { pressingWorkings } from './pressing.ts';
import { type SeedKey, seedWorking } from './seed.ts';
import { sewingWorkings } from './sewing.ts';
import { spinningWorkings } from './spinning.ts';
import { above, procedure, type StationWorkings, step } from './steps.ts';
import { weavingWorkings } from './weaving.ts';
import type { Step, Working } from './working.ts';

/** Which number of the season is to be explained. */
export type Asked =
  | { readonly topic: 'reading'; readonly station: StationId; readonly key: string }
  | { readonly topic: 'fibre'; readonly index: number; readonly key: FibreKey }
  | { readonly topic: 'bale'; readonly number: number; readonly key: BaleKey }
  | { readonly topic: 'money'; readonly key: MoneyKey; readonly perBale: boolean }
  | { readonly topic: 'seed'; readonly key: SeedKey }
  | {
      readonly topic: 'ledger';
      readonly station: StationId;
      readonly oneBale: boolean;
      readonly decimals: number;
      /** Where in the table it stands: tells its numbers apart. */
      readonly at: string;
      readonly place: LedgerPlace;
    }
  | { readonly topic: 'count'; readonly place: CountPlace }
  /** A length of the fibre card's array. */
  | { readonly topic: 'array'; readonly index: number; readonly share: number; readonly laid: number }
  /** This season's figure beside what practitioners say. */
  | { readonly topic: 'practice'; readonly id: PracticeId }
  /** A value whose steps the page itself knows, such as one of a picture. */
  | {
      readonly topic: 'seen';
      /** Where it stands on the page: tells its numbers apart. */
      readonly at: string;
      readonly text: string;
      readonly steps: readonly Step[];
      /** A number that is worked out before those. */
      readonly after?: Asked;
    }
  /** What a season is compared by, or the usual color of its bales. */
  | { readonly topic: 'outcome'; readonly key: OutcomeKey | 'colour' }
  /** What a season has over another. */
  | {
      readonly topic: 'difference';
      readonly key: OutcomeKey | 'colour';
      /** The other season, from which the difference is counted. */
      readonly before: Season;
      /** What the page calls the other season, and this one. */
      readonly names: readonly [before: string, after: string];
      /** How the page says it, where that is more than the number. */
      readonly said?: string;
    }
  /** One part's mass on its way through the whole chain. */
  | ({ readonly topic: 'journey' } & JourneyPlace);

/** The figures of each station. */
export const stationWorkings: Readonly<Record<StationId, StationWorkings>> = {
  planting: plantingWorkings,
  bloom: bloomWorkings,
  boll: bollWorkings,
  harvest: harvestWorkings,
  module: moduleWorkings,
  cleaning: cleaningWorkings,
  ginning: ginningWorkings,
  pressing: pressingWorkings,
  classing: classingWorkings,
  spinning: spinningWorkings,
  weaving: weavingWorkings,
  sewing: sewingWorkings,
};

const linesOf = (working: Working): readonly Step[] =>
  working.kind === 'procedure' ? working.steps : [...working.inputs, ...working.first];

/** The lines of a working, to go before others. */
function stepsFirst(season: Season, asked: Asked | undefined): readonly Step[] {
  const working = asked ? workOut(season, asked) : null;
  return working ? linesOf(working) : [];
}

/** How each of two seasons came by its number, and the one less the other; null where one has no such thing. */
function differenceWorking(after: Season, asked: Extract<Asked, { topic: 'difference' }>): Working | null {
  const { key, before, names, said } = asked;
  const sides: Step[] = [];
  const values: number[] = [];
  for (const [at, season] of [before, after].entries()) {
    const working = workOut(season, { topic: 'outcome', key });
    if (!working) return null;
    const of = names[at]!;
    sides.push(...linesOf(working).map((line) => ({ ...line, of })));
    sides.push(step({ label: of }, working.result, above));
    if ('value' in working.result) values.push(working.result.value);
  }
  const [from, to] = values;
  if (key === 'colour' || from === undefined || to === undefined)
    return said === undefined ? null : procedure(sides, { as: 'text', text: said });
  const difference = differencePrinted(key, to - from);
  if (said === undefined) return procedure(sides, difference);
  return procedure([...sides, step('difference', difference, above)], { as: 'text', text: said });
}

/** The working of a number of a season; null where the season shows no such number. */
export function workOut(season: Season, asked: Asked): Working | null {
  switch (asked.topic) {
    case 'reading':
      return stationWorkings[asked.station][asked.key]?.(season) ?? null;
    case 'fibre':
      return fibreWorking(season, asked.index, asked.key);
    case 'bale':
      return baleWorking(season, asked.number, asked.key);
    case 'money':
      return moneyWorking(season, asked.key, asked.perBale);
    case 'seed':
      return seedWorking(season, asked.key);
    case 'ledger':
      return ledgerWorking(season, asked.station, asked.oneBale, asked.decimals, asked.place);
    case 'count':
      return countWorking(season, asked.place);
    case 'array':
      return arrayWorking(season, asked.index, asked.share, asked.laid);
    case 'practice':
      return practiceWorking(season, asked.id);
    case 'seen':
      return procedure([...stepsFirst(season, asked.after), ...asked.steps], { as: 'text', text: asked.text });
    case 'outcome':
      return asked.key === 'colour' ? colourWorking(season) : outcomeWorking(season, asked.key);
    case 'difference':
      return differenceWorking(season, asked);
    case 'journey':
      return journeyWorking(season, asked);
  }
}
