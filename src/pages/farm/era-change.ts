import { farms } from '../../model/farms.ts';
import type { Era, Scenario } from '../../model/scenario.ts';
import { notInTheThirties } from '../season/decisions-panel.tsx';

/** The one of the six farms that lies in the 1930s. */
export const thirtiesFarm: Scenario = farms.find(({ era }) => era === 'thirties')!;

/**
 * A farm moved to another time. What no gin of the 1930s had cannot be decided there, so it is set as on the farm of that
 * time; on the way back it stays, in sight again.
 */
export function inEra(scenario: Scenario, era: Era): Scenario {
  if (era === 'present') return { ...scenario, era };
  const decisions = structuredClone(scenario.decisions) as Record<string, Record<string, number | string | boolean>>;
  const then = thirtiesFarm.decisions as Readonly<Record<string, Readonly<Record<string, number | string | boolean>>>>;
  for (const place of notInTheThirties) {
    const [station = '', key = ''] = place.split('/');
    decisions[station]![key] = then[station]![key]!;
  }
  return { ...scenario, era, decisions: decisions as unknown as Scenario['decisions'] };
}
