import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { type BenchOutcomeKey, benchOutcome } from '../../model/bench/outcomes.ts';
import type { SweepInput, SweepPlace } from '../../model/bench/sweep.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import { useWidth } from '../../ui/use-width.ts';
import { benchWords } from './bench-words.ts';
import type { LimitsOfBoth } from './sweep-limit-lines.tsx';
import { limitNamesTall, SweepLimitMarks } from './sweep-limit-marks.tsx';
import type { Swept } from './use-sweep.ts';

const tall = 300;
const edge = { left: 58, right: 16, top: 18, bottom: 46 };
const ticks = 5;

/** A round step that gives about five ticks. */
function stepOf(span: number): number {
  const rough = span / ticks;
  const power = 10 ** Math.floor(Math.log10(rough));
  return [1, 2, 5, 10].map((n) => n * power).find((step) => step >= rough) ?? rough;
}
function ticksOf(low: number, high: number): number[] {
  const step = stepOf(high - low || 1);
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
}

export interface SweepChartProps {
  readonly swept: Swept;
  readonly input: SweepInput;
  readonly outcome: BenchOutcomeKey;
  /** Where each bench itself stands on the axis. */
  readonly here: { readonly a: number; readonly b: number };
  readonly limits: LimitsOfBoth;
}

/** Both curves: the first dashed, the second whole; crosses where the yarn is out of reach, open knots where it is strained. */
export function SweepChart({ swept, input, outcome, here, limits }: SweepChartProps) {
  const { language, formats, unitSystem, messages } = useWords();
  const said = benchWords(language);
  const [place, width] = useWidth<HTMLDivElement>(560);
  const isMetric = unitSystem === 'metric';
  // The axis is drawn in the reader's unit; places stay in the model's.
  const factor = input === 'staple' && isMetric ? MM_PER_INCH : 1;
  const top = edge.top + limitNamesTall(limits);
  const height = tall + limitNamesTall(limits);
  const all = [...swept.a, ...swept.b];
  const values = all.flatMap(({ bench }) => benchOutcome(outcome, bench) ?? []);
  const [low, high] = [Math.min(0, ...values), Math.max(...values, 1e-9)];
  const from = Math.min(...all.map(({ at }) => at));
  const to = Math.max(...all.map(({ at }) => at));
  const x = (at: number) => edge.left + ((at - from) / (to - from || 1)) * (width - edge.left - edge.right);
  const y = (value: number) => height - edge.bottom - ((value - low) / (high - low)) * (height - top - edge.bottom);
  const line = (places: readonly SweepPlace[]) =>
    places
      .flatMap(({ at, bench }) => {
        const value = benchOutcome(outcome, bench);
        return value === null ? [] : [`${x(at).toFixed(1)} ${y(value).toFixed(1)}`];
      })
      .map((point, i) => (i === 0 ? 'M' : 'L') + point)
      .join('');
  const marks = (places: readonly SweepPlace[]) =>
    places.map(({ at, bench }) => {
      const { status } = bench.warp.spinning.verdict;
      const value = benchOutcome(outcome, bench) ?? low;
      const [px, py] = [x(at), y(value)];
      if (status === 'comfortable') return null;
      return status === 'strained' ? (
        <circle key={at} class="sweep-strained" cx={px} cy={py} r="4" />
      ) : (
        <path key={at} class="sweep-out" d={`M${px - 4} ${py - 4}l8 8m0 -8l-8 8`} />
      );
    });
  const name =
    said.numbers[outcome === 'finestNe' ? 'comfortable' : outcome === 'shrinkLength' ? 'shrink' : outcome] ?? '';
  return (
    <div ref={place} class="sweep-chart">
      <svg
        role="img"
        aria-label={fill(said.sweep.alt, { outcome: name, input: said.sweep.inputs[input] })}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
      >
        {ticksOf(low, high).map((value) => (
          <g key={value}>
            <path class="sweep-grid" d={`M${edge.left} ${y(value)}H${width - edge.right}`} />
            <text x={edge.left - 8} y={y(value) + 5} text-anchor="end">
              {formats.number(value, high < 10 ? 1 : 0)}
            </text>
          </g>
        ))}
        {ticksOf(from * factor, to * factor).map((at) => (
          <g key={at}>
            <path class="sweep-tick" d={`M${x(at / factor)} ${height - edge.bottom}v7`} />
            <text x={x(at / factor)} y={height - edge.bottom + 22} text-anchor="middle">
              {formats.number(at, (to - from) * factor < 5 ? 1 : 0)}
            </text>
          </g>
        ))}
        <SweepLimitMarks limits={limits} x={x} width={width} top={edge.top - 12} bottom={height - edge.bottom} />
        <text class="sweep-axis" x={width - edge.right} y={height - 4} text-anchor="end">
          {fill(said.sweep.axes[input], { unit: messages.units[isMetric ? 'millimetres' : 'inches'].sign })}
        </text>
        {(['a', 'b'] as const).map((side) => (
          <g key={side} data-side={side}>
            <path class="sweep-line" d={line(swept[side])} />
            {marks(swept[side])}
            <path
              class="sweep-here"
              d={`M${x(Math.min(to, Math.max(from, here[side])))} ${height - edge.bottom}l-6 9h12z`}
            />
          </g>
        ))}
      </svg>
    </div>
  );
}
