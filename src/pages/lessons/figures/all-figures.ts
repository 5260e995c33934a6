import { BaleAndTag, baleAndTagDoc } from './bale-and-tag.tsx';
import { BollGrowth, bollGrowthDoc } from './boll-growth.tsx';
import { BundleAndYarn, bundleAndYarnDoc } from './bundle-and-yarn.tsx';
import { clothFigureDocs, clothFigures } from './cloth-figures.ts';
import { ColorAndLeaf, colorAndLeafDoc } from './color-and-leaf.tsx';
import { FiberSections, fiberSectionsDoc } from './fiber-sections.tsx';
import { fieldToBaleDocs, fieldToBaleFigures } from './field-to-bale-figures.ts';
import type { FigureDoc } from './figure.ts';
import { LengthArray, lengthArrayDoc } from './length-array.tsx';
import { OneBoll, oneBollDoc } from './one-boll.tsx';
import { UniformityPads, uniformityPadsDoc } from './uniformity-pads.tsx';

/** Every figure by its name in a lesson. */
export const figures = {
  ...clothFigures,
  ...fieldToBaleFigures,
  BaleAndTag,
  BollGrowth,
  BundleAndYarn,
  ColorAndLeaf,
  FiberSections,
  LengthArray,
  OneBoll,
  UniformityPads,
};

/** What each figure says of itself. */
export const figureDocs: readonly FigureDoc[] = [
  ...clothFigureDocs,
  ...fieldToBaleDocs,
  baleAndTagDoc,
  bollGrowthDoc,
  lengthArrayDoc,
  fiberSectionsDoc,
  bundleAndYarnDoc,
  uniformityPadsDoc,
  colorAndLeafDoc,
  oneBollDoc,
];
