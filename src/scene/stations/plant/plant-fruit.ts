import { bollFacts, stageFacts } from '../../../model/field/facts.ts';
import { greenBollMarks, openBollMarks } from '../../cloth/boll.ts';
import { chanceOf, spread } from '../../cloth/chance.ts';
import { cutOnce } from '../../cloth/cut-once.ts';
import { flowerMarks, squareMarks } from '../../cloth/flower.ts';
import type { Mark } from '../../display-list.ts';
import type { LaidSite } from './plant-layout.ts';
import { type PlantLook, SIZES } from './plant-look.ts';
import type { SiteState } from './plant-sample.ts';

/** What stands at a site: a square, a flower, a boll, or the cross of one that was shed. */
export function fruitMarks(
  name: string,
  { site, at }: LaidSite,
  state: SiteState,
  side: -1 | 1,
  look: PlantLook,
): Mark[] {
  const unit = look.pxPerInch;
  const chance = chanceOf(name);
  const [x, y] = at;
  switch (state.kind) {
    case 'notYet':
      return [];
    case 'square': {
      const size = SIZES.square * unit * (0.45 + 0.55 * Math.min(1, state.ageDays / stageFacts.flowerDays.value));
      return [
        ...cutOnce(
          `square/${name}`,
          { x, y: y + size * 0.1, size, wide: 1, turn: side * 0.35 + spread(chance, 0.2) },
          (placing) => squareMarks(name, placing),
        ),
      ];
    }
    case 'flower':
      return [
        ...cutOnce(
          `${look.kind}${state.ageDays}/${name}`,
          { x, y, size: SIZES.flower * unit, wide: 1, turn: spread(chance, 0.6) },
          (placing) => flowerMarks(name, placing, look.kind, state.ageDays),
        ),
      ];
    case 'greenBoll': {
      const size = SIZES.greenBoll * unit * (0.4 + 0.6 * Math.min(1, state.ageDays / bollFacts.fullSizeDays.value));
      return [
        ...cutOnce(`boll/${name}`, { x, y: y + size * 0.9, size, wide: 1, turn: spread(chance, 0.25) }, (placing) =>
          greenBollMarks(name, placing),
        ),
      ];
    }
    case 'openBoll': {
      const size = SIZES.openBoll * unit * Math.min(1, 0.75 + 0.12 * state.ageDays);
      return [
        ...cutOnce(
          `open${site.locks}/${name}`,
          { x, y: y + size * 0.5, size, wide: 1, turn: spread(chance, 0.6) },
          (placing) => openBollMarks(name, placing, site.locks),
        ),
      ];
    }
    case 'shed': {
      const reach = Math.max(3.2, unit * 0.36);
      return [
        {
          kind: 'stitches',
          stitches: [
            [x - reach, y - reach, x + reach, y + reach],
            [x - reach, y + reach, x + reach, y - reach],
          ],
          ink: 'madder',
          width: Math.max(1.6, unit * 0.16),
        },
      ];
    }
  }
}
