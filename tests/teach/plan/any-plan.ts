import { proposePlan } from '../../../src/teach/plan/propose-plan.ts';
import { audiences, focuses, segmentMinutes } from '../../../src/teach/plan/stop.ts';

export const season = 'v=1&farm=coastal-plain&seed=7';

/** Every wish a teacher can have, and the plan it leads to. */
export const everyPlan = segmentMinutes.flatMap((minutes) =>
  audiences.flatMap((audience) =>
    focuses.map((focus) => ({
      name: `${minutes} minutes, ${audience}, ${focus}`,
      plan: proposePlan({ minutes, audience, focus }, season),
    })),
  ),
);
