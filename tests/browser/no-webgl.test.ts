import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

// A classroom PC without a usable GPU: no WebGL at all.
useBrowser(['--disable-gpu', '--disable-3d-apis']);

test('without WebGL the living picture is drawn on a plain canvas', async () => {
  const { page, finish } = await openPage({ path: '#/season/ginning' });
  await page.locator('.scene canvas').first().waitFor({ timeout: 20_000 });
  const scene = page.locator('.scene');
  const one = await scene.screenshot();
  await expect.poll(async () => (await scene.screenshot()).equals(one), { timeout: 10_000 }).toBe(false);
  await finish();
}, 45_000);

test('without any canvas the SVG picture stays, with its words', async () => {
  const { page } = await openPage({ path: '#/season/ginning', reducedMotion: true });
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = (() => null) as typeof HTMLCanvasElement.prototype.getContext;
  });
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await page.reload();
  await page.locator('.scene svg').first().waitFor();
  await page.waitForTimeout(2500);
  expect(await page.locator('.scene svg').first().isVisible()).toBe(true);
  expect(await page.locator('.twin-see').innerText()).toContain('seed house');
});

test('without WebGL the kiosk plays its attract on a plain canvas, and calls it no trouble', async () => {
  const { page, finish } = await openPage({ path: '#/kiosk', width: 720, height: 1280 });
  await page
    .locator('.kiosk[data-screen=attract] .scene-stage:not([hidden]) canvas')
    .first()
    .waitFor({ timeout: 30_000 });
  const scene = page.locator('.scene').first();
  const one = await scene.screenshot();
  await expect.poll(async () => (await scene.screenshot()).equals(one), { timeout: 15_000 }).toBe(false);
  expect(await page.evaluate(() => sessionStorage.getItem('seamfield.kiosk.troubles.1'))).toBe(null);
  await finish();
}, 60_000);
