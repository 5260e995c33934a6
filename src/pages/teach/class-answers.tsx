import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { seasonOfPupil } from '../../teach/class/class-seasons.ts';
import type { Plan } from '../../teach/plan/plan.ts';
import { stopOf } from '../../teach/plan/stop-list.ts';
import { useSeasons } from '../compare/use-seasons.ts';
import { answerText } from '../season/predict-text.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface ClassAnswersProps {
  readonly plan: Plan;
  readonly run: SavedRun;
  /** How many pupils have a season of their own; 0 where all have the teacher's. */
  readonly pupils: number;
  readonly teach: TeachWords;
}

/** The station whose question is shown first: the plan's first, or the sewing table. */
function firstStation({ stops }: Plan): StationId {
  for (const { id } of stops) {
    const aim = stopOf(id)?.aim;
    if (aim?.kind === 'station') return aim.station;
  }
  return 'sewing';
}

/** What each pupil's season answers to one question, and how far apart the answers lie; all worked out on this device. */
export function ClassAnswers({ plan, run, pupils, teach }: ClassAnswersProps) {
  const words = useWords();
  const { messages, formats } = words;
  const { said, predict } = teach;
  const [station, setStation] = useState<StationId>(() => firstStation(plan));
  const runs = pupils === 0 ? [run] : Array.from({ length: pupils }, (_, i) => seasonOfPupil(run, i + 1));
  const key = `${JSON.stringify(run)}/${pupils}`;
  const { seasons, done } = useSeasons(
    key,
    runs.map(
      ({ scenario, seed }) =>
        (): Season =>
          runSeason(scenario, seed, null),
    ),
  );
  const answers = seasons?.map((season, i) => ({ pupil: i + 1, answer: answerText(season, station, words) }));
  const known = (answers ?? []).flatMap(({ answer }) => (answer ? [answer] : [])).sort((a, b) => a.value - b.value);
  return (
    <section class="class-answers" aria-labelledby="class-answers">
      <h2 id="class-answers">{said.answersTitle}</h2>
      <p class="caption">{said.answersLead}</p>
      <label class="teach-field">
        <span class="control-label">{said.answersQuestion}</span>
        <select
          class="teach-typed"
          onChange={(event) => setStation(stationIds[event.currentTarget.selectedIndex] ?? station)}
        >
          {stationIds.map((id) => (
            <option key={id} value={id} selected={id === station}>
              {messages.stations[id].name}: {predict.asked[id].question}
            </option>
          ))}
        </select>
      </label>
      {answers ? (
        <>
          {known.length > 1 ? (
            <p class="class-range">
              {fill(said.answersRange, {
                low: known[0]!.text,
                middle: known[Math.floor((known.length - 1) / 2)]!.text,
                high: known.at(-1)!.text,
              })}
            </p>
          ) : null}
          <ol class="class-list" data-own={pupils > 0 ? '' : undefined}>
            {answers.map(({ pupil, answer }) => (
              <li key={pupil}>
                <span class="class-pupil">{pupils > 0 ? formats.count(pupil) : said.everyone}</span>{' '}
                <b>{answer ? answer.text : said.noAnswer}</b>
              </li>
            ))}
          </ol>
        </>
      ) : (
        <p role="status">{fill(teach.asked.working, { done: formats.count(done), of: formats.count(runs.length) })}</p>
      )}
    </section>
  );
}
