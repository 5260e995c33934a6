import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from '../browser.ts';
import { longTasksDuring, measuredAgain } from '../long-tasks.ts';

useBrowser([]);

const patience = 120_000;
/** Pictures follow the numbers in tasks of their own. */
const settleMs = 500;

const tooLong = (page: Page, run: () => Promise<unknown>): Promise<number[]> =>
  measuredAgain(() =>
    longTasksDuring(page, async () => {
      await run();
      await page.waitForTimeout(settleMs);
    }),
  );

/** Presses the one of two that is not in force. */
async function other(page: Page, names: readonly [string, string]): Promise<void> {
  const [one, two] = names.map((name) => page.locator('.bar button', { hasText: name }));
  await ((await one!.getAttribute('aria-pressed')) === 'true' ? two! : one!).click();
}

test(
  'the bench: a slider, another cloth, other units and another language each keep the page free',
  async () => {
    const { page, finish } = await openPage({ path: '#/bench', reducedMotion: true });
    await page.locator('.bench-picture svg').last().waitFor({ timeout: patience });
    await page.waitForTimeout(1000);
    const cells = page.locator('.bench-cell[data-side=a]');
    await cells.first().locator('input[type=range]').first().focus();
    expect(await tooLong(page, () => page.keyboard.press('ArrowRight')), 'a slider').toEqual([]);
    const cloth = cells.nth(2).locator('select').first();
    for (const name of ['denim', 'lawn']) expect(await tooLong(page, () => cloth.selectOption(name)), name).toEqual([]);
    expect(await tooLong(page, () => other(page, ['Español', 'English'])), 'language').toEqual([]);
    expect(await tooLong(page, () => other(page, ['lb, in', 'kg, mm'])), 'units').toEqual([]);
    await finish();
  },
  patience,
);

test(
  'the trace: another project and another number of it keep the page free',
  async () => {
    const { page, finish } = await openPage({ path: '#/trace', reducedMotion: true });
    await page.locator('.trace-picture svg').first().waitFor({ timeout: patience });
    await page.waitForTimeout(1000);
    const project = page.locator('.trace-field select').first();
    for (const name of ['jeans', 'king-quilt'])
      expect(await tooLong(page, () => project.selectOption(name)), name).toEqual([]);
    await finish();
  },
  patience,
);
