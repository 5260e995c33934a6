import 'pixi.js/unsafe-eval';
import { Application, Ticker } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import { PieceLayer } from './paint-pixi.ts';
import { PartLayer } from './part-layer.ts';
import type { SceneFrame } from './scene-frame.ts';

/** No sharper than this: more pixels than eyes, at a great cost on a projector's laptop. */
export const MOST_RESOLUTION = 2;

/** Everything that belongs to one pixi Application: the counted pieces, on a clear ground. */
export interface Stage {
  readonly canvas: HTMLCanvasElement;
  readonly renderer: string;
  /** Takes up a frame, scaled to a width on the page. */
  show(frame: SceneFrame, theme: Theme, cssWidth: number): void;
  /** Draws the pieces where they are after some seconds. */
  render(seconds: number): void;
  /** Whether the drawing context was taken away and is not back. */
  isLost(): boolean;
  destroy(): void;
}

/**
 * Opens the renderer: WebGL, or a 2-D canvas where there is none.
 * @throws when neither can be had; the caller keeps its SVG picture
 */
export async function openStage(): Promise<Stage> {
  const resolution = Math.min(MOST_RESOLUTION, window.devicePixelRatio || 1);
  const app = new Application();
  await app.init({
    preference: ['webgl', 'canvas'],
    antialias: false,
    autoDensity: true,
    resolution,
    backgroundAlpha: 0,
    autoStart: false,
    sharedTicker: false,
    width: 1,
    height: 1,
  });
  // The system ticker asks for every frame even when nobody listens; we ask for our own frames, and only while something moves.
  for (const ticker of [Ticker.system, Ticker.shared]) {
    ticker.autoStart = false;
    ticker.stop();
  }
  app.stage.eventMode = 'none';
  const pieces = new PieceLayer();
  const below = new PartLayer();
  const above = new PartLayer();
  app.stage.addChild(below.container, pieces.container, above.container);
  let lapSeconds = 1;
  return {
    canvas: app.canvas,
    renderer: app.renderer.name,
    show(frame, theme, cssWidth) {
      const scale = cssWidth / frame.width;
      lapSeconds = frame.lapSeconds;
      app.stage.scale.set(scale);
      app.renderer.resize(cssWidth, Math.round(frame.height * scale));
      const texels = Math.max(2, Math.ceil(2 * resolution * scale));
      pieces.show(frame.moving, theme, texels);
      below.show(
        frame.parts.filter(({ passes }) => passes === 'belowPieces'),
        theme,
        texels,
      );
      above.show(
        frame.parts.filter(({ passes }) => passes === 'abovePieces'),
        theme,
        texels,
      );
    },
    render(seconds) {
      pieces.moveTo(seconds, lapSeconds);
      below.moveTo(seconds);
      above.moveTo(seconds);
      app.render();
    },
    isLost: () => 'gl' in app.renderer && app.renderer.gl.isContextLost(),
    destroy() {
      for (const layer of [below, pieces, above]) layer.destroy();
      app.destroy(
        { removeView: true, releaseGlobalResources: true },
        { children: true, texture: true, textureSource: true, context: true },
      );
    },
  };
}
