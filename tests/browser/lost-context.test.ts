import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const waitMs = 45_000;

/** Waits for a living picture that has its drawing context. */
const livingContext = (page: Page) =>
  page.waitForFunction(
    () => {
      const canvases = document.querySelectorAll<HTMLCanvasElement>('.scene-stage:not([hidden]) canvas');
      const contexts = [...canvases].map((canvas) => canvas.getContext('webgl2') ?? canvas.getContext('webgl'));
      return contexts.find((context) => context?.isContextLost() === false);
    },
    null,
    { timeout: waitMs },
  );

/** Takes the context away, as a driver reset does. */
async function loseContext(page: Page): Promise<void> {
  const living = await livingContext(page);
  await living.evaluate((context) => context!.getExtension('WEBGL_lose_context')!.loseContext());
}

test('a lost context is survived while the season plays on: the still picture stands in, then the living one is back', async () => {
  const { page, faults } = await openPage({ path: '#/season/ginning' });
  const ledger = await page.locator('.ledger').innerText();
  for (let loss = 0; loss < 2; loss++) {
    await loseContext(page);
    await page.locator('.scene .picture svg').waitFor();
  }
  // Lost while nobody looks after it: the next scene does not wait for it.
  await loseContext(page);
  await page.evaluate(() => {
    location.hash = '#/sources';
  });
  await page.locator('.scene').waitFor({ state: 'detached' });
  await page.evaluate(() => {
    location.hash = '#/season/ginning';
  });
  await loseContext(page);
  await livingContext(page);
  expect(await page.locator('.ledger').innerText()).toBe(ledger);
  expect(faults.filter((fault) => fault.startsWith('uncaught'))).toEqual([]);
}, 150_000);
