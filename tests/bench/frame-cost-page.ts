import 'pixi.js/unsafe-eval';
import { Application, Container, Graphics, Sprite } from 'pixi.js';
import { en } from '../../src/language/messages/en.ts';
import { makeWords } from '../../src/language/words.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { stationIds } from '../../src/model/station.ts';
import { stationSpan } from '../../src/model/timeline.ts';
import { stationPictures } from '../../src/pages/season/pictures/station-pictures.ts';
import { openStage } from '../../src/scene/stage.ts';

const size = { width: 808, height: 388 };
type Step = (seconds: number) => void;
/** Few enough that the renderer's queue never fills: then a call waits for no painting. */
const callsTogether = 10;
const rounds = 20;

/** Milliseconds of one update and render call, over a run of many: a page's clock is too coarse for one. */
function runMs(step: Step, canvas: HTMLCanvasElement): number {
  // What was asked for before is painted before the clock starts.
  (canvas.getContext('webgl2') ?? canvas.getContext('webgl'))?.finish();
  const begin = performance.now();
  for (let i = 0; i < callsTogether; i++) step(i / 60);
  return (performance.now() - begin) / callsTogether;
}

/** As many sprites of one texture, each moved on a straight way and one of ten turned: what the renderer alone costs. */
async function openBare() {
  const app = new Application();
  await app.init({
    preference: 'webgl',
    antialias: false,
    backgroundAlpha: 0,
    autoStart: false,
    sharedTicker: false,
    ...size,
  });
  const texture = app.renderer.generateTexture(new Graphics().circle(8, 8, 8).fill(0xffffff));
  const box = app.stage.addChild(new Container());
  return {
    canvas: app.canvas,
    hold(pieces: number): Step {
      for (const child of box.removeChildren()) child.destroy();
      const sprites = Array.from({ length: pieces }, () => box.addChild(new Sprite(texture)));
      return (seconds) => {
        sprites.forEach((sprite, i) => {
          sprite.position.set((i * 13 + seconds * 40) % size.width, (i * 29) % size.height);
          if (i % 10 === 0) sprite.rotation = seconds;
        });
        app.render();
      };
    },
  };
}

/** The frame cost of every scene of the first farm, beside that of a bare scene with as many pieces, in one run. */
async function measure() {
  const season = runSeason(farms[0]!, 1, null);
  const words = makeWords('en', 'us', en);
  const [stage, bare] = [await openStage(), await openBare()];
  document.body.append(stage.canvas, bare.canvas);
  const rows: { station: string; pieces: number; oursMs: number; bareMs: number }[] = [];
  for (const station of stationIds) {
    const { fromDay, toDay } = stationSpan(season, station);
    const moment = { dayOfYear: Math.round((fromDay + toDay) / 2), progress: 0.5 };
    const frame = stationPictures[station].layOut(season, words, size)(moment);
    if (!frame) continue;
    stage.show(frame, 'day', size.width);
    const pieces = frame.moving.length + frame.parts.length;
    const bareStep = bare.hold(pieces);
    const row = { station, pieces, oursMs: Number.POSITIVE_INFINITY, bareMs: Number.POSITIVE_INFINITY };
    // By turns and the quickest of many, so that a busy moment of the machine falls on neither.
    for (let round = 0; round < rounds; round++) {
      row.oursMs = Math.min(row.oursMs, runMs(stage.render, stage.canvas));
      row.bareMs = Math.min(row.bareMs, runMs(bareStep, bare.canvas));
    }
    rows.push(row);
  }
  return rows;
}
(globalThis as { frameCost?: unknown }).frameCost = measure();
