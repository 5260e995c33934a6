import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { useWidth } from '../../ui/use-width.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { TwinRow } from './pictures/picture.ts';
import { seenAsked } from './pictures/seen-asked.ts';
import { splitAtValues } from './split-at-values.ts';
import { useTallestText } from './use-tallest-text.ts';
import { workingSource } from './working-source.ts';

export interface SeenLinesProps {
  readonly season: Season;
  readonly station: StationId;
  readonly lines: readonly string[];
  /** The values in the picture: wherever a sentence says one of them, it opens the same working as in the table. */
  readonly rows: readonly TwinRow[];
}

/** A value of more letters than this may break over two lines; its stop stays with its last word. */
const longest = 24;

/** The stop or comma that words begin with, where they follow a number. */
const stopAfter = (value: number | null, words: string): string =>
  value === null ? '' : (/^[.,;:)]+/.exec(words)?.[0] ?? '');

/** What is seen, in sentences whose numbers open their workings. Its place is as tall as it will need while time runs. */
export function SeenLines({ season, station, lines, rows }: SeenLinesProps) {
  const words = useWords();
  const [place, width] = useWidth<HTMLDivElement>(0);
  useTallestText(place, width, season, station, words);
  const known = rows.flatMap((row) => {
    const asked = /\d/.test(row.text) ? seenAsked(station, row) : null;
    return asked ? [{ ...row, asked }] : [];
  });
  return (
    <div class="seen-lines" ref={place}>
      {lines.map((line, at) => {
        const sources: WorkingSource[] = [];
        const pieces = splitAtValues(
          line,
          known.map(({ text }) => text),
        );
        const parts = pieces.map(({ text, value }, i) => {
          const stop = stopAfter(pieces[i - 1]?.value ?? null, text);
          if (value === null) return <Fragment key={i}>{text.slice(stop.length)}</Fragment>;
          const { label, asked } = known[value]!;
          const source = workingSource(season, words, asked, label, `line/${at}/${i}/`);
          sources.push(source);
          // A number and the stop behind it stay on one line.
          return (
            <span key={i} class={text.length < longest ? 'keep-together' : 'keep-stop'}>
              <WorkingNumber text={text} source={source} />
              {stopAfter(value, pieces[i + 1]?.text ?? '')}
            </span>
          );
        });
        return (
          <Fragment key={at}>
            <p>{parts}</p>
            <WorkingPlace sources={sources} />
          </Fragment>
        );
      })}
    </div>
  );
}
