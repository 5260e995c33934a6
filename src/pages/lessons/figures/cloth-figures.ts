import { CloseCloth, closeClothDoc } from './close-cloth.tsx';
import { CutOnGrain, cutOnGrainDoc } from './cut-on-grain.tsx';
import type { FigureDoc } from './figure.ts';
import { SpunThreads, spunThreadsDoc } from './spun-threads.tsx';
import { SwatchGuide, swatchGuideDoc } from './swatch-guide.tsx';
import { ThreadLadder, threadLadderDoc } from './thread-ladder.tsx';
import { WashedThread, washedThreadDoc } from './washed-thread.tsx';

/** Figures of the lessons on thread and cloth. */
export const clothFigures = { SpunThreads, ThreadLadder, CloseCloth, CutOnGrain, SwatchGuide, WashedThread };
export const clothFigureDocs: readonly FigureDoc[] = [
  spunThreadsDoc,
  threadLadderDoc,
  closeClothDoc,
  cutOnGrainDoc,
  swatchGuideDoc,
  washedThreadDoc,
];
