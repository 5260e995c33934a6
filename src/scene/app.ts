import type { Theme } from '../style/inks.ts';
import { flatMarks } from './display-list.ts';
import { paintSvg } from './paint-svg.ts';
import type { SceneFrame } from './scene-frame.ts';
import { MOST_RESOLUTION, openStage, type Stage } from './stage.ts';
import { stillLayer } from './still-layer.ts';

export interface SceneOptions {
  /** The picture is gone for now: show the SVG one. */
  readonly onLost?: () => void;
  /** It is back, by itself or rebuilt. */
  readonly onBack?: () => void;
}

export interface MountedScene {
  /** 'webgl' or 'canvas'. */
  readonly renderer: string;
  show(frame: SceneFrame, theme: Theme): void;
  pause(): void;
  resume(): void;
  /** Leaves the host. The renderer is kept for the next scene. */
  destroy(): void;
}

/** A lost context that has not come back in this time will not. */
const RESTORE_MS = 3000;
/** Lost this often, it is rebuilt even if it came back. */
const MOST_LOSSES = 2;

/** One renderer for the whole visit; a new one where it was lost while no scene looked after it. */
let shared: Promise<Stage> | null = null;
async function stageOfVisit(): Promise<Stage> {
  shared ??= openStage().catch((reason: unknown) => {
    shared = null;
    throw reason;
  });
  const asked = shared;
  const stage = await asked;
  if (shared === asked) {
    if (!stage.isLost()) return stage;
    dropStage(stage);
  }
  return stageOfVisit();
}
function dropStage(stage: Stage): void {
  shared = null;
  stage.destroy();
}

/**
 * Puts the living picture into a host element, in place of nothing: the caller shows its SVG picture until this resolves.
 * @throws when there is neither WebGL nor a canvas
 */
export async function mountScene(host: HTMLElement, { onLost, onBack }: SceneOptions): Promise<MountedScene> {
  let stage = await stageOfVisit();
  let frame: SceneFrame | null = null;
  let theme: Theme = 'day';
  let playing = true;
  let gone = false;
  /** From a loss until the picture is back: there is nothing to draw on, and frames are only kept. */
  let lost = false;
  let losses = 0;
  let seconds = 0;
  let lastMs: number | null = null;
  let request = 0;
  let restoreTimer = 0;

  // Four layers: what lies below the pieces, the pieces, what they pass under, and the words.
  const frameBox = document.createElement('div');
  const below = stillLayer(MOST_RESOLUTION);
  const above = stillLayer(MOST_RESOLUTION);
  const words = document.createElement('div');
  words.className = 'scene-words';
  frameBox.className = 'scene-layers';
  // Set one by one, not as a style attribute, which a strict content policy refuses.
  frameBox.style.position = 'relative';
  const drawWords = () => {
    if (!frame) return;
    const list = [...flatMarks(frame.still), ...flatMarks(frame.over)].filter((mark) => mark.kind === 'text');
    words.innerHTML = paintSvg(list, { width: frame.width, height: frame.height, theme });
    const drawing = words.firstElementChild;
    drawing?.setAttribute('width', '100%');
    drawing?.setAttribute('height', '100%');
  };

  const moves = () =>
    playing && !gone && !lost && !document.hidden && frame !== null && frame.moving.length + frame.parts.length > 0;
  const step = (nowMs: number) => {
    request = 0;
    if (lastMs !== null) seconds += Math.min(100, nowMs - lastMs) / 1000;
    lastMs = nowMs;
    stage.render(seconds);
    if (moves()) request = requestAnimationFrame(step);
    else lastMs = null;
  };
  /** Draws once, and goes on while something moves. */
  const wake = () => {
    if (gone || lost || !frame || request !== 0) return;
    request = requestAnimationFrame(step);
  };

  const attach = () => {
    const { canvas } = stage;
    canvas.setAttribute('aria-hidden', 'true');
    canvas.addEventListener('webglcontextlost', onLoss);
    canvas.addEventListener('webglcontextrestored', onRestore);
    const layers = [below.canvas, canvas, above.canvas, words];
    for (const layer of layers) {
      layer.style.position = 'absolute';
      layer.style.inset = '0';
      layer.style.width = '100%';
      layer.style.height = '100%';
    }
    frameBox.replaceChildren(...layers);
    host.append(frameBox);
  };
  const detach = () => {
    stage.canvas.removeEventListener('webglcontextlost', onLoss);
    stage.canvas.removeEventListener('webglcontextrestored', onRestore);
    if (stage.canvas.parentElement === frameBox) stage.canvas.remove();
    frameBox.remove();
  };
  /** What the still layers hold, so that a frame which only moves on is not painted anew. */
  let painted = '';
  let paintedStill: SceneFrame['still'] | null = null;
  let paintedOver: SceneFrame['over'] | null = null;
  const refresh = () => {
    if (!frame || lost) return;
    const cssWidth = Math.max(1, host.clientWidth);
    frameBox.style.aspectRatio = `${frame.width} / ${frame.height}`;
    const how = `${theme} ${cssWidth} ${frame.width} ${frame.height} ${window.devicePixelRatio}`;
    const same = how === painted;
    const stillSame = same && frame.still === paintedStill;
    const overSame = same && frame.over === paintedOver;
    if (!stillSame) below.paint(frame.still, theme, frame.width, frame.height, cssWidth);
    if (!overSame) above.paint(frame.over, theme, frame.width, frame.height, cssWidth);
    if (!stillSame || !overSame) drawWords();
    painted = how;
    paintedStill = frame.still;
    paintedOver = frame.over;
    stage.show(frame, theme, cssWidth);
    wake();
  };
  const rebuild = async () => {
    window.clearTimeout(restoreTimer);
    detach();
    dropStage(stage);
    try {
      stage = await stageOfVisit();
    } catch {
      return; // The SVG picture stays.
    }
    if (gone) return;
    losses = 0;
    attach();
    onRestore();
  };
  function onLoss(event: Event) {
    event.preventDefault();
    lost = true;
    losses++;
    cancelAnimationFrame(request);
    request = 0;
    onLost?.();
    window.clearTimeout(restoreTimer);
    if (losses >= MOST_LOSSES) void rebuild();
    else restoreTimer = window.setTimeout(() => void rebuild(), RESTORE_MS);
  }
  function onRestore() {
    window.clearTimeout(restoreTimer);
    lost = false;
    refresh();
    onBack?.();
  }

  attach();
  document.addEventListener('visibilitychange', wake);
  return {
    renderer: stage.renderer,
    show(next, inTheme) {
      if (next === frame && inTheme === theme) return;
      frame = next;
      theme = inTheme;
      refresh();
    },
    pause() {
      playing = false;
    },
    resume() {
      playing = true;
      wake();
    },
    destroy() {
      gone = true;
      cancelAnimationFrame(request);
      window.clearTimeout(restoreTimer);
      document.removeEventListener('visibilitychange', wake);
      detach();
    },
  };
}
