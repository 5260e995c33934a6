import type { Plan, PlannedStop } from '../plan/plan.ts';
import { stopOf } from '../plan/stop-list.ts';

/** One picture on the wall. */
export type ShowStep =
  /** What the show is about, while the room comes in; before every stop. */
  | { readonly phase: 'title'; readonly place: -1; readonly stop: null }
  /** A whole stop, or its question and then its answer. */
  | {
      readonly phase: 'whole' | 'ask' | 'see';
      /** Place of the stop in the plan. */
      readonly place: number;
      readonly stop: PlannedStop;
    };

const title: ShowStep = { phase: 'title', place: -1, stop: null };

/** The steps of a plan in order, its title first: what has an answer is asked first and seen after. */
export const showSteps = ({ stops }: Plan): readonly ShowStep[] => [
  title,
  ...stops.flatMap((stop, place): ShowStep[] => {
    const kind = stopOf(stop.id)?.aim.kind;
    const isAsked = kind === 'station' || kind === 'question' || kind === 'bench';
    const phases = isAsked ? (['ask', 'see'] as const) : (['whole'] as const);
    return phases.map((phase) => ({ place, stop, phase }));
  }),
];
