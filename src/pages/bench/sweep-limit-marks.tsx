import { useWords } from '../../language/words.ts';
import { benchSides } from '../../statechart/saved-bench.ts';
import { benchWords } from './bench-words.ts';
import type { LimitsOfBoth } from './sweep-limit-lines.tsx';

const rowTall = 19;

export interface SweepLimitMarksProps {
  readonly limits: LimitsOfBoth;
  /** Place on the axis in px. */
  readonly x: (at: number) => number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
}

/** Room that the names of the limits take above a curve, px. */
export const limitNamesTall = (limits: LimitsOfBoth): number => (limits.a.length + limits.b.length) * rowTall;

/** Each limit as a line down the chart, its name in a row of its own at the line's head. */
export function SweepLimitMarks({ limits, x, width, top, bottom }: SweepLimitMarksProps) {
  const { language } = useWords();
  const { sweep: said } = benchWords(language);
  const all = benchSides.flatMap((side) => limits[side].map((limit) => ({ side, ...limit })));
  return (
    <>
      {all.map(({ side, bounds, reason, at }, row) => {
        const [px, head] = [x(at), top + row * rowTall];
        const isRight = px > width / 2;
        return (
          <g key={`${side}${bounds}${at}`} data-side={side}>
            <path class="sweep-limit" data-bounds={bounds} d={`M${px} ${head}V${bottom}`} />
            <text
              class="sweep-limit-name"
              x={isRight ? px - 6 : px + 6}
              y={head + 13}
              text-anchor={isRight ? 'end' : 'start'}
            >
              {said.limits[bounds][reason]}
            </text>
          </g>
        );
      })}
    </>
  );
}
