import type { Theme } from '../style/inks.ts';
import type { DisplayList } from './display-list.ts';
import { paintCanvas } from './paint-canvas.ts';

/** A layer of the picture that stands still: a 2-D canvas of its own, painted once for the size it is shown at. */
export interface StillLayer {
  readonly canvas: HTMLCanvasElement;
  paint(list: DisplayList, theme: Theme, width: number, height: number, cssWidth: number): void;
}

/** @param most sharpness, device pixels to a CSS pixel */
export function stillLayer(most: number): StillLayer {
  const canvas = document.createElement('canvas');
  canvas.setAttribute('aria-hidden', 'true');
  return {
    canvas,
    paint(list, theme, width, height, cssWidth) {
      const scale = (cssWidth / width) * Math.min(most, window.devicePixelRatio || 1);
      canvas.width = Math.max(1, Math.round(width * scale));
      canvas.height = Math.max(1, Math.round(height * scale));
      const context = canvas.getContext('2d');
      if (!context) return;
      context.scale(scale, scale);
      paintCanvas(context, list, theme);
    },
  };
}
