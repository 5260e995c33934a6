import type { ComponentChildren } from 'preact';
import type { SheetWords } from '../question-text.ts';
import './drawing.css';

/** What a drawing beside a question is made of. */
export interface FigureProps {
  /** Numbers of the question as they are written, by name. */
  readonly labels: Readonly<Record<string, string>>;
  /** The same as they are, for what is drawn to scale. */
  readonly sizes: Readonly<Record<string, number>>;
  readonly words: SheetWords['questions']['drawn'];
}

/** Size of every drawing, millimeters, and so are the units that it is drawn in. */
export const drawingMm = { width: 68, height: 35 } as const;

/** A line drawing for paper. It shows what the question's text says, so that a reader of the screen is not told it twice. */
export function Drawing({ children }: { readonly children: ComponentChildren }) {
  return (
    <svg class="sheet-drawing" aria-hidden="true" viewBox={`0 0 ${drawingMm.width} ${drawingMm.height}`}>
      {children}
    </svg>
  );
}

interface LineProps {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Corners of an arrow's head that points from a to b, millimeters. */
function head(fromX: number, fromY: number, x: number, y: number): string {
  const angle = Math.atan2(y - fromY, x - fromX);
  const corner = (turn: number) =>
    `${(x - 2.2 * Math.cos(angle + turn)).toFixed(2)} ${(y - 2.2 * Math.sin(angle + turn)).toFixed(2)}`;
  return `M${corner(0.4)}L${x} ${y}L${corner(-0.4)}`;
}

/** A measured length: a thin line with a head at either end. */
export function Measure({ x1, y1, x2, y2 }: LineProps) {
  return <path class="drawn-thin" d={`M${x1} ${y1}L${x2} ${y2}${head(x1, y1, x2, y2)}${head(x2, y2, x1, y1)}`} />;
}

/** The way the warp runs, as it is marked on a pattern piece. */
export function GrainLine({ x1, y1, x2, y2 }: LineProps) {
  return <path class="drawn-grain" d={`M${x1} ${y1}L${x2} ${y2}${head(x1, y1, x2, y2)}${head(x2, y2, x1, y1)}`} />;
}

/** Words on a drawing, their middle at x. */
export function Words({
  x,
  y,
  anchor = 'middle',
  turned = false,
  children,
}: {
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Read from below upward. */
  readonly turned?: boolean;
  readonly children: ComponentChildren;
}) {
  return (
    <text x={x} y={y} text-anchor={anchor} transform={turned ? `rotate(-90 ${x} ${y})` : undefined}>
      {children}
    </text>
  );
}
