import { type InkName, inksOf, relativeLuminance } from '../../style/inks.ts';
import type { PatchMark, Point, ShadowPx, Stitching } from '../display-list.ts';
import { cutEdge, type Scissors } from './cut-edge.ts';
import { grainOf } from './grain.ts';
import { inset } from './inset.ts';
import { runningStitches, type Stitchery } from './running-stitch.ts';

export interface PatchStyle {
  readonly shadow?: ShadowPx;
  /** Seam allowance, px; 0 leaves the edge unsewn. */
  readonly seam?: number;
  readonly thread?: InkName;
  readonly threadWidth?: number;
  readonly stitchery?: Stitchery;
  /** 'asDrawn' takes the outline as it is. */
  readonly scissors?: Scissors | 'asDrawn';
  /** Direction of the grain, radians; null for cloth too small or too fine to show any. */
  readonly grain?: number | null;
}

/** Thread that shows on a cloth: pale on dark, indigo on pale. */
const threadFor = (cloth: InkName): InkName => (relativeLuminance(inksOf.day[cloth]) > 0.33 ? 'indigo' : 'thread');

/**
 * Cuts a piece of cloth, sews it down with a running stitch a seam allowance inside its edge.
 * @param name the piece's name: decides every snip and stitch
 */
export function patch(name: string, outline: readonly Point[], ink: InkName, style: PatchStyle = {}): PatchMark {
  const { shadow = 2.6, seam = 6, scissors = {}, grain = 0 } = style;
  const points = scissors === 'asDrawn' ? [...outline] : cutEdge(outline, name, scissors);
  const stitch = seam > 0 ? seamOf(name, points, ink, style, seam) : undefined;
  return {
    kind: 'patch',
    points,
    ink,
    shadow,
    ...(stitch ? { stitch } : {}),
    ...(grain === null ? {} : { grain: grainOf(points, name, grain) }),
  };
}

function seamOf(name: string, points: Point[], ink: InkName, style: PatchStyle, seam: number): Stitching | undefined {
  const stitches = runningStitches(inset(points, seam), name, style.stitchery);
  if (stitches.length === 0) return undefined;
  return { stitches, ink: style.thread ?? threadFor(ink), width: style.threadWidth ?? 1.7 };
}
