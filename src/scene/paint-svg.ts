import { inksOf, type Theme, threadScaleOf } from '../style/inks.ts';
import type { DisplayList, Mark, PatchMark, Point, Stitch, Stitching, TextMark } from './display-list.ts';
import { DISPLAY_FACE, GRAIN_DARK, GRAIN_LIGHT, SHADE, shadowOffset, TEXT_FACE } from './paint-style.ts';

export interface SvgOptions {
  readonly width: number;
  readonly height: number;
  readonly theme: Theme;
  /** What the picture is, for whoever cannot see it; without it the picture is decoration. */
  readonly title?: string;
}

/** A whole picture as an SVG element, with presentation attributes only, as a strict content policy wants. */
export function paintSvg(list: DisplayList, { width, height, theme, title }: SvgOptions): string {
  const label = title === undefined ? 'aria-hidden="true"' : `role="img" aria-label="${escaped(title)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" ${label}>${svgMarks(list, theme)}</svg>`;
}

/** The marks alone, to go inside an SVG element of the caller's. */
const svgMarks = (list: DisplayList, theme: Theme): string => list.map((mark) => svgMark(mark, theme)).join('');

/** What marks were drawn as: frames of one layout share most of theirs. */
const kept: Readonly<Record<Theme, WeakMap<Mark, string>>> = { day: new WeakMap(), projector: new WeakMap() };

/** One mark as elements side by side. */
export function svgMark(mark: Mark, theme: Theme): string {
  const known = kept[theme].get(mark);
  if (known !== undefined) return known;
  const svg = svgOf(mark, theme);
  kept[theme].set(mark, svg);
  return svg;
}

function svgOf(mark: Mark, theme: Theme): string {
  switch (mark.kind) {
    case 'patch':
      return svgPatch(mark, theme);
    case 'stitches':
      return svgStitching(mark, theme, mark.flat ?? false);
    case 'text':
      return svgText(mark, theme);
    case 'group': {
      const count = mark.count === undefined ? '' : ` data-count="${mark.count}"`;
      return `<g data-name="${escaped(mark.name)}"${count}>${svgMarks(mark.marks, theme)}</g>`;
    }
  }
}

function svgPatch(mark: PatchMark, theme: Theme): string {
  const path = outlinePath(mark.points);
  const [dx, dy] = shadowOffset(mark.shadow);
  const shadow = mark.shadow
    ? `<path d="${path}" fill="${SHADE.color}" fill-opacity="${SHADE.underCloth}" transform="translate(${dx} ${dy})"/>`
    : '';
  const grain = mark.grain
    ? grainPath(mark.grain.dark, GRAIN_DARK.color, GRAIN_DARK.alpha) +
      grainPath(mark.grain.light, GRAIN_LIGHT.color, GRAIN_LIGHT.alpha)
    : '';
  const stitch = mark.stitch ? svgStitching(mark.stitch, theme, false) : '';
  return `${shadow}<path d="${path}" fill="${inksOf[theme][mark.ink]}"/>${grain}${stitch}`;
}

function svgStitching({ stitches, ink, width }: Stitching, theme: Theme, flat: boolean): string {
  if (stitches.length === 0) return '';
  const path = stitchPath(stitches);
  const common = `d="${path}" fill="none" stroke-linecap="round" stroke-width="${round(width * threadScaleOf[theme])}"`;
  const shade = flat
    ? ''
    : `<path ${common} stroke="${SHADE.color}" stroke-opacity="${SHADE.underThread}" transform="translate(.5 1)"/>`;
  return `${shade}<path ${common} stroke="${inksOf[theme][ink]}"/>`;
}

const grainPath = (stitches: readonly Stitch[], color: string, alpha: number): string =>
  stitches.length === 0
    ? ''
    : `<path d="${stitchPath(stitches)}" fill="none" stroke="${color}" stroke-opacity="${alpha}"/>`;

function svgText(mark: TextMark, theme: Theme): string {
  const family = mark.display ? DISPLAY_FACE : TEXT_FACE;
  const weight = mark.display || mark.bold ? 800 : 500;
  const style = mark.italic ? ' font-style="italic"' : '';
  return `<text class="scene-text" x="${round(mark.x)}" y="${round(mark.y)}" font-family="${family}" font-size="${round(mark.size)}" font-weight="${weight}"${style} text-anchor="${mark.anchor}" fill="${inksOf[theme][mark.ink]}">${escaped(mark.text)}</text>`;
}

const round = (value: number): string => String(Math.round(value * 10) / 10);
const outlinePath = (points: readonly Point[]): string =>
  `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`;
const stitchPath = (stitches: readonly Stitch[]): string =>
  stitches
    .map(([x0, y0, x1, y1]) => {
      const knot = x0 === x1 && y0 === y1;
      return `M${round(x0)} ${round(y0)}${knot ? 'h.01' : `L${round(x1)} ${round(y1)}`}`;
    })
    .join('');
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
