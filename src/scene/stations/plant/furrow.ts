import { chanceOf, spread } from '../../cloth/chance.ts';
import { patch } from '../../cloth/patch.ts';
import { pieceMarks } from '../../cloth/piece.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule } from '../../cloth/ruler.ts';
import { type DisplayList, group, type Mark } from '../../display-list.ts';
import { backingMark, skyMarks, soilMarks } from '../field/ground.ts';
import { rowPlanter } from '../planting/planter.ts';

/** A row being sown, standing still. */
export interface FurrowScene {
  readonly size: { readonly width: number; readonly height: number };
  readonly seedsPerFoot: number;
  readonly labels: {
    /** Ticks along the furrow: feet from the left edge, and what to write there. */
    readonly rowTicks: readonly { readonly feet: number; readonly text?: string }[];
  };
}

/** Feet of furrow in view. */
export const furrowFeet = (width: number): number => (width > 500 ? 4 : 2);

/** How far along the row the planter has come. */
const SOWN = 0.72;
const TAPE_PX = 34;
/** The planter stands still here, and says nothing of what turns. */
const still = { opener: () => '', wheel: () => '', plate: '' };

/** A cut through the furrow: the planter, and the seed at its count to the foot. */
export function furrowScene({ size: { width, height }, seedsPerFoot, labels }: FurrowScene): DisplayList {
  const box: Box = { x: 3, y: 3, width: width - 9, height: height - 10 };
  const soilY = box.y + box.height * 0.5;
  const tapeY = box.y + box.height - TAPE_PX - 8;
  const pxPerFoot = box.width / furrowFeet(width);
  const unit = Math.min(width, height * 1.3) / 728;
  const spacing = pxPerFoot / seedsPerFoot;
  const seedY = (soilY + tapeY) / 2;
  const size = Math.min(20 * unit, spacing * 0.32);
  const last = box.x + box.width * SOWN;
  const seeds: Mark[] = [];
  let sown = 0;
  for (let x = box.x + spacing / 2; x < last; x += spacing) {
    const turn = spread(chanceOf(`furrow/${sown}`), 0.9) + Math.PI;
    seeds.push(...pieceMarks('seed', `furrow/${sown}`, { x, y: seedY, size, turn }));
    sown++;
  }
  const planter = rowPlanter({
    tube: [last, seedY],
    soilY,
    depthPx: seedY - soilY,
    unit,
    pxPerFoot,
    seedsPerFoot,
    pxPerSecond: 0,
    words: still,
    edges: { left: box.x, right: box.x + box.width },
  });
  return [
    backingMark(box),
    ...skyMarks(box, soilY),
    ...soilMarks(box, soilY, tapeY),
    group('seedsSown', seeds, sown),
    patch('furrow/tape', rectangle(box.x - 2, tapeY, box.width + 4, TAPE_PX), 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 120, bow: 0.001 },
    }),
    ...chalkRule(
      [box.x, tapeY + 2],
      box.width,
      labels.rowTicks.map(({ feet, text }) =>
        text === undefined ? { at: feet * pxPerFoot } : { at: feet * pxPerFoot, text },
      ),
      { direction: 'right', ink: 'ink', size: 14 },
    ),
    ...planter.parts.flatMap(({ marks }) => marks),
    ...planter.body,
  ];
}
