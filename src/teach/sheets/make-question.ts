import type { UnitSystem } from '../../language/unit-system.ts';
import { openStream } from '../../model/random.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { bales } from './kinds/bales.ts';
import { clothWeight } from './kinds/cloth-weight.ts';
import { conversions } from './kinds/conversions.ts';
import { ginBalance } from './kinds/gin-balance.ts';
import { heat } from './kinds/heat.ts';
import { layout } from './kinds/layout.ts';
import { staple } from './kinds/staple.ts';
import { trace } from './kinds/trace.ts';
import { turnout } from './kinds/turnout.ts';
import { yarn } from './kinds/yarn.ts';
import type { Level, QuestionBody, QuestionKind } from './question.ts';
import { agrees } from './rounding.ts';
import { sheetSeason } from './sheet-season.ts';

/** Every kind of question, from the field to the sewing table. */
export const questionKinds = {
  heat,
  ginBalance,
  turnout,
  bales,
  staple,
  yarn,
  clothWeight,
  conversions,
  layout,
  trace,
} as const satisfies Readonly<Record<string, QuestionKind>>;
export type KindId = keyof typeof questionKinds;
export const kindIds = Object.keys(questionKinds) as KindId[];

/** A question for one pupil. */
export interface Question extends QuestionBody {
  readonly kind: KindId;
  readonly level: Level;
  readonly units: UnitSystem;
}

/** Numbers of pupils that a sheet may carry. */
export const pupilLimits = { low: 1, high: 9999 } as const;
const mostTries = 60;
const levelsPerKind = 4;
/** Pupils beside each other are given numbers far apart. Prime, so that every number has its turn. */
const turn = 37;

/**
 * The question of a kind and level for a pupil: the same every time. Numbers where the sum on paper and the model's own
 * function would round to different answers are drawn anew.
 * @param pupil number of the sheet, 1 to 9999
 * @param run the class's season, of which each pupil has one of a number of its own; null for farms in turn
 * @throws Error when sixty draws in a row do not agree
 */
export function makeQuestion(
  kind: KindId,
  level: Level,
  pupil: number,
  units: UnitSystem,
  run: SavedRun | null = null,
): Question {
  const season = sheetSeason(pupil, run);
  const inTurn = (low: number, high: number) => low + ((pupil * turn) % (high - low + 1));
  for (let tries = 0; tries < mostTries; tries++) {
    const place = (tries * kindIds.length + kindIds.indexOf(kind)) * levelsPerKind + level;
    const body = questionKinds[kind][level]({
      random: openStream(pupil, 'sheets', place),
      inTurn,
      season,
      units,
    });
    if (body.asks.every(agrees)) return { ...body, kind, level, units };
  }
  throw new Error(`no numbers found for ${kind} ${level} of sheet ${pupil}`);
}
