import { useEffect, useRef, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { stopOf } from '../../../teach/plan/stop-list.ts';
import { hashOf } from '../../route.ts';
import { PlanStrip } from '../plan-strip.tsx';
import { stopText } from '../stop-text.ts';
import type { TeachWords } from '../use-teach-words.ts';
import { ShowBody } from './show-body.tsx';
import { useProjectorInks } from './use-projector-inks.ts';
import { useShowKeys } from './use-show-keys.ts';
import { useShownPlan } from './use-shown-plan.ts';
import './show.css';

export interface ShowPageProps {
  readonly query: string;
  readonly teach: TeachWords;
}

/** A plan on the wall: one step at a time in large letters, asked first and seen after; keys of a keyboard or a clicker. */
export default function ShowPage({ query, teach }: ShowPageProps) {
  const words = useWords();
  const { formats, messages } = words;
  const { plan, planQuery, steps, said, state, press } = useShownPlan(query);
  const [guesses, setGuesses] = useState<Readonly<Record<string, number>>>({});
  const [refused, setRefused] = useState(false);
  const host = useRef<HTMLElement>(null);
  const back = hashOf({ page: 'teach', id: '', query: planQuery });
  const notes = hashOf({ page: 'teach', id: 'notes', query: planQuery });
  useProjectorInks();
  useShowKeys(press, () => {
    location.hash = back;
  });
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
  }, [said, messages]);
  const step = steps[state.step]!;
  const kind = step.stop ? stopText(stopOf(step.stop.id)!, plan.season, words, teach).kind : messages.common.product;
  const phase = step.phase === 'ask' ? said.guess : step.phase === 'see' ? said.see : null;
  const openNotes = () => setRefused(window.open(notes, 'seamfield-notes', 'popup,width=760,height=860') === null);
  return (
    <main id="main" class="show" ref={host} tabIndex={-1} data-blank={state.blank ? '' : undefined}>
      {state.blank ? (
        <p class="unseen" role="status">
          {said.blankOn}
        </p>
      ) : (
        <>
          <div class="show-head">
            <p>{phase ? `${kind} · ${phase}` : kind}</p>
            <p>{fill(said.step, { n: formats.count(state.step + 1), all: formats.count(steps.length) })}</p>
          </div>
          <section class="show-step" aria-live="polite" data-phase={step.phase}>
            <ShowBody
              key={state.step}
              plan={plan}
              step={step}
              teach={teach}
              guesses={guesses}
              onGuess={(stop, value) => setGuesses({ ...guesses, [stop]: value })}
              onNext={() => press('next')}
            />
          </section>
          <div class="show-foot">
            {refused ? (
              <p role="alert">
                {said.refused}{' '}
                <a href={notes} target="_blank" rel="noopener">
                  {said.refusedLink}
                </a>
                .
              </p>
            ) : step.phase === 'title' ? null : (
              <PlanStrip plan={plan} now={step.place} />
            )}
            <nav class="show-buttons" aria-label={said.buttons}>
              <button type="button" onClick={() => press('back')} aria-disabled={state.step === 0 || undefined}>
                ← {said.back}
              </button>
              <button
                type="button"
                onClick={() => press('next')}
                aria-disabled={state.step === steps.length - 1 || undefined}
              >
                {said.next} →
              </button>
              <button type="button" onClick={() => press('blank')}>
                {said.blank}
              </button>
              <button type="button" onClick={() => host.current?.requestFullscreen().catch(() => undefined)}>
                {said.large}
              </button>
              <button type="button" onClick={openNotes}>
                {said.notes}
              </button>
              <a href={back}>{said.plan}</a>
            </nav>
          </div>
        </>
      )}
    </main>
  );
}
