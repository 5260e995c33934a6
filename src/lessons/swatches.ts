import type { ClothName } from '../model/cloth/catalogue-facts.ts';
import type { ClothDescription } from '../model/cloth/describe-cloth.ts';
import { type Drape, drapeOf } from '../model/cloth/feel.ts';
import { interlacing } from '../model/cloth/weaves.ts';
import { cottons } from '../model/mill/cotton-facts.ts';
import { nominalMtexFromMicronaire } from '../model/units.ts';
import { listedCloth } from './listed-cloths.ts';

/** Cloths of the swatch guide. */
export const swatchIds = [
  'quilting',
  'muslin',
  'percale',
  'lawn',
  'voile',
  'batiste',
  'chambray',
  'flannel',
  'gauze',
  'sateen',
  'denim',
  'duckTen',
] as const satisfies readonly ClothName[];
export type SwatchId = (typeof swatchIds)[number];

export const swatchOrders = ['weight', 'cover'] as const;
export type SwatchOrder = (typeof swatchOrders)[number];

export interface Swatch {
  readonly id: SwatchId;
  readonly cloth: ClothDescription;
  readonly drape: Drape['word'];
}

const orderBy: Record<SwatchOrder, (swatch: Swatch) => number> = {
  weight: ({ cloth }) => cloth.gramsPerSquareMetre,
  cover: ({ cloth }) => cloth.coverFraction,
};

/** The swatches from light to heavy, or from open to close. Fibre as of ordinary upland. */
export function swatches(order: SwatchOrder): readonly Swatch[] {
  const mtex = nominalMtexFromMicronaire(cottons.uplandMedium.micronaire);
  return swatchIds
    .map((id): Swatch => {
      const cloth = listedCloth(id);
      const { gramsPerSquareMetre, coverFraction, construction } = cloth;
      const drape = drapeOf(gramsPerSquareMetre, coverFraction, interlacing(construction.weave), mtex).word;
      return { id, cloth, drape };
    })
    .sort((a, b) => orderBy[order](a) - orderBy[order](b));
}
