import type { DisplayList } from '../../scene/display-list.ts';
import { flatMarks } from '../../scene/display-list.ts';
import { fontOf, paintCanvas } from '../../scene/paint-canvas.ts';
import type { Theme } from '../preferences.ts';
import { saveFile } from '../save-file.ts';

/** Picture points on a px of the card: sharp on paper at its true size. */
const pointsPerPx = 2.5;

/**
 * Saves a picture's marks as a PNG, made on this device.
 * @param size px of the marks
 * @throws Error where this browser cannot draw or pack so large a picture
 */
export async function savePng(name: string, list: DisplayList, size: { width: number; height: number }, theme: Theme) {
  const fonts = new Set([...flatMarks(list)].flatMap((mark) => (mark.kind === 'text' ? [fontOf(mark)] : [])));
  await Promise.all([...fonts].map((font) => document.fonts.load(font)));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(size.width * pointsPerPx);
  canvas.height = Math.round(size.height * pointsPerPx);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.scale(pointsPerPx, pointsPerPx);
  // In the page it takes the page's figures: the same lining ones as in the drawing beside it.
  canvas.className = 'unseen';
  document.body.append(canvas);
  paintCanvas(context, list, theme, true);
  canvas.remove();
  const packed = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!packed) throw new Error('no picture');
  saveFile(name, packed);
}
