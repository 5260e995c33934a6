import { Drawing, type FigureProps, Words } from './drawing.tsx';

const [top, high, inLeft, gin, outRight] = [6.5, 25, 20, 27, 40];
/** Room for a line of words, millimeters. */
const lineMm = 4.6;

/** What went in as one band, and what came out as bands of their own: widths are masses, and the last is for the pupil to find. */
export function GinFigure({ labels, sizes, words }: FigureProps) {
  const known = (['lint', 'seed', 'trash', 'motes'] as const).filter((name) => name in sizes);
  const rest = sizes.load! - known.reduce((sum, name) => sum + sizes[name]!, 0);
  const bands = [...known.map((name) => ({ name, size: sizes[name]! })), { name: 'rest' as const, size: rest }];
  const saysRest = known.length > 2 ? words.water : words.rest;
  const scale = high / sizes.load!;
  let from = top;
  const placed = bands.map(({ name, size }) => {
    const at = from;
    from += size * scale;
    return { name, at, end: from };
  });
  // Labels keep apart where bands are thin: each at its band, or below the one before.
  const tops: number[] = [];
  for (const { at, end } of placed) tops.push(Math.max((at + end) / 2 + 1.2, (tops.at(-1) ?? 0) + lineMm));
  const over = Math.max(0, tops.at(-1)! - (top + high + 2));
  const lines = tops.map((y, i) => Math.max(y - over, top + i * lineMm));
  return (
    <Drawing>
      <path class="drawn-cloth" d={`M${inLeft} ${top}H${outRight}V${top + high}H${inLeft}z`} />
      <path class="drawn-gin" d={`M${gin} ${top - 2}V${top + high + 2}`} />
      <Words x={gin} y={top - 3.2}>
        {words.gin}
      </Words>
      {placed.slice(1).map(({ name, at }) => (
        <path key={name} class="drawn-thin" d={`M${gin} ${at}H${outRight}`} />
      ))}
      <Words x={inLeft - 1.5} y={top + high / 2 - 1} anchor="end">
        {labels.load}
      </Words>
      {placed.map(({ name, at, end }, i) => (
        <g key={name}>
          <path class="drawn-thin" d={`M${outRight} ${(at + end) / 2}L${outRight + 2.5} ${lines[i]! - 1}`} />
          <Words x={outRight + 3.2} y={lines[i]!} anchor="start">
            {name === 'rest' ? `${saysRest} ?` : `${words[name]} ${labels[name]}`}
          </Words>
        </g>
      ))}
    </Drawing>
  );
}
