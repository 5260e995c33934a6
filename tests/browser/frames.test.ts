import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

/** How often a page asks for a frame, a second. */
async function framesPerSecond(page: Page): Promise<number> {
  const before = await page.evaluate(() => (globalThis as unknown as { frames: number }).frames);
  await page.waitForTimeout(1500);
  const after = await page.evaluate(() => (globalThis as unknown as { frames: number }).frames);
  return (after - before) / 1.5;
}

test('a living scene asks for frames; paused, or on a hidden page, it asks for none', async () => {
  const { page, finish } = await openPage({ path: '', width: 800, height: 600, fresh: true });
  await page.addInitScript(() => {
    const counted = globalThis as unknown as { frames: number };
    counted.frames = 0;
    const ask = globalThis.requestAnimationFrame.bind(globalThis);
    globalThis.requestAnimationFrame = (callback) => {
      counted.frames++;
      return ask(callback);
    };
  });
  await page.goto(`${page.url().split('#')[0]}?counted#/season/ginning`);
  await page.locator('.scene canvas').first().waitFor({ timeout: 30_000 });
  expect(await framesPerSecond(page)).toBeGreaterThan(1);
  // Hidden: what a browser tells a page that lies behind another.
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { configurable: true, get: () => true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.waitForTimeout(500);
  expect(await framesPerSecond(page)).toBe(0);
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { configurable: true, get: () => false });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  expect(await framesPerSecond(page)).toBeGreaterThan(1);
  await page.getByRole('button', { name: 'Pause' }).click();
  await page.waitForTimeout(500);
  expect(await framesPerSecond(page)).toBe(0);
  await finish();
}, 60_000);
