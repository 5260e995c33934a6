import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { farms } from '../../model/farms.ts';
import type { Problem } from '../../model/problem.ts';
import { decodeRun, encodeRun } from '../../statechart/saved-run.ts';
import type { Plan } from '../../teach/plan/plan.ts';
import { planFileText, readPlanFile } from '../../teach/plan/plan-file.ts';
import { decodePlan, encodePlan, firstWish } from '../../teach/plan/plan-link.ts';
import { proposePlan } from '../../teach/plan/propose-plan.ts';
import { lastRun } from '../last-run.ts';
import { hashOf } from '../route.ts';

const place = 'seamfield.plan.1';

/** The plan that the device keeps; null where it keeps none that can be read. */
function keptPlan(): Plan | null {
  try {
    const read = readPlanFile(localStorage.getItem(place) ?? '', place);
    return read.ok ? read.value : null;
  } catch {
    return null;
  }
}

function keepPlan(plan: Plan): void {
  try {
    localStorage.setItem(place, planFileText(plan));
  } catch {
    // The address holds the plan as well.
  }
}

/** The season a plan begins with: the one that is open, or the first farm's first. */
const firstSeason = (): string => lastRun() ?? encodeRun({ scenario: farms[0]!, seed: 1 });

/** What of a link could not be used, in problems: pieces of the plan, then pieces of the season. */
export function openPlan(query: string): { readonly plan: Plan; readonly problems: readonly Problem[] } {
  if (query === '') return { plan: keptPlan() ?? proposePlan(firstWish, firstSeason()), problems: [] };
  const { plan, problems } = decodePlan(query);
  if (plan.season === '') return { plan: { ...plan, season: firstSeason() }, problems };
  const { run, ignored } = decodeRun(plan.season);
  const lost = ignored.map(
    (piece): Problem => ({ field: 'season', value: piece, rule: { kind: 'type', expected: 'the link of a season' } }),
  );
  return { plan: { ...plan, season: encodeRun(run) }, problems: [...problems, ...lost] };
}

/** The open plan, kept on the device and in the address, and the way to change it. */
export interface PlanHand {
  readonly plan: Plan;
  /** What of the link could not be read. */
  readonly unread: readonly Problem[];
  readonly set: (plan: Plan) => void;
  /** Brings back the plan before the last change; null where there was none. */
  readonly undo: (() => void) | null;
}

/** How many changes can be taken back. */
const longestPast = 50;

export function usePlan(query: string): PlanHand {
  const opened = useMemo(() => openPlan(query), []);
  const [plans, setPlans] = useState<readonly Plan[]>([opened.plan]);
  const plan = plans[0]!;
  useEffect(() => {
    keepPlan(plan);
    const hash = hashOf({ page: 'teach', id: '', query: encodePlan(plan) });
    if (location.hash !== hash) history.replaceState(history.state, '', hash);
  }, [plan]);
  // A link followed within the page, or typed over its address.
  const read = useRef(query);
  useEffect(() => {
    if (query === read.current || query === '') return;
    read.current = query;
    setPlans((before) => [openPlan(query).plan, ...before]);
  }, [query]);
  return {
    plan,
    unread: opened.problems,
    set: (next) => next !== plan && setPlans([next, ...plans].slice(0, longestPast)),
    undo: plans.length > 1 ? () => setPlans(plans.slice(1)) : null,
  };
}
