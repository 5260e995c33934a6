import type { ComponentChildren } from 'preact';
import { useWords } from '../../language/words.ts';
import { type BenchOutcomeKey, benchDifferences } from '../../model/bench/outcomes.ts';
import { Filled } from '../../ui/filled.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { readingOfOutcome } from '../../workings/bench/all-readings.ts';
import { onBench } from '../../workings/bench/bench-reading.ts';
import { shareBetween } from '../../workings/bench/sentence-readings.ts';
import { step } from '../../workings/steps.ts';
import { benchSource, readingName, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';
import type { BenchView } from './use-benches.ts';

/** Differences below this share are not told. */
const least = 0.02;

export interface BothViews {
  readonly a: BenchView;
  readonly b: BenchView;
}

/** Both numbers of a difference and how far the second lies from the first; null where a bench has no such number. */
function useDifference({ a, b }: BothViews, outcome: BenchOutcomeKey, where: string) {
  const words = useWords();
  const said = benchWords(words.language);
  const [before, after] = [readingOfOutcome(outcome, a.readings), readingOfOutcome(outcome, b.readings)];
  if (!before || !after) return null;
  const name = readingName(after, words, said);
  const steps = [
    { ...step({ label: name }, before.shown, onBench), of: said.sides.a },
    { ...step({ label: name }, after.shown, onBench), of: said.sides.b },
  ];
  const [readings, places] = [
    [before, after, shareBetween(outcome, [a.bench, b.bench], steps)],
    ['a', 'b', 'share'],
  ];
  const sources = readings.map((reading, at) =>
    benchSource(reading, name, words, said, `${where}/${outcome}/${places[at]}`),
  );
  const [first, second, share] = readings.map((reading, at) => (
    <WorkingNumber text={readingText(reading, words, said)} source={sources[at]} />
  ));
  const texts = readings.map((reading) => readingText(reading, words, said));
  return { name, first, second, share, sources, plain: `${name}: ${texts[0]}, ${texts[1]}` };
}

/** By how much the second bench has more or less. */
function Share({ share, number }: { readonly share: number; readonly number: ComponentChildren }) {
  const { language } = useWords();
  const said = benchWords(language);
  if (share === 0 || !Number.isFinite(share)) return null;
  return <Filled template={share > 0 ? said.percentMore : said.percentLess} parts={{ percent: number }} />;
}

export interface OutcomeLineProps extends BothViews {
  readonly outcome: BenchOutcomeKey;
  readonly share: number;
  readonly where: string;
}

/** One difference as one line, both numbers opening their workings; nothing where a bench has no such number. */
export function OutcomeLine({ a, b, outcome, share, where }: OutcomeLineProps) {
  const { language } = useWords();
  const said = benchWords(language);
  const found = useDifference({ a, b }, outcome, where);
  if (!found) return null;
  return (
    <li>
      <span class="difference-name">{found.name}</span>{' '}
      <span class="difference-numbers">
        <span data-side="a">
          <span class="unseen">{said.sides.a}: </span>
          {found.first}
        </span>
        <span aria-hidden="true"> → </span>
        <span data-side="b">
          <span class="unseen">{said.sides.b}: </span>
          {found.second}
        </span>
        <span class="difference-share">
          <Share share={share} number={found.share} />
        </span>
      </span>
      <WorkingPlace sources={found.sources} />
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

/** The largest difference in one line, which stays in sight on a phone; its workings open over the foot of the page. */
export function DifferenceNow({ a, b }: BothViews) {
  const { language } = useWords();
  const said = benchWords(language);
  const [first] = benchDifferences(a.bench, b.bench, least);
  return (
    <div class="bench-now">
      {first ? (
        <LargestDifference a={a} b={b} outcome={first.key} share={first.share} where="now" />
      ) : (
        <p>{said.same}</p>
      )}
    </div>
  );
}

function LargestDifference({ a, b, outcome, share, where }: OutcomeLineProps) {
  const found = useDifference({ a, b }, outcome, where);
  if (!found) return null;
  return (
    <>
      <p class="unseen" role="status">
        {found.plain}
      </p>
      <p>
        <b>{found.name}</b>: {found.first} → {found.second}, <Share share={share} number={found.share} />
      </p>
      <WorkingPlace sources={found.sources} />
    </>
  );
}
