import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { piecedGround } from '../cloth/pieced-ground.ts';
import { rectangle } from '../cloth/point.ts';
import type { Mark } from '../display-list.ts';

/** Bare edge round a picture, px, for the shadow and the off-square edge. */
const EDGE_PX = 3;

/** The ground of a picture, edge to edge: a few big pieces, one hard shadow, a running stitch along the hem. */
export function sceneGround(
  name: string,
  { width, height }: { readonly width: number; readonly height: number },
  inks: readonly InkName[],
  strips: number,
  thread: InkName,
): Mark[] {
  const box = { x: EDGE_PX, y: EDGE_PX, width: width - 2 * EDGE_PX - 1, height: height - 2 * EDGE_PX - 2 };
  const outline = rectangle(box.x, box.y, box.width, box.height);
  return [
    patch(`${name}/under`, outline, inks[0]!, { shadow: 2.6, seam: 0, grain: null, scissors: { miss: 1 } }),
    ...piecedGround(name, box, { inks, strips, thread }),
  ];
}
