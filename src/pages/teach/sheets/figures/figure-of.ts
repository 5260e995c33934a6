import type { ComponentType } from 'preact';
import type { KindId } from '../../../../teach/sheets/make-question.ts';
import type { Level } from '../../../../teach/sheets/question.ts';
import { PieceFigure, WeaveFigure } from './cloth-figures.tsx';
import type { FigureProps } from './drawing.tsx';
import { GinFigure } from './gin-figure.tsx';
import { BackingFigure, StripsFigure, TwoWidthsFigure } from './layout-figures.tsx';

type Figures = Partial<Record<Level, ComponentType<FigureProps>>>;
const figures: Partial<Record<KindId, Figures>> = {
  ginBalance: { 1: GinFigure, 2: GinFigure, 3: GinFigure },
  clothWeight: { 2: PieceFigure, 3: WeaveFigure },
  layout: { 1: StripsFigure, 2: TwoWidthsFigure, 3: BackingFigure },
};

/** The drawing beside a kind of question, where one helps. */
export const figureOf = (kind: KindId, level: Level): ComponentType<FigureProps> | null =>
  figures[kind]?.[level] ?? null;
