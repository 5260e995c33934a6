import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { spreadFree } from '../../teach/plan/change-plan.ts';
import { freeMinutes } from '../../teach/plan/plan.ts';
import { encodePlan } from '../../teach/plan/plan-link.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { hashOf } from '../route.ts';
import { AddStop } from './add-stop.tsx';
import { KeepPlan } from './keep-plan.tsx';
import { PlanNeedsList } from './plan-needs-list.tsx';
import { planProblems } from './plan-problems.ts';
import { PlanStop } from './plan-stop.tsx';
import { PlanStrip } from './plan-strip.tsx';
import { PaperDoors } from './sheets/paper-doors.tsx';
import { usePlan } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';
import { WishForm } from './wish-form.tsx';

export interface PlannerProps {
  readonly query: string;
  readonly teach: TeachWords;
}

/** The plan of a segment: the wish, the stops in order with their minutes, and what to have ready. */
export function Planner({ query, teach }: PlannerProps) {
  const words = useWords();
  const { formats } = words;
  const { said } = teach;
  const hand = usePlan(query);
  const [told, setTold] = useState('');
  const { plan, unread, undo } = hand;
  const free = freeMinutes(plan);
  const minutes = formats.count(plan.minutes);
  return (
    <>
      <div class="teach-head">
        <h1 class="page-title">{said.title}</h1>
        <p class="page-lead">{said.lead}</p>
      </div>
      {planProblems(unread, words, said).map((line) => (
        <p key={line} class="address-note" role="status">
          {line}
        </p>
      ))}
      <WishForm hand={hand} said={said} onTold={setTold} />
      <section class="teach-plan" aria-labelledby="teach-plan">
        <h2 id="teach-plan">{fill(said.heading, { about: said.focuses[plan.focus], minutes })}</h2>
        <PlanStrip plan={plan} />
        <div class="teach-sum">
          <p>
            <b>{free > 0 ? formats.plural(free, said.free) : fill(said.addsUp, { minutes })}</b>
          </p>
          {free > 0 && plan.stops.length > 0 ? (
            <PatchButton onPress={() => hand.set(spreadFree(plan))}>{said.spread}</PatchButton>
          ) : null}
          {undo ? (
            <PatchButton
              onPress={() => {
                undo();
                setTold(said.undone);
              }}
            >
              {said.undo}
            </PatchButton>
          ) : null}
          <p class="teach-told" role="status">
            {told}
          </p>
        </div>
        {plan.stops.length === 0 ? <p>{said.empty}</p> : null}
        <ol class="teach-stops">
          {plan.stops.map((planned, place) => (
            <PlanStop key={planned.id} place={place} planned={planned} hand={hand} teach={teach} onTold={setTold} />
          ))}
        </ol>
        <AddStop hand={hand} teach={teach} onTold={setTold} />
        <p class="caption">{said.practice}</p>
      </section>
      <aside class="teach-side">
        <div class="teach-doors">
          <a
            class="patch teach-door"
            data-ink="madder"
            data-cut="2"
            href={hashOf({ page: 'teach', id: 'show', query: encodePlan(plan) })}
          >
            {said.show}
          </a>
          <a
            class="patch teach-door"
            data-ink="weld"
            data-cut="1"
            href={hashOf({ page: 'teach', id: 'class', query: encodePlan(plan) })}
          >
            {said.classLink}
          </a>
          <a
            class="patch teach-door"
            data-cut="3"
            href={hashOf({ page: 'teach', id: 'notes', query: encodePlan(plan) })}
            target="seamfield-notes"
          >
            {said.notes}
          </a>
          <a class="patch teach-door" data-cut="1" href={hashOf({ page: 'teach', id: 'guild', query: plan.season })}>
            {said.guild}
          </a>
        </div>
        <PaperDoors season={plan.season} />
        <PlanNeedsList plan={plan} said={said} />
        <KeepPlan hand={hand} said={said} onTold={setTold} />
      </aside>
    </>
  );
}
