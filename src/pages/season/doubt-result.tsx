import { Fragment } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { DoubtResult } from '../../doubt/doubt-season.ts';
import { outcomeNames } from '../../doubt/outcomes.ts';
import type { HeldReason } from '../../doubt/uncertain-facts.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { outcomeWriting } from './doubt-outcomes.ts';
import { DoubtRanking } from './doubt-ranking.tsx';
import { quantileSource } from './doubt-sources.ts';
import { DoubtStrip } from './doubt-strip.tsx';
import { type DoubtWords, factName } from './doubt-words.ts';

/** How much of the result is drawn: a piece more with every frame, so that none is a long task. */
function useStage(last: number): number {
  const [stage, setStage] = useState(0);
  useEffect(() => {
    if (stage === last) return;
    const frame = requestAnimationFrame(() => setStage(stage + 1));
    return () => cancelAnimationFrame(frame);
  }, [stage, last]);
  return stage;
}

export interface DoubtResultProps {
  readonly season: Season;
  readonly result: DoubtResult;
  readonly words: DoubtWords;
}

/** What many seasons gave: strips with their table, what matters most, and what was left out. */
export function DoubtResultView({ season, result, words }: DoubtResultProps) {
  const all = useWords();
  const { formats, messages } = all;
  const writing = outcomeWriting(all, words);
  const { strips } = words;
  const { base, summaries, failed } = result;
  // Strips, then the table, the ranking, and what was held.
  const stage = useStage(3);
  return (
    <>
      <section class="doubt-strips" aria-label={words.heading}>
        <h3>{fill(strips.heading, { seasons: formats.count(result.seasons) })}</h3>
        {failed > 0 ? (
          <p>
            <b>{formats.plural(failed, strips.failed)}</b> {strips.failedMeaning}
          </p>
        ) : null}
        {outcomeNames.map((name) => {
          const summary = summaries[name];
          return summary ? (
            <DoubtStrip key={name} writing={writing[name]} summary={summary} now={base[name]} words={words} />
          ) : (
            <p key={name}>
              <b>{writing[name].name}</b> {strips.none}
            </p>
          );
        })}
        <p class="caption">{strips.caption}</p>
        {stage >= 1 ? (
          <details class="twin-table">
            <summary>{messages.common.table}</summary>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be scrollable by keyboard */}
            <section class="wide-table" aria-label={messages.common.table} tabIndex={0}>
              <table>
                <caption>{fill(strips.heading, { seasons: formats.count(result.seasons) })}</caption>
                <thead>
                  <tr>
                    <th scope="col">
                      <span class="unseen">{words.ranking.outcome}</span>
                    </th>
                    {[strips.now, ...strips.shares].map((head) => (
                      <th key={head} scope="col" class="number">
                        {head}
                      </th>
                    ))}
                  </tr>
                </thead>
                <tbody>
                  {outcomeNames.map((name) => {
                    const { short, unit, name: label } = writing[name];
                    const now = base[name];
                    const summary = summaries[name];
                    const sources = (summary?.quantiles ?? []).map((value, index) =>
                      quantileSource(season, all, name, index, summary!, short(value), writing[name]),
                    );
                    return (
                      <Fragment key={name}>
                        <tr>
                          <th scope="row">
                            {label} <span class="caption">{unit}</span>
                          </th>
                          <td class="number">{now === null ? words.ranking.lost : short(now)}</td>
                          {(summary?.quantiles ?? []).map((value, index) => (
                            <td key={strips.shares[index]} class="number">
                              <WorkingNumber text={short(value)} source={sources[index]} />
                            </td>
                          ))}
                        </tr>
                        <WorkingRow sources={sources} columns={2 + sources.length} />
                      </Fragment>
                    );
                  })}
                </tbody>
              </table>
            </section>
          </details>
        ) : null}
      </section>
      {stage >= 2 ? (
        <DoubtRanking season={season} base={base} ranked={result.ranked} writing={writing} words={words} />
      ) : null}
      {stage >= 3 ? <HeldNotes result={result} words={words} /> : null}
    </>
  );
}

/** How many facts were moved, and which were not and why. */
function HeldNotes({ result, words }: { readonly result: DoubtResult; readonly words: DoubtWords }) {
  const { formats, language } = useWords();
  const { held: notes } = words;
  const heldFor = (reason: HeldReason) => result.held.filter((fact) => fact.reason === reason);
  const count = (template: string, n: number) => fill(template, { n: formats.count(n) });
  return (
    <details class="doubt-held">
      <summary>{notes.heading}</summary>
      <ul>
        <li>{count(notes.moved, result.moved)}</li>
        <li>{count(notes.singly, result.movedSingly)}</li>
        <li>{count(notes.afterTheBale, heldFor('afterTheBale').length)}</li>
        <li>
          {count(notes.readAtLoad, heldFor('readAtLoad').length)}{' '}
          {heldFor('readAtLoad').map(({ names }, index) => {
            const named = factName(names[0]!, words);
            return (
              <span key={names[0]} lang={named.own && language !== 'en' ? 'en' : undefined}>
                {index > 0 ? '; ' : ''}
                {named.text}
              </span>
            );
          })}
          .
        </li>
        <li>{count(notes.noWidth, heldFor('noWidth').length)}</li>
        <li>{count(notes.tables, result.heldTables)}</li>
      </ul>
    </details>
  );
}
