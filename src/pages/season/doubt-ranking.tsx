import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import type { Change } from '../../doubt/one-at-a-time.ts';
import { type OutcomeName, type Outcomes, outcomeNames } from '../../doubt/outcomes.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { OutcomeWriting } from './doubt-outcomes.ts';
import { changeSource } from './doubt-sources.ts';
import { type DoubtWords, factName } from './doubt-words.ts';

export interface DoubtRankingProps {
  readonly season: Season;
  readonly base: Outcomes;
  readonly ranked: Readonly<Record<OutcomeName, readonly Change[]>>;
  readonly writing: Readonly<Record<OutcomeName, OutcomeWriting>>;
  readonly words: DoubtWords;
}

const bar = { width: 120, height: 26 };

/** Two tongues of cloth from a middle seam: down to the left, up to the right; the low end above, the high end below. */
function ChangeBar({ change, most }: { readonly change: Change; readonly most: number }) {
  const middle = bar.width / 2;
  const tongue = (difference: number | null, top: number) => {
    const px = ((difference ?? -change.size) / most) * (middle - 2);
    return `M${middle} ${top}h${px.toFixed(1)}v9H${middle}z`;
  };
  return (
    <svg viewBox={`0 0 ${bar.width} ${bar.height}`} width={bar.width} height={bar.height} aria-hidden="true">
      <path class="bar-low" d={tongue(change.low, 3)} />
      <path class="bar-high" d={tongue(change.high, 14)} />
      <path class="bar-seam" d={`M${middle} 0V${bar.height}`} />
    </svg>
  );
}

/** Units that say no more than that the number is a pure one. */
const pureUnits: readonly string[] = ['fraction', 'ratio', 'count', 'correlation', '1'];

/** As many decimals as a fact is written with, to four. */
const decimalsOf = (value: number): number => Math.min(4, (String(value).split('.')[1] ?? '').length);

/** What moves an outcome most, one fact at a time, with how sure each fact is and where it comes from. */
export function DoubtRanking({ season, base, ranked, writing, words }: DoubtRankingProps) {
  const allWords = useWords();
  const { formats, language, messages } = allWords;
  const [outcome, setOutcome] = useState<OutcomeName>('lintLbPerAcre');
  const { ranking } = words;
  const changes = ranked[outcome];
  const { name, unit, change: write } = writing[outcome];
  const most = changes[0]?.size ?? 1;
  const told = (difference: number | null) => (difference === null ? ranking.lost : write(difference));
  const plain = (value: number) => formats.number(value, decimalsOf(value));
  return (
    <section class="doubt-ranking" aria-label={ranking.heading}>
      <h3>{ranking.heading}</h3>
      <ChoiceRow
        label={ranking.outcome}
        options={outcomeNames.map((value) => ({ value, label: writing[value].name }))}
        value={outcome}
        onChoose={setOutcome}
      />
      {changes.length === 0 ? (
        <p>{ranking.nothing}</p>
      ) : (
        <table>
          <caption>
            {name}
            {unit ? `, ${unit}` : ''}
          </caption>
          <thead>
            <tr>
              <th scope="col">{ranking.fact}</th>
              <th scope="col" class="number">
                <span class="key-low" aria-hidden="true" /> {ranking.atLow}
              </th>
              <th scope="col" class="number">
                <span class="key-high" aria-hidden="true" /> {ranking.atHigh}
              </th>
              <th scope="col" class="bar-cell">
                <span class="unseen">{ranking.change}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {changes.map((change) => {
              const { fact, names } = change.swing;
              const named = factName(names[0]!, words);
              const own = named.own && language !== 'en' ? 'en' : undefined;
              const sources = (['low', 'high'] as const).map((end) =>
                changeSource(season, allWords, outcome, end, base, change, writing[outcome]),
              );
              return (
                <Fragment key={names[0]}>
                  <tr>
                    <th scope="row">
                      <span lang={own}>{named.text}</span>
                      <TrustMark
                        trust={{ mark: fact.mark, source: fact.source, ...(fact.note ? { note: fact.note } : {}) }}
                        label={named.text}
                      />
                      <span class="caption">
                        {messages.marks.names[fact.mark]};{' '}
                        {fill(ranking.range, {
                          value: plain(fact.value),
                          low: plain(fact.range[0]),
                          high: plain(fact.range[1]),
                        })}{' '}
                        {pureUnits.includes(fact.unit) ? null : (
                          <span lang={language === 'en' ? undefined : 'en'}>{fact.unit}</span>
                        )}
                      </span>
                    </th>
                    <td class="number">
                      <WorkingNumber text={told(change.low)} source={sources[0]} />
                    </td>
                    <td class="number">
                      <WorkingNumber text={told(change.high)} source={sources[1]} />
                    </td>
                    <td class="bar-cell">
                      <ChangeBar change={change} most={most} />
                    </td>
                  </tr>
                  <WorkingRow sources={sources} columns={4} />
                </Fragment>
              );
            })}
          </tbody>
        </table>
      )}
      <p class="caption">{ranking.caption}</p>
    </section>
  );
}
