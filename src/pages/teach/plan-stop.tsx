import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { dropStop, lengthenStop, moveStop, shortenStop } from '../../teach/plan/change-plan.ts';
import { type PlannedStop, plannedMinutes } from '../../teach/plan/plan.ts';
import { stopOf } from '../../teach/plan/stop-list.ts';
import { stopText } from './stop-text.ts';
import type { PlanHand } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface PlanStopProps {
  readonly place: number;
  readonly planned: PlannedStop;
  readonly hand: PlanHand;
  readonly teach: TeachWords;
  readonly onTold: (line: string) => void;
}

interface SmallButtonProps {
  readonly sign: string;
  readonly label: string;
  readonly cut: string;
  readonly off?: boolean;
  readonly onPress: () => void;
}

function SmallButton({ sign, label, cut, off = false, onPress }: SmallButtonProps) {
  return (
    <button
      type="button"
      class="patch patch-button step-button"
      data-cut={cut}
      aria-label={label}
      aria-disabled={off || undefined}
      onClick={() => !off && onPress()}
    >
      <span aria-hidden="true">{sign}</span>
    </button>
  );
}

/** One stop of a plan: its minutes, what to do, ask and expect, and the buttons that change it. */
export function PlanStop({ place, planned, hand, teach, onTold }: PlanStopProps) {
  const words = useWords();
  const { formats } = words;
  const { said } = teach;
  const { plan, set } = hand;
  const stop = stopOf(planned.id)!;
  const text = stopText(stop, plan.season, words, teach);
  const named = { stop: text.title };
  const from = plannedMinutes(plan.stops.slice(0, place));
  const minutes = formats.plural(planned.minutes, said.minutes);
  const move = (by: number) => {
    set(moveStop(plan, planned.id, by));
    onTold(fill(said.moved, { ...named, place: formats.count(place + 1 + by) }));
  };
  const longer = () => {
    const next = lengthenStop(plan, planned.id);
    if (!next) return onTold(said.cannot);
    set(next.plan);
    const giver = next.from && stopText(stopOf(next.from)!, plan.season, words, teach).title;
    onTold(giver ? fill(said.gave, { stop: giver }) : '');
  };
  const shorter = () => {
    const next = shortenStop(plan, planned.id);
    if (next) set(next);
    onTold(next ? '' : fill(said.shortest, { ...named, minutes }));
  };
  return (
    <li class="patch teach-stop" data-cut={String((place % 3) + 1)} data-kind={stop.aim.kind}>
      <div class="teach-stop-head">
        <span class="teach-place" data-kind={stop.aim.kind} aria-hidden="true">
          {place + 1}
        </span>
        <div class="teach-name">
          <h3>{text.title}</h3>
          <p class="caption">
            {text.kind} · {fill(said.from, { from: formats.count(from), to: formats.count(from + planned.minutes) })}
          </p>
        </div>
        <p class="teach-minutes">{minutes}</p>
        <div class="teach-buttons">
          <SmallButton sign="−" cut="1" label={fill(said.shorter, named)} onPress={shorter} />
          <SmallButton sign="+" cut="2" label={fill(said.longer, named)} onPress={longer} />
          <SmallButton sign="↑" cut="3" label={fill(said.earlier, named)} off={place === 0} onPress={() => move(-1)} />
          <SmallButton
            sign="↓"
            cut="1"
            label={fill(said.later, named)}
            off={place === plan.stops.length - 1}
            onPress={() => move(1)}
          />
          <SmallButton
            sign="×"
            cut="2"
            label={fill(said.drop, named)}
            onPress={() => {
              set(dropStop(plan, planned.id));
              onTold(fill(said.dropped, named));
              // The button is gone with its stop: the focus goes to the page.
              document.getElementById('main')?.focus({ preventScroll: true });
            }}
          />
        </div>
      </div>
      <dl class="teach-told-by">
        <dt>{said.ask}</dt>
        <dd class="teach-ask">{text.ask}</dd>
        <dt>{said.usual}</dt>
        <dd>{text.usual}</dd>
      </dl>
      <div class="teach-stop-foot">
        <details>
          <summary>{said.doThis}</summary>
          <ul>
            {text.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ul>
        </details>
        {text.opens ? (
          <a class="teach-open" href={text.opens.href}>
            {text.opens.label}
          </a>
        ) : null}
      </div>
    </li>
  );
}
