import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import { ChoiceRow } from './choice-row.tsx';
import { RibbonCloth, type RibbonDay } from './ribbon-cloth.tsx';
import { roomForLabels } from './ribbon-labels.ts';
import { useWidth } from './use-width.ts';

/** The speeds have names; the season's statechart uses the same ones. */
export type RibbonSpeed = 'byDay' | 'byWeek' | 'byStage';

export interface RibbonProps {
  /** First and last place on the ribbon: days, or steps of work. */
  readonly start: number;
  readonly end: number;
  readonly now: number;
  /** Where `now` is, in words: 'Day 58, July 1'. Shown and spoken. */
  readonly nowText: string;
  /** More about now, in a second line. */
  readonly detail?: string;
  /** Ticks along the ribbon, such as the first days of months. */
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  /** What happened or will happen when; sewn once it is past, chalked before. The weightiest first: they are named where there is room. */
  readonly events: readonly { readonly at: number; readonly label: string; readonly dateText: string }[];
  /** The days of a growing season; absent where time is work. */
  readonly cloth?: { readonly days: readonly RibbonDay[]; readonly heatPerStitch: number };
  readonly playing: boolean;
  readonly speed: RibbonSpeed;
  readonly onScrub: (to: number) => void;
  readonly onPlay: () => void;
  readonly onPause: () => void;
  readonly onStep: () => void;
  readonly onStepStation: () => void;
  readonly onSpeed: (speed: RibbonSpeed) => void;
}

const speeds: readonly RibbonSpeed[] = ['byDay', 'byWeek', 'byStage'];

/** Time as a ribbon of cloth: basted up to now, with a mark where each event falls. One native slider moves along it. */
export function Ribbon(props: RibbonProps) {
  const { start, end, now, nowText, ticks, events, playing, speed } = props;
  const { messages } = useWords();
  const words = messages.scenes.ribbon;
  const span = Math.max(1, end - start);
  const share = (at: number) => Math.min(1, Math.max(0, (at - start) / span));
  const place = (at: number) => `calc(13px + (100% - 26px) * ${share(at).toFixed(4)})`;
  const [track, width] = useWidth<HTMLDivElement>(500);
  const placePx = (at: number) => 13 + (width - 26) * share(at);
  return (
    <section
      class="ribbon patch"
      data-ink="deep"
      data-cut="3"
      data-cloth={props.cloth ? '' : undefined}
      aria-label={words.label}
    >
      <div class="ribbon-buttons">
        <button
          type="button"
          class="ribbon-button"
          aria-label={playing ? words.pause : words.play}
          onClick={playing ? props.onPause : props.onPlay}
        >
          <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
            <path d={playing ? 'M4 3.4 9.6 3 10 21l-5.4-.4zM14 3l5.4.6-.3 17.4-5.4-.3z' : 'M5 2.6 21 11.6 5.6 21.4z'} />
          </svg>
        </button>
        <button type="button" class="ribbon-button" aria-label={words.step} title={words.step} onClick={props.onStep}>
          <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
            <path d="M3 3.6 15.4 12 3.6 20.6zM17 3.4l4.4-.4.2 18-4.2-.4z" />
          </svg>
        </button>
        <button
          type="button"
          class="ribbon-button"
          aria-label={words.toEnd}
          title={words.toEnd}
          onClick={props.onStepStation}
        >
          <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
            <path d="M1.6 4.6 10 12l-8.2 7.6zM10 4.4 18.6 12l-8.4 7.8zM19.4 3.4l3.4-.4.2 18-3.4-.4z" />
          </svg>
        </button>
      </div>
      <div class="ribbon-track" ref={track}>
        <div class="ribbon-marks" aria-hidden="true">
          {props.cloth ? <RibbonCloth {...props.cloth} now={now} width={width} placeOf={placePx} /> : null}
          {ticks.map((tick) => (
            <i key={tick.at} class="ribbon-tick" style={{ left: place(tick.at) }}>
              <span>{tick.label}</span>
            </i>
          ))}
          {props.cloth ? null : (
            <>
              <i class="ribbon-ahead" style={{ left: place(now) }} />
              <i class="ribbon-basting" style={{ right: `calc(100% - (${place(now)}))` }} />
            </>
          )}
          {events.map((event) => (
            <i
              key={event.label}
              class={event.at <= now ? 'ribbon-event past' : 'ribbon-event'}
              style={{ left: place(event.at) }}
              title={fill(words.eventOn, { event: event.label, date: event.dateText })}
            />
          ))}
          {roomForLabels(events, placePx, width).map(({ event, middle }) => (
            <span key={event.label} class="ribbon-name" style={{ left: `${middle.toFixed(1)}px` }}>
              {event.label}
            </span>
          ))}
        </div>
        <input
          type="range"
          aria-label={words.scrub}
          min={start}
          max={end}
          step={1}
          value={now}
          aria-valuetext={nowText}
          onInput={(event) => props.onScrub(Number(event.currentTarget.value))}
        />
        <ul class="unseen">
          {events.map((event) => (
            <li key={event.label}>{fill(words.eventOn, { event: event.label, date: event.dateText })}</li>
          ))}
        </ul>
      </div>
      <p class="ribbon-now">
        {nowText}
        {props.detail ? <span>{props.detail}</span> : null}
      </p>
      <ChoiceRow
        label={words.speed}
        labelUnseen
        options={speeds.map((name) => ({ value: name, label: (props.cloth ? words.speeds : words.workSpeeds)[name] }))}
        value={speed}
        onChoose={props.onSpeed}
      />
    </section>
  );
}
