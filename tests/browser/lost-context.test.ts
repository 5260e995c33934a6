import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

/** Takes the drawing context away, as a driver reset does. */
const loseContext = () => {
  for (const canvas of document.querySelectorAll<HTMLCanvasElement>('.scene canvas')) {
    const context = canvas.getContext('webgl2') ?? canvas.getContext('webgl');
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  }
};

test('a lost context is survived, twice: the picture is there again and nothing of the season is lost', async () => {
  const { page } = await openPage({ path: '#/season/ginning' });
  await page.locator('.scene canvas').first().waitFor({ timeout: 45_000 });
  const ledger = await page.locator('.ledger').innerText();
  for (let loss = 0; loss < 2; loss++) {
    await page.evaluate(loseContext);
    // Either the still picture stands in, or the living one is back: never an empty place.
    await expect
      .poll(
        async () =>
          (await page
            .locator('.scene canvas')
            .first()
            .isVisible()
            .catch(() => false)) ||
          (await page
            .locator('.scene .picture svg')
            .first()
            .isVisible()
            .catch(() => false)),
      )
      .toBe(true);
    await page.waitForTimeout(4500);
    await page.locator('.scene canvas').first().waitFor({ timeout: 45_000 });
  }
  expect(await page.locator('.ledger').innerText()).toBe(ledger);
}, 150_000);
