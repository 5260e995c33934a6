import { bollFacts } from '../../../model/field/facts.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { ring } from '../../cloth/point.ts';
import { group, type Mark, type Stitch } from '../../display-list.ts';

/** A rule for fibres, in the reader's units. */
export interface FibreRule {
  /** Its whole length, mm. */
  readonly mm: number;
  readonly ticks: readonly { readonly mm: number; readonly text?: string }[];
}

export interface RuledFibre {
  /** Length of the fibres so far, mm. */
  readonly mm: number;
  /** Wall laid down, of what a full fibre has, 0 to 1. */
  readonly wall: number;
}

/** The first skin, before any wall is laid down, so that a young fibre can be seen. */
const THIN_SKIN = 0.08;
/** Threads combed out from the seed. */
const THREADS = 17;

/** One seed with its fibres combed straight along a tailor's rule; x and y are its left end, on the edge of the rule. */
export function fibreOnRule(
  { rule, fibre }: { readonly rule: FibreRule; readonly fibre: RuledFibre },
  x: number,
  y: number,
  width: number,
  textPx: number,
): Mark[] {
  const seedPx = textPx * 0.95;
  const from = x + seedPx * 1.5;
  const pxPerMm = (x + width - from) / rule.mm;
  const chance = chanceOf('fibreRule');
  const reach = fibre.mm * pxPerMm;
  const middle = y - seedPx * 1.3;
  const threads: Stitch[] = Array.from({ length: THREADS }, (_, i) => {
    const across = ((i + 0.5) / THREADS - 0.5) * seedPx * 1.9;
    const end = from + reach * (1 + spread(chance, 0.03));
    return [from - seedPx * 0.3, middle + across * 0.45, Math.max(from - seedPx * 0.2, end), middle + across];
  });
  const tickStitches: Stitch[] = [[from, y, x + width, y]];
  const words: Mark[] = [];
  const written = rule.ticks.filter(({ text }) => text !== undefined);
  const apart = written.length > 1 ? (written[1]!.mm - written[0]!.mm) * pxPerMm : width;
  // Where the figures would crowd, every second one is written, counted from the last.
  const every = apart < textPx * 3 ? 2 : 1;
  for (const tick of rule.ticks) {
    const { mm, text } = tick;
    const at = from + mm * pxPerMm;
    tickStitches.push([at, y, at, y + (text === undefined ? textPx * 0.4 : textPx * 0.7)]);
    if (text !== undefined && (written.length - 1 - written.indexOf(tick)) % every === 0)
      words.push({ kind: 'text', text, x: at, y: y + textPx * 1.65, size: textPx, ink: 'ink', anchor: 'middle' });
  }
  return [
    patch(
      'fibreRule',
      [
        [x - 2, y - 2],
        [x + width + 8, y - 1],
        [x + width + 7, y + textPx * 2.05],
        [x - 3, y + textPx * 2.02],
      ],
      'muslin',
      { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 0.8, snip: 90, bow: 0.001 } },
    ),
    { kind: 'stitches', stitches: tickStitches, ink: 'ink', width: 1.4, flat: true },
    ...words,
    group(
      'fibres',
      [{ kind: 'stitches', stitches: threads, ink: 'lint', width: 0.8 + 1.3 * fibre.wall, flat: true }],
      THREADS,
    ),
    ...pieceMarks('seed', 'fibreRule/seed', { x: x + seedPx * 0.9, y: middle, size: seedPx, turn: -Math.PI / 2 }),
  ];
}

/** One fibre cut across, very large: the wall grows inwards and leaves less and less of a hollow. */
export function fibreSection(x: number, y: number, radius: number, wall: number): Mark[] {
  const hollow = radius * Math.sqrt(1 - bollFacts.wallOfSectionGrown.value * wall - THIN_SKIN);
  const flat = { seam: 0, grain: null, scissors: { miss: radius * 0.02, snip: radius * 0.7, bow: 0.01 } } as const;
  return [
    patch('section/wall', ring(x, y, radius, 22, 0.1), 'lint', { shadow: 2.6, ...flat }),
    patch('section/hollow', ring(x, y, hollow, 18, 0.4), 'mid', { shadow: 0, ...flat }),
  ];
}
