import { Drawing, type FigureProps, GrainLine, Measure, Words } from './drawing.tsx';

/** Cloth between its selvages with two strips marked on it; how many fit is for the pupil to say. */
export function StripsFigure({ labels, sizes, words }: FigureProps) {
  const [left, top, wide, high] = [9, 8, 50, 20];
  const strip = (wide * sizes.strip!) / sizes.width!;
  const middle = top + high / 2;
  return (
    <Drawing>
      <path class="drawn-cloth" d={`M${left} ${top}h${wide}v${high}h${-wide}z`} />
      {[left, left + wide].map((x) => (
        <path key={x} class="drawn-selvage" d={`M${x} ${top}v${high}`} />
      ))}
      {[1, 2].map((count) => (
        <path key={count} class="drawn-cut" d={`M${left + count * strip} ${top}v${high}`} />
      ))}
      <Measure x1={left} y1={top - 2.5} x2={left + wide} y2={top - 2.5} />
      <Words x={left + wide / 2} y={top - 4}>
        {labels.width}
      </Words>
      <Measure x1={left} y1={top + high + 2.5} x2={left + strip} y2={top + high + 2.5} />
      <Words x={left} y={top + high + 6.4} anchor="start">
        {labels.strip}
      </Words>
      <Words x={left - 2} y={middle} turned>
        {words.selvage}
      </Words>
      <Words x={left + wide + 4.4} y={middle} turned>
        {words.selvage}
      </Words>
      <GrainLine x1={left + wide - 6} y1={top + high - 2} x2={left + wide - 6} y2={top + 2} />
      <Words x={left + wide - 7.6} y={middle} turned>
        {words.grain}
      </Words>
    </Drawing>
  );
}

/** A length of the narrower cloth, and the wider one it is to be bought in; widths to one scale. */
export function TwoWidthsFigure({ labels, sizes, words }: FigureProps) {
  const scale = 27 / sizes.to!;
  const [top, high] = [7, 25];
  const narrow = sizes.from! * scale;
  const wide = sizes.to! * scale;
  const wideHigh = (high * sizes.from!) / sizes.to!;
  const wideLeft = 38;
  return (
    <Drawing>
      <path class="drawn-cloth" d={`M9 ${top}h${narrow}v${high}h${-narrow}z`} />
      <path class="drawn-cloth" d={`M${wideLeft} ${top}h${wide}`} />
      <path class="drawn-cloth" d={`M${wideLeft} ${top}v${wideHigh + 2}M${wideLeft + wide} ${top}v${wideHigh + 2}`} />
      <path class="drawn-cut" d={`M${wideLeft} ${top + wideHigh + 2}h${wide}`} />
      <Words x={9 + narrow / 2} y={top - 3.4}>
        {labels.from}
      </Words>
      <Measure x1={9} y1={top - 2} x2={9 + narrow} y2={top - 2} />
      <Words x={wideLeft + wide / 2} y={top - 3.4}>
        {labels.to}
      </Words>
      <Measure x1={wideLeft} y1={top - 2} x2={wideLeft + wide} y2={top - 2} />
      <Measure x1={6.5} y1={top} x2={6.5} y2={top + high} />
      <Words x={5} y={top + high / 2} turned>
        {labels.needed}
      </Words>
      <Words x={wideLeft - 3} y={top + wideHigh / 2 + 1}>
        ?
      </Words>
      {[9 + narrow - 4, wideLeft + wide - 4].map((x) => (
        <g key={x}>
          <GrainLine x1={x} y1={top + 13.5} x2={x} y2={top + 2} />
          <Words x={x - 1.6} y={top + 8} turned>
            {words.grain}
          </Words>
        </g>
      ))}
    </Drawing>
  );
}

/** A quilt within its backing, and one strip of cloth standing and one lying; to one scale. */
export function BackingFigure({ labels, sizes, words }: FigureProps) {
  const [wide, long] = [sizes.width! + sizes.over!, sizes.length! + sizes.over!];
  // The quilt, a strip standing and one lying beside each other: as large as there is room for.
  const scale = Math.min(26 / long, 45 / (2 * wide + sizes.usable!));
  const [top, left] = [6.5, 10];
  const edge = (sizes.over! * scale) / 2;
  const strip = sizes.usable! * scale;
  const standing = left + wide * scale + 8;
  const lying = standing + strip + 4;
  return (
    <Drawing>
      <path class="drawn-cloth" d={`M${left} ${top}h${wide * scale}v${long * scale}h${-wide * scale}z`} />
      <path
        class="drawn-cut"
        d={`M${left + edge} ${top + edge}h${sizes.width! * scale}v${sizes.length! * scale}h${-sizes.width! * scale}z`}
      />
      <Words x={left + (wide * scale) / 2} y={top + (long * scale) / 2 + 1}>
        {words.quilt}
      </Words>
      <Measure x1={left + edge} y1={top - 2} x2={left + wide * scale - edge} y2={top - 2} />
      <Words x={left + (wide * scale) / 2} y={top - 3.2}>
        {labels.width}
      </Words>
      <Measure x1={left - 2} y1={top + edge} x2={left - 2} y2={top + long * scale - edge} />
      <Words x={left - 3.4} y={top + (long * scale) / 2} turned>
        {labels.length}
      </Words>
      <path class="drawn-cloth" d={`M${standing} ${top}h${strip}v${long * scale}h${-strip}z`} />
      <GrainLine x1={standing + strip - 2.4} y1={top + long * scale - 2} x2={standing + strip - 2.4} y2={top + 2} />
      <Words x={standing + strip / 2 - 0.6} y={top + (long * scale) / 2} turned>
        {words.upright}
      </Words>
      <Words x={standing + strip / 2} y={top - 3.2}>
        {labels.usable}
      </Words>
      <Measure x1={standing} y1={top - 2} x2={standing + strip} y2={top - 2} />
      <path class="drawn-cloth" d={`M${lying} ${top}h${wide * scale}v${strip}h${-wide * scale}z`} />
      <GrainLine x1={lying + 2} y1={top + strip - 2.4} x2={lying + wide * scale - 2} y2={top + strip - 2.4} />
      <Words x={lying + (wide * scale) / 2} y={top + strip / 2}>
        {words.crosswise}
      </Words>
    </Drawing>
  );
}
