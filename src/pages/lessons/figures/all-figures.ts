import type { FigureDoc } from './figure.ts';
import { LengthArray, lengthArrayDoc } from './length-array.tsx';
import { OneBoll, oneBollDoc } from './one-boll.tsx';

/** Every figure by its name in a lesson. */
export const figures = { LengthArray, OneBoll };

/** What each figure says of itself. */
export const figureDocs: readonly FigureDoc[] = [lengthArrayDoc, oneBollDoc];
