import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type OpenPage, openPage, settled, siteUrl, useBrowser } from '../browser.ts';

useBrowser();

const kioskPath = '#/kiosk';

/** Marks the document, so that a page that was loaded anew is known by the mark's absence. */
const mark = (page: Page) => page.evaluate(() => void Object.assign(globalThis, { marked: true }));
const isMarked = (page: Page) => page.evaluate(() => 'marked' in globalThis);
/** Waits until the kiosk stands and plays its attract. */
const inAttract = (page: Page) => page.locator('[data-attract=true]').waitFor({ state: 'attached', timeout: 20_000 });
/** Waits until the marked document has been replaced by a new one in attract. */
async function loadedAnew(page: Page, timeout: number): Promise<void> {
  await expect.poll(() => isMarked(page).catch(() => true), { timeout, interval: 250 }).toBe(false);
  await inAttract(page);
}
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

test('an error nobody caught puts a quiet picture up, and the page is loaded anew; the second wait is longer', async () => {
  const kiosk = await openPage({ path: kioskPath });
  const { page } = kiosk;
  await inAttract(page);
  const { heartbeat } = await page.evaluate(() => ({ ...document.documentElement.dataset }));
  expect(heartbeat).toMatch(/^Seamfield kiosk attract \d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
  expect(await page.title()).toBe(heartbeat);
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
  expect(await page.getByRole('button').count()).toBe(0);
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
  const kiosk = await openPage();
  const { page } = kiosk;
  await page.clock.install({ time: new Date(2026, 10, 27, 3, 50) });
  await page.goto(siteUrl(`?night${kioskPath}`));
  await inAttract(page);
  await mark(page);
  await page.clock.runFor(300_000);
  expect(await isMarked(page)).toBe(true);
  await page.clock.runFor(330_000).catch(() => {});
  await loadedAnew(page, 20_000);
  await kiosk.finish();
}, 60_000);
