import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { talliesPlace } from '../../src/kiosk/tallies.ts';
import { settled, useBrowser } from './browser.ts';
import { inAttract, openKiosk, press } from './kiosk-of-page.ts';

// The heap without what the engine compiles and keeps for speed, which grows for as long as anything is used.
useBrowser(['--js-flags=--no-opt --no-maglev --no-sparkplug']);
const long = process.env.SEAMFIELD_LONG === '1';
const patience = long ? 7_200_000 : 300_000;

/** Attract, a visit and back: so many times, measured from the one at which everything has been shown once. */
const cycles = long ? 200 : 20;
const measuredFrom = long ? 20 : 10;
const wholeEvery = 5;
/** Before the long run measures, every station has been shown. */
const isWhole = (cycle: number) => cycle % wholeEvery === 0 || (long && cycle <= measuredFrom);
const loadsAnewAt = 45;
/** The heap may grow by this much from then on, bytes (an assumption: a page that grew so all day would still run for months). */
const mostGrowthBytes = 2_000_000;
/** Nodes of the largest picture. */
const mostNodes = 2000;

/** Counts what the page asks the graphics for and gives back. */
function countGraphics() {
  const counts = { textures: 0, buffers: 0 };
  const { prototype } = WebGL2RenderingContext;
  const wrap = (
    name: 'createTexture' | 'deleteTexture' | 'createBuffer' | 'deleteBuffer',
    what: 'textures' | 'buffers',
    by: number,
  ) => {
    const own = prototype[name] as (this: WebGL2RenderingContext, ...given: unknown[]) => unknown;
    Object.assign(prototype, {
      [name](this: WebGL2RenderingContext, ...given: unknown[]) {
        if (by > 0 || given[0]) counts[what] += by;
        return own.apply(this, given);
      },
    });
  };
  wrap('createTexture', 'textures', 1);
  wrap('deleteTexture', 'textures', -1);
  wrap('createBuffer', 'buffers', 1);
  wrap('deleteBuffer', 'buffers', -1);
  Object.assign(window, { graphics: counts });
}

/** What the page holds once everything that can be given back has been. */
async function held(page: Page, session: CDPSession) {
  for (let time = 0; time < 3; time++) await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  const metric = (name: string) => metrics.find((each) => each.name === name)!.value;
  const graphics = await page.evaluate(() => ({
    ...(window as unknown as { graphics: { textures: number; buffers: number } }).graphics,
  }));
  return { heap: metric('JSHeapUsedSize'), nodes: metric('Nodes'), listeners: metric('JSEventListeners'), ...graphics };
}

/** Until the living picture stands, or has nothing that moves. */
const living = (page: Page) => page.locator('.scene-stage:not([hidden]) canvas').first().waitFor({ timeout: 30_000 });

test(
  'attract, a visit and back, over and over: heap, nodes, listeners, textures and buffers stay level',
  async () => {
    const { page, finish } = await openKiosk({
      width: 800,
      height: 480,
      settings: { mmPerPx: 0.3 },
      before: countGraphics,
    });
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    let start: Awaited<ReturnType<typeof held>> | null = null;
    for (let cycle = 1; cycle <= cycles; cycle++) {
      // After fifty visits a kiosk loads itself anew once attract has lasted; the long run must not give it the time.
      await page.clock.fastForward(cycle < loadsAnewAt ? 11_000 : 1000);
      await page.mouse.click(400, 100);
      await settled(page);
      await press(page, 'English');
      await press(page, 'Next');
      await living(page);
      // The whole way now and then, at its end another station each time.
      if (isWhole(cycle)) {
        for (const key of ['Next', 'The seed', 'Next', 'Next', 'Next', 'Next', 'All twelve']) await press(page, key);
        await page
          .locator('.kiosk-block')
          .nth((long ? cycle : cycle / wholeEvery) % 12)
          .dispatchEvent('click');
        await press(page, 'Compare');
      }
      await press(page, 'Home');
      await inAttract(page);
      if (cycle === measuredFrom) start = await held(page, session);
    }
    const end = await held(page, session);
    const grown = (name: keyof typeof end) => end[name] - start![name];
    if (long)
      console.log(`after ${measuredFrom} visits ${JSON.stringify(start)}, after ${cycles} ${JSON.stringify(end)}`);
    expect(end.textures).toBeGreaterThan(0);
    expect(grown('heap')).toBeLessThan(mostGrowthBytes);
    // Give or take one picture that is about to be let go: not one for each cycle.
    expect(grown('nodes')).toBeLessThan(mostNodes);
    expect(grown('listeners')).toBeLessThanOrEqual(2);
    expect(grown('textures')).toBeLessThanOrEqual(1);
    expect(grown('buffers')).toBeLessThanOrEqual(0);
    const counts = JSON.parse((await page.evaluate((place) => localStorage.getItem(place), talliesPlace)) ?? '{}');
    expect(counts.visit.count).toBe(cycles);
    await finish();
  },
  patience,
);
