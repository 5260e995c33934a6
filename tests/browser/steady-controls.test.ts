import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { long } from '../laws/runs.ts';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const all = [
  [1366, 768],
  [1024, 768],
  [390, 844],
] as const;
const sizes = long ? all : [all[1], all[2]];
// What is said at Planting changes most; at Module the month may turn, and with it the head.
const stations: readonly StationId[] = long ? stationIds : ['planting', 'module'];

/** Where each control that a hand may be on its way to stands: in the page, or in the foot that stays with the window. */
const places = (page: Page) =>
  page.evaluate(() => {
    const top = (selector: string) =>
      [...document.querySelectorAll(selector)].map((element) => {
        const foot = element.closest('.season-foot');
        return Math.round(element.getBoundingClientRect().top + (foot ? 0 : window.scrollY));
      });
    return {
      decisions: top('.decisions-panel, .decisions-panel .patch, .decisions-panel input'),
      map: top('.quilt-map button'),
      foot: top('.ribbon-button, .sew-in .patch-button, .ribbon .choice'),
    };
  });

/** The height kept for what is said has been found. */
const settled = (page: Page) =>
  page.waitForFunction(() => (document.querySelector<HTMLElement>('.seen-lines')?.style.minHeight ?? '') !== '');

test.each(sizes)(
  'no control moves while time runs, at %i x %i',
  async (width, height) => {
    const { page, finish } = await openPage({ path: '#/season/planting', width, height, reducedMotion: true });
    for (const station of stations) {
      await page.evaluate((to) => {
        location.hash = `#/season/${to}`;
      }, station);
      await page.locator(`main[data-station=${station}]`).waitFor();
      const button = page.getByRole('button', { name: 'Pause' });
      if (await button.count()) await button.click();
      await settled(page);
      const ribbon = page.locator('.ribbon-track input');
      const [low, high] = await ribbon.evaluate((input: HTMLInputElement) => [Number(input.min), Number(input.max)]);
      const seen: unknown[] = [];
      const looks = long ? 30 : 6;
      for (let look = 0; look <= looks; look++) {
        await ribbon.fill(String(Math.round(low! + ((high! - low!) * look) / looks)));
        await page.waitForTimeout(150);
        seen.push(await places(page));
      }
      for (const each of seen) expect(each, station).toEqual(seen[0]);
    }
    await finish();
  },
  long ? 300_000 : 60_000,
);

test.each([
  [1024, 768],
  [390, 844],
] as const)('what a choice did is in sight of the control that made it, at %i x %i', async (width, height) => {
  const { page, finish } = await openPage({ path: '#/season/planting', width, height, reducedMotion: true });
  const result = page.locator('.choice-result');
  await result.waitFor();
  await settled(page);
  for (const slider of await page.locator('.decisions-panel input[type=range]').all()) {
    await slider.scrollIntoViewIfNeeded();
    const topOf = async () => (await slider.boundingBox())!.y;
    const before = await topOf();
    await slider.evaluate((input: HTMLInputElement) => input.focus({ preventScroll: true }));
    await page.keyboard.press('ArrowRight');
    await result.getByRole('link').waitFor();
    const box = (await result.boundingBox())!;
    expect(box.y).toBeGreaterThanOrEqual(0);
    expect(box.y + box.height).toBeLessThan(height);
    expect(Math.abs((await topOf()) - before)).toBeLessThan(1);
  }
  await finish();
});
