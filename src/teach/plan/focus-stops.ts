import { type Audience, audiences, type Focus } from './stop.ts';

/** A stop in the order of a focus: the lower its rank, the sooner it is chosen; who it is for. */
export interface RankedStop {
  readonly id: string;
  readonly rank: number;
  readonly for: readonly Audience[];
}

const grown: readonly Audience[] = ['teens', 'adults', 'guild'];
const sewers: readonly Audience[] = ['adults', 'guild'];
const young: readonly Audience[] = ['children', 'teens'];
const children: readonly Audience[] = ['children'];
const school: readonly Audience[] = ['children', 'teens', 'adults'];
const is = (id: string, rank: number, who: readonly Audience[] = audiences): RankedStop => ({ id, rank, for: who });
/** First and last of every plan. */
const opening = is('opening', 0);
const recap = is('recap', 0);

/** What each focus can hold, in the order of teaching. Our own choice, as a teacher would make it. */
export const focusStops: Readonly<Record<Focus, readonly RankedStop[]>> = {
  cloth: [
    opening,
    is('pullThread', 2, school),
    is('biasPull', 3, sewers),
    is('lesson-what-a-fiber-is', 8, grown),
    is('at-planting', 7, school),
    is('at-boll', 3),
    is('at-harvest', 9),
    is('ask-by-hand', 9, grown),
    is('at-ginning', 4),
    is('at-spinning', 5, grown),
    is('at-weaving', 6),
    is('bench-flannel', 7, sewers),
    is('at-sewing', 1),
    is('lesson-one-boll-one-patch', 6, young),
    recap,
  ],
  staple: [
    opening,
    is('fiberPinch', 2),
    is('lesson-what-a-fiber-is', 7, young),
    is('at-boll', 3, children),
    is('pullThread', 5, children),
    is('lesson-staple-length', 6, school),
    is('at-ginning', 9),
    is('ask-saw-or-roller', 8, grown),
    is('at-classing', 3, grown),
    is('at-spinning', 1),
    is('ask-one-staple', 5, grown),
    is('bench-pilling', 4, grown),
    is('bench-lawn', 7, sewers),
    is('bench-thread', 8, sewers),
    is('lesson-uniformity-and-short-fiber', 9, grown),
    is('at-sewing', 4, children),
    is('at-weaving', 8, children),
    recap,
  ],
  pound: [
    opening,
    is('hundredSquares', 2, school),
    is('at-harvest', 6),
    is('at-cleaning', 5),
    is('seedByHand', 4),
    is('ask-seed-and-lint', 6, grown),
    is('at-ginning', 1),
    is('lesson-inside-a-gin', 7),
    is('ask-third-lint-cleaning', 5, sewers),
    is('ask-where-the-seed-goes', 3),
    is('at-pressing', 8),
    is('at-spinning', 9, grown),
    is('at-sewing', 9),
    recap,
  ],
  money: [
    opening,
    is('tenCounters', 2, school),
    is('at-harvest', 6, children),
    is('ask-by-hand', 4),
    is('lesson-from-hand-to-spindle', 7),
    is('ask-stripper-or-picker', 6, grown),
    is('ask-rain', 8, grown),
    is('ask-third-lint-cleaning', 5, grown),
    is('at-pressing', 3),
    is('at-classing', 4, grown),
    is('ask-who-gets-the-money', 1),
    is('bench-lawn', 8, sewers),
    is('at-sewing', 5, children),
    recap,
  ],
  weather: [
    opening,
    is('at-planting', 1),
    is('lesson-a-plants-summer', 8),
    is('at-bloom', 4),
    is('at-boll', 5),
    is('ask-good-and-bad-years', 2, grown),
    is('ask-forty-or-eighty', 7, sewers),
    is('ask-rain', 3),
    is('at-harvest', 8),
    is('dampCotton', 3, children),
    is('dampCotton', 4, ['teens', 'adults']),
    is('at-module', 6),
    is('ask-wet-module', 6, grown),
    is('at-sewing', 9, children),
    recap,
  ],
};
