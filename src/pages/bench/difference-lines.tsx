import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { type BenchOutcomeKey, benchDifferences } from '../../model/bench/outcomes.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { readingOfOutcome } from '../../workings/bench/all-readings.ts';
import { benchSource, readingName, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';
import type { BenchView } from './use-benches.ts';

/** Differences below this share are not told. */
const least = 0.02;

export interface BothViews {
  readonly a: BenchView;
  readonly b: BenchView;
}

/** How far the second lies from the first, in words. */
function useShareText() {
  const { formats, language } = useWords();
  const said = benchWords(language);
  return (share: number) => {
    if (!Number.isFinite(share)) return '';
    const percent = formats.percent(100 * Math.abs(share), 0);
    return fill(share > 0 ? said.percentMore : said.percentLess, { percent });
  };
}

export interface OutcomeLineProps extends BothViews {
  readonly outcome: BenchOutcomeKey;
  readonly share: number;
  readonly where: string;
}

/** One difference as one line, both numbers opening their workings; nothing where a bench has no such number. */
export function OutcomeLine({ a, b, outcome, share, where }: OutcomeLineProps) {
  const words = useWords();
  const said = benchWords(words.language);
  const shareText = useShareText();
  const readings = [readingOfOutcome(outcome, a.readings), readingOfOutcome(outcome, b.readings)];
  const [before, after] = readings;
  if (!before || !after) return null;
  const name = readingName(after, words, said);
  const sources = [before, after].map((reading, at) =>
    benchSource(reading, name, words, said, `${where}/${at === 0 ? 'a' : 'b'}`),
  );
  return (
    <li>
      <span class="difference-name">{name}</span>{' '}
      <span class="difference-numbers">
        <span data-side="a">
          <span class="unseen">{said.sides.a}: </span>
          <WorkingNumber text={readingText(before, words, said)} source={sources[0]} />
        </span>
        <span aria-hidden="true"> → </span>
        <span data-side="b">
          <span class="unseen">{said.sides.b}: </span>
          <WorkingNumber text={readingText(after, words, said)} source={sources[1]} />
        </span>
        {share !== 0 ? <span class="difference-share">{shareText(share)}</span> : null}
      </span>
      <WorkingPlace sources={sources} />
    </li>
  );
}

/** All that differs, the largest first. */
export function DifferenceLines({ a, b }: BothViews) {
  const { language } = useWords();
  const said = benchWords(language);
  const differences = benchDifferences(a.bench, b.bench, least);
  return (
    <section class="bench-differences patch" data-cut="2" aria-labelledby="bench-differ">
      <h2 id="bench-differ">{said.heading}</h2>
      {differences.length === 0 ? (
        <p>{said.same}</p>
      ) : (
        <>
          <p class="caption">{said.differ}</p>
          <ul class="bench-lines">
            {differences.map(({ key, share }) => (
              <OutcomeLine key={key} a={a} b={b} outcome={key} share={share} where="differ" />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** The largest difference in one line, which stays in sight on a phone. */
export function DifferenceNow({ a, b }: BothViews) {
  const words = useWords();
  const said = benchWords(words.language);
  const shareText = useShareText();
  const [first] = benchDifferences(a.bench, b.bench, least);
  const before = first && readingOfOutcome(first.key, a.readings);
  const after = first && readingOfOutcome(first.key, b.readings);
  return (
    <p class="bench-now" role="status">
      {first && before && after ? (
        <>
          <b>{readingName(after, words, said)}</b>: {readingText(before, words, said)} →{' '}
          {readingText(after, words, said)}
          {', '}
          {shareText(first.share)}
        </>
      ) : (
        said.same
      )}
    </p>
  );
}
