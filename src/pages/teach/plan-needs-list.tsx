import { useWords } from '../../language/words.ts';
import type { Plan } from '../../teach/plan/plan.ts';
import { planNeeds } from '../../teach/plan/plan-needs.ts';
import { loadLessonWords } from '../lessons/lesson-words.ts';
import { loadGlossary } from '../lessons/load-glossary.ts';
import { useLoaded } from '../lessons/use-loaded.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface PlanNeedsListProps {
  readonly plan: Plan;
  readonly said: TeachWords['said'];
}

/** What to have ready, the words the class meets, and the standards the plan touches. */
export function PlanNeedsList({ plan, said }: PlanNeedsListProps) {
  const { language } = useWords();
  const glossary = useLoaded(() => loadGlossary(language), [language]);
  const lessons = useLoaded(() => loadLessonWords(language), [language]);
  const { materials, vocabulary, standards } = planNeeds(plan);
  return (
    <>
      <section class="teach-needs" aria-labelledby="teach-needs">
        <h2 id="teach-needs">{said.needs}</h2>
        <ul>
          <li>{said.projector}</li>
          {materials.map((id) => (
            <li key={id}>{said.stops.materials[id]}</li>
          ))}
        </ul>
      </section>
      <section class="teach-needs" aria-labelledby="teach-words">
        <h2 id="teach-words">{said.vocabulary}</h2>
        <dl>
          {glossary
            ? vocabulary.map((id) => (
                <div key={id}>
                  <dt>{glossary[id]!.term}</dt>
                  <dd>{glossary[id]!.says}</dd>
                </div>
              ))
            : null}
        </dl>
      </section>
      <section class="teach-needs" aria-labelledby="teach-standards">
        <h2 id="teach-standards">{said.standards}</h2>
        <dl>
          {lessons
            ? standards.map((code) => (
                <div key={code}>
                  <dt>{code}</dt>
                  <dd>{lessons.standardsSay[code]}</dd>
                </div>
              ))
            : null}
        </dl>
      </section>
    </>
  );
}
