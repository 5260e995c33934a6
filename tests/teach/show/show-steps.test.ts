import { expect, test } from 'vitest';
import { stopOf } from '../../../src/teach/plan/stop-list.ts';
import { showSteps } from '../../../src/teach/show/show-steps.ts';
import { everyPlan } from '../plan/any-plan.ts';

test('the title, then every stop in order; what has an answer is asked and then seen, the rest is one step', () => {
  for (const { plan } of everyPlan) {
    const [title, ...steps] = showSteps(plan);
    expect(title!.phase).toBe('title');
    expect([...new Set(steps.map(({ place }) => place))]).toEqual(plan.stops.map((_, i) => i));
    for (const [place, { id }] of plan.stops.entries()) {
      const phases = steps.filter((step) => step.place === place).map(({ phase }) => phase);
      const asked = ['station', 'question', 'bench'].includes(stopOf(id)!.aim.kind);
      expect(phases).toEqual(asked ? ['ask', 'see'] : ['whole']);
    }
  }
});
