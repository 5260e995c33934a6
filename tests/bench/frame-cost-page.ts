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
/** A page's clock is coarse: many calls are timed together. */
const callsTogether = 40;
const times = 5;

/** Milliseconds of one update and render call: the quickest of several runs of many, the first left out. */
function cost(step: Step): number {
  const runs = Array.from({ length: times }, () => {
    const begin = performance.now();
    for (let i = 0; i < callsTogether; i++) step(i / 60);
    return (performance.now() - begin) / callsTogether;
  });
  return Math.min(...runs.slice(1));
}

/** As many sprites of one texture, each moved on a straight way and one of ten turned: what the renderer alone costs. */
async function bareStep(pieces: number): Promise<Step> {
  const app = new Application();
  await app.init({
    preference: 'webgl',
    antialias: false,
    backgroundAlpha: 0,
    autoStart: false,
    sharedTicker: false,
    ...size,
  });
  document.body.append(app.canvas);
  const texture = app.renderer.generateTexture(new Graphics().circle(8, 8, 8).fill(0xffffff));
  const box = new Container();
  app.stage.addChild(box);
  const sprites = Array.from({ length: pieces }, () => box.addChild(new Sprite(texture)));
  return (seconds) => {
    sprites.forEach((sprite, i) => {
      sprite.position.set((i * 13 + seconds * 40) % size.width, (i * 29) % size.height);
      if (i % 10 === 0) sprite.rotation = seconds;
    });
    app.render();
  };
}

/** The frame cost of every scene of the first farm, beside that of a bare scene with as many pieces, in one run. */
async function measure() {
  const season = runSeason(farms[0]!, 1, null);
  const words = makeWords('en', 'us', en);
  const rows: { station: string; pieces: number; oursMs: number; bareMs: number }[] = [];
  for (const station of stationIds) {
    const { fromDay, toDay } = stationSpan(season, station);
    const frame = stationPictures[station].layOut(
      season,
      words,
      size,
    )({
      dayOfYear: Math.round((fromDay + toDay) / 2),
      progress: 0.5,
    });
    if (!frame) continue;
    const stage = await openStage();
    document.body.append(stage.canvas);
    stage.show(frame, 'day', size.width);
    const pieces = frame.moving.length + frame.parts.length;
    const bare = await bareStep(pieces);
    // One after the other and again, so that a busy moment of the machine falls on both.
    const ours = [cost(stage.render), 0];
    const others = [cost(bare), 0];
    ours[1] = cost(stage.render);
    others[1] = cost(bare);
    rows.push({ station, pieces, oursMs: Math.min(...ours), bareMs: Math.min(...others) });
    stage.destroy();
  }
  return rows;
}
(globalThis as { frameCost?: unknown }).frameCost = measure();
