import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { settled, useBrowser } from './browser.ts';
import { done, openPanel, patience } from './doubt-of-page.ts';
import { mismatches, numberKeys } from './working-numbers.ts';

useBrowser();

/** A busy worker takes a moment to end. */
const workersLeft = (page: Page, count: number) =>
  expect.poll(() => page.workers().length, { timeout: 10_000 }).toBe(count);

/** Low, inner low, middle, inner high and high of a strip, as its picture says them, and what the season came to. */
const saidOf = (text: string) => [...text.matchAll(/[\d,.]*\d/g)].map(([number]) => Number(number.replaceAll(',', '')));

// The longer language; both in the long run.
test.each(long ? ['es-US', 'en-US'] : ['es-US'])(
  'the same season gives the same result, to the last letter, on a fresh page too; its numbers open their workings; clean, and on a phone nothing scrolls sideways, in %s',
  async (language) => {
    const one = await openPanel({ language });
    expect(await one.panel.getByRole('img').count()).toBe(0);
    await one.run.click();
    await one.panel.getByRole('progressbar').waitFor();
    await done(one.page);
    const told = await one.panel.innerText();
    expect(await one.panel.locator('.doubt-strip svg').count()).toBe(5);
    expect(await one.panel.locator('.doubt-ranking tbody tr').count()).toBe(8);
    const said = await one.panel.locator('.doubt-strip svg').first().getAttribute('aria-label');
    const [low, high, lower, upper, middle, now] = saidOf(said!);
    expect([low, lower, middle, upper, high]).toEqual([low!, lower!, middle!, upper!, high!].sort((a, b) => a - b));
    expect(now).toBeGreaterThan(0);
    expect(await one.axe()).toEqual([]);
    const keys = (await numberKeys(one.page)).filter((key) => key.startsWith('doubt/'));
    // Five quantiles of each strip, and of the ranking all that came to a number.
    expect(keys.length).toBeGreaterThan(25 + 8);
    expect(new Set(keys).size).toBe(keys.length);
    const tried = keys.filter((_, at) => long || at % 7 === 0);
    expect(await mismatches(one.page, tried)).toEqual([]);
    await one.finish();

    const { page, panel, run, finish } = await openPanel({ language });
    await run.click();
    await done(page);
    expect(await panel.innerText()).toBe(told);
    for (const summary of await panel.locator('summary').all()) await summary.click();
    for (const width of [320, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await settled(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide, `${width}`).toBeLessThanOrEqual(0);
    }
    await finish();
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
