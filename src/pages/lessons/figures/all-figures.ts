import { BundleAndYarn, bundleAndYarnDoc } from './bundle-and-yarn.tsx';
import { FiberSections, fiberSectionsDoc } from './fiber-sections.tsx';
import { fieldToBaleDocs, fieldToBaleFigures } from './field-to-bale-figures.ts';
import type { FigureDoc } from './figure.ts';
import { LengthArray, lengthArrayDoc } from './length-array.tsx';
import { OneBoll, oneBollDoc } from './one-boll.tsx';

/** Every figure by its name in a lesson. */
export const figures = { ...fieldToBaleFigures, BundleAndYarn, FiberSections, LengthArray, OneBoll };

/** What each figure says of itself. */
export const figureDocs: readonly FigureDoc[] = [
  ...fieldToBaleDocs,
  lengthArrayDoc,
  fiberSectionsDoc,
  bundleAndYarnDoc,
  oneBollDoc,
];
