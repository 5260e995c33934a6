import { CanvasSource, Texture } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import type { DisplayList, Point } from './display-list.ts';
import { paintCanvas } from './paint-canvas.ts';

/**
 * A texture drawn on a 2-D canvas: it comes back by itself after a lost context, which a rendered one would not.
 * @param width in scene pixels
 * @param resolution texels to one of them
 * @param from the point of the scene at the upper left corner
 */
export function drawnTexture(
  list: DisplayList,
  theme: Theme,
  width: number,
  height: number,
  resolution: number,
  from: Point = [0, 0],
): Texture {
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * resolution);
  canvas.height = Math.ceil(height * resolution);
  const context = canvas.getContext('2d');
  if (context) {
    context.scale(resolution, resolution);
    context.translate(-from[0], -from[1]);
    paintCanvas(context, list, theme);
  }
  return new Texture({ source: new CanvasSource({ resource: canvas, resolution }) });
}
