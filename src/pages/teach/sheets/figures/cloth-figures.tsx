import { Drawing, type FigureProps, GrainLine, Measure, Words } from './drawing.tsx';

/** A piece of cloth with its length and its width. */
export function PieceFigure({ labels, words }: FigureProps) {
  const [left, top, wide, high] = [12, 8, 46, 23];
  return (
    <Drawing>
      <path class="drawn-cloth" d={`M${left} ${top}h${wide}v${high}h${-wide}z`} />
      <Measure x1={left} y1={top - 2} x2={left + wide} y2={top - 2} />
      <Words x={left + wide / 2} y={top - 3.4}>
        {labels.length}
      </Words>
      <Measure x1={left - 2} y1={top} x2={left - 2} y2={top + high} />
      <Words x={left - 3.6} y={top + high / 2} turned>
        {labels.width}
      </Words>
      <GrainLine x1={left + 8} y1={top + high / 2} x2={left + wide - 8} y2={top + high / 2} />
      <Words x={left + wide / 2} y={top + high / 2 - 1.6}>
        {words.grain}
      </Words>
    </Drawing>
  );
}

const threads = [0, 1, 2, 3, 4, 5] as const;
const pitch = 4.4;
const thick = 2.4;

/** Plain weave, over one and under one, with warp and weft named. */
export function WeaveFigure({ words }: FigureProps) {
  const [left, top] = [22, 7];
  const length = threads.length * pitch;
  const bar = (x: number, y: number, width: number, height: number) => `M${x} ${y}h${width}v${height}h${-width}z`;
  return (
    <Drawing>
      {threads.map((pick) => (
        <path key={pick} class="drawn-weft" d={bar(left - 2, top + pick * pitch, length + 3, thick)} />
      ))}
      {threads.flatMap((end) =>
        threads
          .filter((pick) => (end + pick) % 2 === 0)
          .map((pick) => (
            <path
              key={`${end}${pick}`}
              class="drawn-warp"
              d={bar(left + end * pitch, top + pick * pitch - (pitch - thick), thick, thick + 2 * (pitch - thick))}
            />
          )),
      )}
      <Words x={left + length / 2 - 1} y={top - 3.2}>
        {words.warp}
      </Words>
      <Words x={left - 4} y={top + length / 2} turned>
        {words.weft}
      </Words>
    </Drawing>
  );
}
