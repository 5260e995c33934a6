import { totalDryKg } from '../lot.ts';
import { KILO } from '../units.ts';
import type { BothWays, Cloth, ClothYarn } from './cloth.ts';
import { areaKept, clothInUse, oneAfterAnother } from './cloth-in-use.ts';
import type { WovenConstruction } from './construction.ts';
import { relax } from './crimp.ts';
import { describeCloth } from './describe-cloth.ts';
import { geometryFacts, shrinkFacts } from './facts.ts';
import { drapeOf } from './feel.ts';
import { greyKilometres, type Made } from './making.ts';
import { maximumSettPerInch } from './sett.ts';
import { interlacing } from './weaves.ts';
import { yarnKilometresPerSquareMetre } from './weight.ts';

/** Finished woven cloth: as much area as its yarn reaches for, drawn in by the finish. */
export function wovenCloth(made: Made, yarn: ClothYarn, grey: WovenConstruction, fibreMtex: number): Cloth {
  const perSquareMetre = yarnKilometresPerSquareMetre(grey);
  const kilometres = greyKilometres(made, yarn.tex);
  const greySquareMetres = kilometres / (perSquareMetre.warp + perSquareMetre.weft);
  const { finishLength, finishWidth, leftLength, leftWidth } = shrinkFacts;
  const none: BothWays = { length: 0, width: 0 };
  const inFinish: BothWays = { length: finishLength.value, width: finishWidth.value };
  const inWash: BothWays = { length: leftLength.value, width: leftWidth.value };
  const isGrey = made.finish === 'grey';
  const shrink = isGrey ? none : inFinish;

  // Size that is still on the cloth makes the warp heavier; all else is shared by warp and weft alike.
  const { dryKg } = made.finished.masses;
  const grams = (kilograms: number) => kilograms * (1 + made.regain) * KILO;
  const weftTex = grams(totalDryKg(dryKg) - dryKg.size) / kilometres;
  const warpTex = weftTex + grams(dryKg.size) / (perSquareMetre.warp * greySquareMetres);
  const description = describeCloth({
    ...relax(grey, shrink.length, shrink.width),
    warp: { singleTex: warpTex, singles: 1 },
    weft: { singleTex: weftTex, singles: 1 },
    combed: yarn.combed,
  });
  const highest = maximumSettPerInch(yarn.tex, yarn.tex, grey.weave);
  const { gramsPerSquareMetre, coverFraction } = description;
  return {
    ...clothInUse(
      made,
      yarn,
      greySquareMetres,
      greySquareMetres * areaKept(shrink),
      geometryFacts.clothWidthInches.value,
    ),
    description,
    gramsPerSquareMetre,
    finishShrinkPercent: shrink,
    // Grey cloth still has to lose what finishing would have taken.
    shrinkLeftPercent: isGrey ? oneAfterAnother(inFinish, inWash) : inWash,
    drape: drapeOf(gramsPerSquareMetre, coverFraction, interlacing(grey.weave), fibreMtex),
    notes: (grey.endsPerInch + grey.picksPerInch) / 2 > highest ? ['tightSett'] : [],
  };
}
