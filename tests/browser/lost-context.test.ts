import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser([]);

const waitMs = 45_000;

/** Notes every drawing context the page asks for: asking a canvas for it once more could make one of the wrong kind. */
function noteContexts() {
  const noted: WebGLRenderingContext[] = [];
  (globalThis as unknown as { noted: typeof noted }).noted = noted;
  const { getContext } = HTMLCanvasElement.prototype;
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, ...asked: unknown[]) {
    const context = Reflect.apply(getContext, this, asked);
    if (context instanceof WebGL2RenderingContext || context instanceof WebGLRenderingContext) noted.push(context);
    return context;
  } as typeof getContext;
}

/** Waits for a living picture that has its drawing context. */
const livingContext = (page: Page) =>
  page.waitForFunction(
    () => {
      const stage = document.querySelector('.scene-stage:not([hidden])');
      const { noted } = globalThis as unknown as { noted: WebGLRenderingContext[] };
      return noted.find((context) => !context.isContextLost() && stage?.contains(context.canvas as HTMLCanvasElement));
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
  const { page, faults } = await openPage({ width: 800, height: 600 });
  await page.addInitScript(noteContexts);
  await page.goto(`${page.url().split('#')[0]}?noted#/season/ginning`);
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
