import { useEffect, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { stopOf } from '../../../teach/plan/stop-list.ts';
import { stopMs, wholeMs } from '../../../teach/show/show-state.ts';
import type { ShowStep } from '../../../teach/show/show-steps.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { hashOf } from '../../route.ts';
import { PlanStrip } from '../plan-strip.tsx';
import { stopText } from '../stop-text.ts';
import type { TeachWords } from '../use-teach-words.ts';
import { AnswerNote } from './answer-note.tsx';
import { clockText } from './clock-text.ts';
import type { ShowWords } from './show-words.ts';
import { useShowKeys } from './use-show-keys.ts';
import { useShownPlan } from './use-shown-plan.ts';
import './notes.css';

export interface NotesPageProps {
  readonly query: string;
  readonly teach: TeachWords;
}

const msPerMinute = 60_000;

/** The time now, ms since 1970, looked at often enough that no second is skipped. */
function useNow(): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNowMs(Date.now()), 250);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
}

interface ClockProps {
  readonly label: string;
  readonly spentMs: number;
  readonly minutes: number;
  readonly said: ShowWords;
}

/** Time that has gone, of how much, and what is left or over. */
function Clock({ label, spentMs, minutes, said }: ClockProps) {
  const leftMs = minutes * msPerMinute - spentMs;
  return (
    <div class="notes-clock" data-over={leftMs < 0 ? '' : undefined}>
      <p class="control-label">{label}</p>
      <p class="notes-spent">{clockText(spentMs)}</p>
      <p>
        {fill(said.of, { time: clockText(minutes * msPerMinute) })},{' '}
        <b>{fill(leftMs < 0 ? said.over : said.left, { time: clockText(Math.abs(leftMs)) })}</b>
      </p>
    </div>
  );
}

/** What the speaker sees on the second screen: the time, what to ask, say and expect, and what comes next on the wall. */
export default function NotesPage({ query, teach }: NotesPageProps) {
  const words = useWords();
  const { formats, messages } = words;
  const { plan, planQuery, steps, said, state, press } = useShownPlan(query);
  const nowMs = useNow();
  useShowKeys(press, () => undefined);
  useEffect(() => {
    document.title = `${said.notesTitle}: ${messages.common.product}`;
  }, [said, messages]);
  const textOf = ({ stop }: ShowStep) => (stop ? stopText(stopOf(stop.id)!, plan.season, words, teach) : null);
  const phases: Readonly<Record<ShowStep['phase'], string>> = { title: '', whole: '', ask: said.guess, see: said.see };
  const step = steps[state.step]!;
  const next = steps[state.step + 1];
  const text = textOf(step);
  const title = (of: ShowStep) => {
    const name = textOf(of)?.title ?? teach.said.focuses[plan.focus];
    return phases[of.phase] ? `${name} · ${phases[of.phase]}` : name;
  };
  const runs = state.sinceMs !== null;
  return (
    <main id="main" class="notes" tabIndex={-1}>
      <PlanStrip plan={plan} now={step.place} />
      <div class="notes-time">
        {step.stop ? (
          <Clock
            label={said.stopTime}
            spentMs={stopMs(state, steps, step.place, nowMs)}
            minutes={step.stop.minutes}
            said={said}
          />
        ) : null}
        <Clock label={said.wholeTime} spentMs={wholeMs(state, steps, nowMs)} minutes={plan.minutes} said={said} />
        <div class="notes-hold">
          <PatchButton onPress={() => press('clock')}>{runs ? said.pauseClock : said.startClock}</PatchButton>
          <p class="caption">{runs ? '' : said.clockStands}</p>
        </div>
      </div>
      <section class="notes-now" aria-live="polite">
        <p class="caption">
          {fill(said.step, { n: formats.count(state.step + 1), all: formats.count(steps.length) })}
          {text ? ` · ${text.kind}` : ''}
          {state.blank ? ` · ${said.blankOn}` : ''}
        </p>
        <h1>{title(step)}</h1>
        {text && step.stop ? (
          <dl class="notes-say">
            <dt>{said.say}</dt>
            <dd class="teach-ask">{text.ask}</dd>
            <dt>{said.usual}</dt>
            <dd>{text.usual}</dd>
            <AnswerNote stop={stopOf(step.stop.id)!} season={plan.season} teach={teach} />
            <dt>{said.doThis}</dt>
            <dd>
              <ul>
                {text.steps.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </dd>
          </dl>
        ) : null}
      </section>
      <p class="patch notes-next" data-cut="2">
        <b>{said.comesNext}:</b> {next ? title(next) : said.last}
      </p>
      <div class="notes-buttons">
        <PatchButton onPress={() => press('back')}>{said.back}</PatchButton>
        <PatchButton ink="weld" primary onPress={() => press('next')}>
          {said.next}
        </PatchButton>
        <PatchButton pressed={state.blank} onPress={() => press('blank')}>
          {said.blank}
        </PatchButton>
        <PatchButton onPress={() => press('restart')}>{said.restart}</PatchButton>
      </div>
      <p class="caption">{said.keys}</p>
      <p class="notes-links">
        <a href={hashOf({ page: 'teach', id: 'show', query: planQuery })} target="_blank" rel="noopener">
          {said.openShow}
        </a>
        <a href={hashOf({ page: 'teach', id: '', query: planQuery })}>{said.plan}</a>
      </p>
    </main>
  );
}
