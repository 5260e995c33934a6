import type { FigureDoc } from './figure.ts';
import { GinBalance, ginBalanceDoc } from './gin-balance.tsx';
import { PlantSummer, plantSummerDoc } from './plant-summer.tsx';

/** Figures of the lessons from the field to the bale. */
export const fieldToBaleFigures = { GinBalance, PlantSummer };
export const fieldToBaleDocs: readonly FigureDoc[] = [plantSummerDoc, ginBalanceDoc];
