import { useMemo } from 'preact/hooks';
import { useWords } from '../../../language/words.ts';
import { encodePlan } from '../../../teach/plan/plan-link.ts';
import { showSteps } from '../../../teach/show/show-steps.ts';
import { openPlan } from '../use-plan.ts';
import { showWords } from './show-words.ts';
import { useShow } from './use-show.ts';

/** The plan of a link as it is shown: its steps, where the show stands, and the words of the wall and the notes. @param query the link's query */
export function useShownPlan(query: string) {
  const { language } = useWords();
  const plan = useMemo(() => openPlan(query).plan, [query]);
  const planQuery = encodePlan(plan);
  const steps = useMemo(() => showSteps(plan), [plan]);
  return { plan, planQuery, steps, said: showWords(language), ...useShow(planQuery, steps) };
}
