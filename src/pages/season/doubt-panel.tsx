import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { Announcer } from '../../ui/announcer.tsx';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { DoubtResultView } from './doubt-result.tsx';
import { doubtWords } from './doubt-words.ts';
import { useDoubt } from './use-doubt.ts';
import './doubt.css';

/** How many seasons can be asked for: few for a slow device, many for smoother strips. */
const seasonCounts = [100, 500] as const;

/** What to doubt in this season: nothing runs until it is asked for, and then beside the page, not in it. */
export function DoubtPanel({ season }: { readonly season: Season }) {
  const { messages, formats, language } = useWords();
  const words = doubtWords(language);
  const { run, start, stop } = useDoubt(season);
  const [count, setCount] = useState<(typeof seasonCounts)[number]>(500);
  const running = run.state === 'running';
  const percent = formats.percent(running ? 100 * run.share : 0, 0);
  const said = {
    idle: '',
    running: '',
    stopped: words.stopped,
    broken: words.broken,
    done: run.state === 'done' ? fill(words.ready, { seasons: formats.count(run.result.seasons) }) : '',
  }[run.state];
  return (
    <section class="doubt-panel" aria-label={words.heading} data-state={run.state}>
      <h2>{words.heading}</h2>
      <p>{season.weather.origin === 'record' ? words.introRecord : words.intro}</p>
      {running ? (
        <div class="doubt-running">
          <div
            class="doubt-progress"
            role="progressbar"
            aria-label={words.heading}
            aria-valuemin={0}
            aria-valuemax={100}
            aria-valuenow={Math.round(100 * run.share)}
          >
            <svg viewBox="0 0 100 4" preserveAspectRatio="none" width="100%" height="12" aria-hidden="true">
              <path class="progress-chalk" d="M0 2H100" />
              <path class="progress-thread" d={`M0 2H${(100 * run.share).toFixed(1)}`} />
            </svg>
          </div>
          <p>{fill(words.running, { percent })}</p>
          <PatchButton onPress={stop}>{words.cancel}</PatchButton>
        </div>
      ) : (
        <div class="doubt-start">
          <ChoiceRow
            label={words.seasons}
            options={seasonCounts.map((value) => ({ value, label: formats.count(value) }))}
            value={count}
            onChoose={setCount}
          />
          <PatchButton onPress={() => start(count)}>{run.state === 'done' ? words.again : words.start}</PatchButton>
        </div>
      )}
      <Announcer message={said} />
      {run.state === 'stopped' || run.state === 'broken' ? <p class="caption">{said}</p> : null}
      {run.state === 'done' ? <DoubtResultView season={season} result={run.result} words={words} /> : null}
      {run.state === 'done' ? <p class="caption">{messages.limits.inventedFarm}</p> : null}
    </section>
  );
}
