import type { FigureDoc } from './figure.ts';
import { GinBalance, ginBalanceDoc } from './gin-balance.tsx';
import { PlantSummer, plantSummerDoc } from './plant-summer.tsx';
import { Steelyard, steelyardDoc } from './steelyard.tsx';

/** Figures of the lessons from the field to the bale. */
export const fieldToBaleFigures = { GinBalance, PlantSummer, Steelyard };
export const fieldToBaleDocs: readonly FigureDoc[] = [plantSummerDoc, ginBalanceDoc, steelyardDoc];
