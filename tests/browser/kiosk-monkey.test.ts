import { expect, test } from 'vitest';
import { settled, useBrowser } from './browser.ts';
import { openKiosk, screenNow } from './kiosk-of-page.ts';

useBrowser();
const long = process.env.SEAMFIELD_LONG === '1';
const patience = long ? 7_200_000 : 600_000;

/** Taps of the monkey: about fifty milliseconds each, with what they draw. */
const taps = long ? 20_000 : 2000;
/** After so many taps the way home is looked for, and after so many the glass is left alone for over a minute. */
const homeEvery = 80;
const silenceEvery = 400;

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
