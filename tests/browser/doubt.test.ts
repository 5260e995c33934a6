import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { useBrowser } from './browser.ts';
import { done, openPanel, patience } from './doubt-of-page.ts';

useBrowser();

/** A busy worker takes a moment to end. */
const workersLeft = (page: Page, count: number) =>
  expect.poll(() => page.workers().length, { timeout: 10_000 }).toBe(count);

test(
  'the same season gives the same result, to the last letter, on a fresh page too',
  async () => {
    const one = await openPanel();
    await one.run.click();
    await done(one.page);
    const told = await one.panel.innerText();
    await one.finish();
    const other = await openPanel();
    await other.run.click();
    await done(other.page);
    expect(await other.panel.innerText()).toBe(told);
    await other.finish();
  },
  patience,
);

test(
  'Stop ends the worker and keeps nothing; so does another choice',
  async () => {
    const { page, panel, run, finish } = await openPanel();
    await run.click();
    await workersLeft(page, 1);
    await panel.getByRole('button', { name: 'Stop' }).click();
    await workersLeft(page, 0);
    expect(await panel.getAttribute('data-state')).toBe('stopped');
    await page.waitForTimeout(500);
    expect(await panel.locator('.doubt-strip').count()).toBe(0);
    await run.click();
    await workersLeft(page, 1);
    await page.getByRole('switch').first().click();
    await workersLeft(page, 0);
    expect(await panel.getAttribute('data-state')).toBe('idle');
    await finish();
  },
  patience,
);

// The longer language; both in the long run.
test.each(long ? ['es-US', 'en-US'] : ['es-US'])(
  'on a phone nothing scrolls sideways, in %s',
  async (language) => {
    const { page, panel, run, finish } = await openPanel({ width: 320, height: 844, language });
    await run.click();
    await done(page);
    for (const summary of await panel.locator('summary').all()) await summary.click();
    for (const width of [320, 390]) {
      await page.setViewportSize({ width, height: 844 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide, `${width}`).toBeLessThanOrEqual(0);
    }
    await finish();
  },
  patience,
);
