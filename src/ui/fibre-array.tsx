import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import { MM_PER_INCH } from '../model/units.ts';
import { useWidth } from './use-width.ts';

export interface FibreArrayProps {
  readonly lengthsMm: readonly number[];
  readonly beforeMm?: readonly number[];
  readonly upperHalfMeanMm: number;
  readonly upperHalfMeanBeforeMm?: number;
  /** The longest fiber of all that are to be read on one ruler, where several pads lie one above the other. */
  readonly rulerToMm?: number;
}

/** Fibers below half an inch are called short. */
const shortBelowMm = MM_PER_INCH / 2;
const height = 216;
const edge = { top: 26, bottom: 12, left: 44 };
/** Width of a letter of the value beside the notch, and of the notch itself. */
const letterPx = 8.4;
const notchPx = 16;
const firstWidth = 400;
/** Threads closer than this run together, so a narrow pad lays out fewer fibers and says how many. */
const leastPitchPx = 2.4;
/** A scissor-sharp lean for each thread, the same on every drawing. */
const leanPx = (index: number): number => ((index * 7919) % 13) / 13 - 0.5;

const thinned = (lengths: readonly number[], every: number): readonly number[] =>
  every <= 1 ? lengths : lengths.filter((_, index) => index % every === Math.floor(every / 2));

/** The hand sorter's pad: fibers side by side, longest first, at true width on screen. */
export function FibreArray(props: FibreArrayProps) {
  const { lengthsMm: all, beforeMm, upperHalfMeanMm, upperHalfMeanBeforeMm, rulerToMm = 0 } = props;
  const { messages, formats, unitSystem } = useWords();
  const { fibre: words } = messages;
  const [pad, width] = useWidth<HTMLDivElement>(firstWidth);
  const longest = Math.max(all[0] ?? 0, beforeMm?.[0] ?? 0, upperHalfMeanMm, shortBelowMm, rulerToMm);
  const spacing = unitSystem === 'us' ? MM_PER_INCH / 4 : 10;
  const top = Math.ceil(longest / spacing) * spacing;
  const y = (mm: number) => height - edge.bottom - (mm / top) * (height - edge.top - edge.bottom);
  const now = formats.fibreLength(upperHalfMeanMm);
  const before = upperHalfMeanBeforeMm === undefined ? null : formats.fibreLength(upperHalfMeanBeforeMm);
  const wordsWidth = notchPx + letterPx * Math.max(now.text.length, words.short.length);
  const right = Math.max(edge.left + 80, width - wordsWidth);
  const x = (index: number, count: number) => edge.left + 6 + ((index + 0.5) / count) * (right - edge.left - 10);
  const lengthsMm = thinned(all, Math.ceil((all.length * leastPitchPx) / (right - edge.left - 10)));
  const threads = (short: boolean) =>
    lengthsMm
      .map((mm, index) => ({ mm, index }))
      .filter(({ mm }) => mm < shortBelowMm === short && mm > 0)
      .map(({ mm, index }) => {
        const at = x(index, lengthsMm.length);
        return `M${at.toFixed(1)} ${y(0).toFixed(1)}L${(at + leanPx(index)).toFixed(1)} ${y(mm).toFixed(1)}`;
      })
      .join('');
  const envelope = beforeMm
    ? beforeMm
        .map((mm, index) => `${index ? 'L' : 'M'}${x(index, beforeMm.length).toFixed(1)} ${y(mm).toFixed(1)}`)
        .join('')
    : '';
  const axis = Array.from({ length: Math.round(top / spacing) + 1 }, (_, i) => i * spacing);
  const axisWords = (mm: number) => (unitSystem === 'us' ? quarters(mm / MM_PER_INCH) : formats.number(mm, 0));
  const shortCount = lengthsMm.filter((mm) => mm < shortBelowMm).length;
  const title = fill(words.array, { n: formats.count(lengthsMm.length) });
  const spoken = [
    title,
    `${words.readings.upperHalfMean}: ${now.spoken}`,
    `${words.shortExplained}: ${formats.count(shortCount)}`,
  ].join('. ');
  return (
    <div class="patch fibre-pad" data-ink="indigo" data-cut="1">
      <p class="caption">
        {title}
        {beforeMm ? <span class="chalk-words">{words.arrayBefore}</span> : null}
      </p>
      <div ref={pad}>
        <svg role="img" aria-label={spoken} viewBox={`0 0 ${width} ${height}`} width="100%" height={height}>
          <g class="pad-ruler">
            <path d={`M${edge.left - 6} ${y(top)}V${y(0)}`} />
            {axis.map((mm, index) => (
              <g key={mm}>
                <path d={`M${edge.left - 6} ${y(mm).toFixed(1)}h${index % 2 ? -4 : -8}`} />
                {index % 2 === 0 ? (
                  <text x={edge.left - 18} y={y(mm) + 5} text-anchor="end">
                    {axisWords(mm)}
                  </text>
                ) : null}
              </g>
            ))}
            <text x={edge.left - 12} y={y(top) - 10} text-anchor="end">
              {unitSystem === 'us' ? messages.units.inches.sign : messages.units.millimetres.sign}
            </text>
          </g>
          <path class="pad-thread" d={threads(false)} />
          <path class="pad-thread short" d={threads(true)} />
          <path class="pad-base" d={`M${edge.left} ${y(0) + 1}H${right}`} />
          {envelope ? <path class="pad-before" d={envelope} /> : null}
          <path class="pad-short-line" d={`M${edge.left} ${y(shortBelowMm).toFixed(1)}H${right}`} />
          <text class="pad-short" x={right + 6} y={y(shortBelowMm) + 5}>
            {words.short}
          </text>
          <path class="pad-notch-line" d={`M${edge.left} ${y(upperHalfMeanMm).toFixed(1)}H${right}`} />
          <path class="pad-notch" d={`M${right} ${y(upperHalfMeanMm).toFixed(1)}l9 -6v12z`} />
          {before && upperHalfMeanBeforeMm !== undefined ? (
            <path class="pad-notch before" d={`M${right} ${y(upperHalfMeanBeforeMm).toFixed(1)}l9 -6v12z`} />
          ) : null}
          <text class="pad-value" x={right + 13} y={y(upperHalfMeanMm) + (before ? 12 : 5)}>
            {now.text}
          </text>
          {before && before.text !== now.text ? (
            <text class="pad-was" x={right + 13} y={y(upperHalfMeanBeforeMm ?? 0) - 6}>
              {before.number}
            </text>
          ) : null}
        </svg>
      </div>
    </div>
  );
}

const fractions = ['', '1/4', '1/2', '3/4'];
/** Inches on a tailor's ruler: 1 1/4. */
function quarters(inches: number): string {
  const count = Math.round(inches * 4);
  const whole = Math.floor(count / 4);
  const part = fractions[count % 4] ?? '';
  return part === '' ? String(whole) : whole === 0 ? part : `${whole} ${part}`;
}
