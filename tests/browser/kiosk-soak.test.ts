import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { talliesPlace } from '../../src/kiosk/tallies.ts';
import { settled, useBrowser } from './browser.ts';
import { inAttract, openKiosk, press, screenNow } from './kiosk-of-page.ts';

useBrowser();
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
    expect(end.textures).toBeGreaterThan(0);
    expect(grown('heap')).toBeLessThan(mostGrowthBytes);
    // Give or take one picture that is about to be let go: not one for each cycle.
    expect(grown('nodes')).toBeLessThan(mostNodes);
    expect(grown('listeners')).toBeLessThan(cycles - measuredFrom);
    expect(grown('textures')).toBeLessThanOrEqual(1);
    expect(grown('buffers')).toBeLessThanOrEqual(0);
    const counts = JSON.parse((await page.evaluate((place) => localStorage.getItem(place), talliesPlace)) ?? '{}');
    expect(counts.visit.count).toBe(cycles);
    await finish();
  },
  patience,
);

/** Taps of the monkey; the machine that runs every test has time for some hundreds. */
const taps = long ? 20_000 : 400;
/** After so many taps the way home is looked for, and after so many the glass is left alone for over a minute. */
const homeEvery = 40;
const silenceEvery = 150;

test(
  'a seeded monkey finds no error, no request to elsewhere and no dead end: home is within two taps of anywhere',
  async () => {
    const { page, faults, finish } = await openKiosk({
      width: 800,
      height: 480,
      settings: { mmPerPx: 0.3 },
      reducedMotion: true,
      touch: true,
    });
    const been = new Set<string>();
    for (let done = 0; done < taps; done += homeEvery) {
      const seen = await page.evaluate(
        async ([seed, count]) => {
          let state = seed!;
          // A linear congruential generator (Numerical Recipes, from memory): the same taps on every run.
          const chance = () => {
            state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
            return state / 2 ** 32;
          };
          const screens: string[] = [];
          for (let tap = 0; tap < count!; tap++) {
            const rows = [...document.querySelectorAll('.kiosk-band > div')];
            const row = chance() < 0.5 ? rows.at(-1) : rows[0];
            const keys = [...(row ?? document).querySelectorAll('button')];
            // Two taps in three find a key, the third lands anywhere; Home is left to chance alone.
            const target =
              chance() < 0.67 && keys.length > 1
                ? // The last key of a row leads on.
                  keys.at(
                    chance() < 0.5
                      ? -1
                      : (row === rows[0] && rows.length > 1 ? 0 : 1) + Math.floor(chance() * (keys.length - 1)),
                  )!
                : (document.elementFromPoint(chance() * innerWidth, chance() * innerHeight) ?? document.body);
            const finger = { bubbles: true, cancelable: true, pointerId: 1 };
            target.dispatchEvent(new PointerEvent('pointerdown', finger));
            target.dispatchEvent(new PointerEvent('pointerup', finger));
            target.dispatchEvent(new MouseEvent('click', finger));
            await new Promise<void>((next) => {
              const channel = new MessageChannel();
              channel.port1.onmessage = () => next();
              channel.port2.postMessage(null);
            });
            screens.push(document.querySelector<HTMLElement>('.kiosk')!.dataset.screen!);
          }
          return screens;
        },
        [1 + done, Math.min(homeEvery, taps - done)],
      );
      for (const screen of seen) been.add(screen);
      if (done % silenceEvery < homeEvery && (await screenNow(page)) !== 'attract') {
        await page.clock.fastForward(60_000);
        await page.locator('.kiosk-warning').waitFor();
        await page.touchscreen.tap(400, 200);
        await page.locator('.kiosk-warning').waitFor({ state: 'detached' });
      }
      for (let tap = 0; tap < 2 && (await screenNow(page)) !== 'attract'; tap++) {
        await page
          .locator('.kiosk-band')
          .getByRole('button', { name: /^(Home|Inicio)$/ })
          .tap();
        await settled(page);
      }
      expect([done, await screenNow(page)]).toEqual([done, 'attract']);
      expect(faults).toEqual([]);
    }
    expect([...been].sort()).toEqual(expect.arrayContaining(['attract', 'guided', 'keepsake', 'language', 'looking']));
    if (long) expect(been.size).toBe(7);
    await finish();
  },
  patience,
);
