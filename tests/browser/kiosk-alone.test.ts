import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type OpenPage, openPage, settled, siteUrl, useBrowser } from './browser.ts';
import { serveCopy } from './served-copy.mjs';

// Its graphics process is taken away.
useBrowser([]);

const kioskPath = '#/kiosk';

/** Marks the document, so that a page that was loaded anew is known by the mark's absence. */
const mark = (page: Page) => page.evaluate(() => void Object.assign(globalThis, { marked: true }));
const isMarked = (page: Page) => page.evaluate(() => 'marked' in globalThis);
const beat = (page: Page) => page.evaluate(() => document.documentElement.dataset.heartbeat ?? '');
/** Waits until the kiosk stands and plays its attract. */
const inAttract = (page: Page) => page.locator('.kiosk[data-screen=attract] svg').first().waitFor({ timeout: 20_000 });
/** Waits until the marked document has been replaced by a new one in attract. */
async function loadedAnew(page: Page, timeout: number): Promise<void> {
  await expect.poll(() => isMarked(page).catch(() => true), { timeout, interval: 250 }).toBe(false);
  await inAttract(page);
}
/** Waits until the copy on the device serves the page. */
const kept = (page: Page) =>
  page.waitForFunction(async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller, null, {
    timeout: 45_000,
  });
/** What a visitor sees is no blank sheet: the picture holds more than a few colors. */
async function colorsSeen(page: Page): Promise<number> {
  await settled(page);
  const shot = await page.screenshot({ scale: 'css' });
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes]));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const pixels = new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
    return new Set(pixels).size;
  }, shot.toString('base64'));
}
const uncaught = ({ faults }: OpenPage) => faults.filter((fault) => fault.startsWith('uncaught'));

test('a newer version is taken in attract alone, and the storage may be wiped at any time', async () => {
  const copy = await serveCopy();
  const kiosk = await openPage({ site: copy.site, path: kioskPath, serviceWorkers: true, reducedMotion: true });
  const { page } = kiosk;
  await inAttract(page);
  await kept(page);
  expect(await beat(page)).toMatch(/^Seamfield kiosk attract \d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
  await expect.poll(async () => (await page.title()) === (await beat(page)), { timeout: 15_000 }).toBe(true);
  await mark(page);
  await page.mouse.click(640, 300);
  await page.locator('.kiosk:not([data-screen=attract])').waitFor();
  copy.nextVersion('The next version');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting, null, { timeout: 20_000 });
  // Longer than attract must have lasted before anything is loaded.
  await page.waitForTimeout(8000);
  expect(await isMarked(page)).toBe(true);
  await page.getByRole('button', { name: 'Home' }).click();
  await loadedAnew(page, 40_000);
  const served = await page.evaluate(async () => (await fetch('./index.html')).text());
  expect(served).toContain('<title>The next version');

  // Everything the site ever kept is gone: the page comes back over the network as a new kiosk, and keeps itself again.
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', { origin: new URL(copy.site).origin, storageTypes: 'all' });
  await page.reload();
  await inAttract(page);
  await kept(page);
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  await kiosk.finish();
  await copy.remove();
}, 150_000);

test('junk in every place it keeps something is no error', async () => {
  const kiosk = await openPage({ path: kioskPath, reducedMotion: true });
  const { page } = kiosk;
  await page.evaluate(() => {
    for (const place of ['seamfield.kiosk.1', 'seamfield.kiosk.tallies.1', 'seamfield.preferences.1'])
      localStorage.setItem(place, '{"mmPerPx":"wide","visit":-1,"language":7');
    sessionStorage.setItem('seamfield.kiosk.troubles.1', '[{"count":"many"}]');
  });
  await page.reload();
  await inAttract(page);
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  await kiosk.finish();
});

test('an error nobody caught puts a quiet picture up, and the page is loaded anew; the second wait is longer', async () => {
  const kiosk = await openPage({ path: kioskPath, reducedMotion: true });
  const { page } = kiosk;
  await inAttract(page);
  const fail = () =>
    page.evaluate(() => {
      setTimeout(() => {
        throw new Error('planted');
      });
    });
  await mark(page);
  await fail();
  const quiet = page.locator('.quiet-picture');
  await quiet.waitFor();
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  // Nothing behind it can be reached.
  expect(await page.locator('#app').getAttribute('inert')).not.toBeNull();
  await loadedAnew(page, 20_000);
  expect(await quiet.count()).toBe(0);
  await mark(page);
  await fail();
  await page.waitForTimeout(9000);
  expect(await isMarked(page)).toBe(true);
  expect(await quiet.count()).toBe(1);
  expect(uncaught(kiosk)).toEqual(['uncaught: planted', 'uncaught: planted']);
}, 90_000);

test('every night the page is loaded anew, in attract', async () => {
  const kiosk = await openPage({ reducedMotion: true });
  const { page } = kiosk;
  await page.clock.install({ time: new Date(2026, 10, 27, 3, 50) });
  await page.goto(siteUrl(`?night${kioskPath}`));
  await inAttract(page);
  await mark(page);
  await page.clock.fastForward(300_000);
  expect(await isMarked(page)).toBe(true);
  await page.clock.fastForward(330_000).catch(() => {});
  await loadedAnew(page, 20_000);
  await kiosk.finish();
}, 60_000);

/** Takes the graphics process away, as a driver that fails does. */
async function crashGraphics(page: Page): Promise<void> {
  const devtools = await page.context().browser()!.newBrowserCDPSession();
  await devtools.send('Browser.crashGpuProcess');
  await devtools.detach();
}
/** How the living picture is drawn, if there is one. */
const living = (page: Page) => page.locator('.scene-stage:not([hidden]) canvas').first();

test('lost graphics: once the picture mends itself, twice the page is loaded anew, too often the pictures stand still', async () => {
  // A small glass: without a card of its own the machine draws every pixel itself.
  const kiosk = await openPage({ path: kioskPath, width: 800, height: 480 });
  const { page } = kiosk;
  await inAttract(page);
  await living(page).waitFor({ timeout: 30_000 });
  await mark(page);
  await crashGraphics(page);
  await page.waitForTimeout(3000);
  await living(page).waitFor({ timeout: 30_000 });
  expect(await isMarked(page)).toBe(true);
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  await crashGraphics(page);
  await loadedAnew(page, 40_000);
  await page.locator('.scene').first().waitFor();
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  // As after three such reloads in a row.
  await page.evaluate(() =>
    sessionStorage.setItem(
      'seamfield.kiosk.troubles.1',
      JSON.stringify({ graphics: { count: 4, lastMs: Date.now() }, error: { count: 0, lastMs: 0 } }),
    ),
  );
  await page.reload();
  await inAttract(page);
  await page.locator('.scene svg').first().waitFor();
  await page.waitForTimeout(3000);
  expect(await page.locator('.scene canvas').count()).toBe(0);
  expect(await colorsSeen(page)).toBeGreaterThan(40);
  expect(uncaught(kiosk)).toEqual([]);
}, 150_000);
