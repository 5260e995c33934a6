import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Point } from '../../display-list.ts';
import {
  type DrawnPlanter,
  hopperSeeds,
  type Planter,
  partsInView,
  pieceCutter,
  platePart,
  rollingPart,
  tubeRails,
  wheelMarks,
  windowSeeds,
} from './planter.ts';

/**
 * A one-row planter that a mule draws and a person walks behind, as in the 1930s: a round hopper, a plow point that opens the
 * furrow, and a wheel that presses it shut and drives the plate by a chain. Mule and person are outside the picture.
 */
export function horsePlanter(planter: Planter): DrawnPlanter {
  const { tube, soilY, unit: u, words } = planter;
  const x = tube[0];
  const cut = pieceCutter(planter);
  const at = (dx: number, up: number): Point => [x + dx * u, soilY - up * u];
  const shape = (points: readonly (readonly [number, number])[]): Point[] => points.map(([dx, up]) => at(dx, up));
  const handle = (points: readonly (readonly [number, number])[]) => taperedStrip(shape(points), 11 * u, 8 * u);
  const wheelRadius = 46 * u;
  const wheel: Point = [x - 78 * u, soilY - wheelRadius + 4 * u];
  const plate = at(4, 106);
  const pointY = tube[1] + 4 * u;
  return {
    seedPath: [[plate[0] + 6 * u, plate[1] + 18 * u], [x + 3 * u, soilY - 16 * u], tube],
    parts: partsInView(planter, [
      rollingPart(
        planter,
        'pressWheel',
        wheel,
        wheelRadius,
        wheelMarks('pressWheel', wheel, wheelRadius, 'iron', 8),
        words.wheel,
      ),
      platePart(planter, plate, 22 * u),
    ]),
    body: [
      group('planter', [
        ...cut(
          'handle/far',
          handle([
            [-14, 74],
            [-76, 122],
            [-150, 146],
          ]),
          'walnut',
          0,
        ),
        ...cut(
          'beam',
          shape([
            [-86, 44],
            [158, 72],
            [158, 88],
            [-86, 60],
          ]),
          'walnutWarm',
          3 * u,
        ),
        ...cut(
          'hook',
          shape([
            [150, 66],
            [162, 66],
            [162, 94],
            [150, 94],
          ]),
          'iron',
          0,
        ),
        ...cut(
          'standard',
          [
            ...shape([
              [26, 72],
              [46, 74],
            ]),
            [x + 46 * u, soilY - 2 * u],
            [x + 28 * u, soilY - 2 * u],
          ],
          'iron',
          0,
        ),
        ...cut(
          'point',
          [
            [x + 18 * u, soilY - 20 * u],
            [x + 56 * u, soilY - 20 * u],
            [x + 54 * u, soilY + (pointY - soilY) * 0.5],
            [x + 30 * u, pointY],
            [x + 16 * u, soilY + (pointY - soilY) * 0.5],
          ],
          'indigo',
          4 * u,
        ),
        ...tubeRails(planter, [at(6, 84), [x + 1 * u, tube[1] - 6 * u]], 8 * u),
        ...cut(
          'hopper',
          shape([
            [-34, 128],
            [40, 128],
            [58, 206],
            [-52, 206],
          ]),
          'madder',
          6 * u,
        ),
        ...cut(
          'lid',
          shape([
            [-62, 203],
            [68, 203],
            [60, 217],
            [-54, 218],
          ]),
          'iron',
          0,
        ),
        hopperSeeds(planter, windowSeeds),
        ...cut(
          'handle/near',
          handle([
            [-8, 64],
            [-72, 106],
            [-150, 126],
          ]),
          'walnut',
          0,
        ),
      ]),
    ],
  };
}
