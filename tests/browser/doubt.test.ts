import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { openPage, useBrowser } from './browser.ts';
import { longTasksDuring } from './long-tasks.ts';
import { mismatches, numberKeys } from './working-numbers.ts';

useBrowser();

/** The reduced count in every run, the full one in the long run. */
const seasons = long ? '500' : '100';
const patience = 240_000;

async function openPanel(
  options: { readonly width?: number; readonly height?: number; readonly language?: string } = {},
) {
  const opened = await openPage({ path: '#/season/classing', reducedMotion: true, ...options });
  const panel = opened.page.locator('.doubt-panel');
  await panel.waitFor();
  await opened.page.locator('.scene svg').waitFor();
  await panel.getByRole('radio', { name: seasons }).check({ force: true });
  return { ...opened, panel, run: panel.locator('.doubt-start .patch-button') };
}

/** The ranking comes last, a frame after the strips. */
const done = (page: Page) =>
  page.locator('.doubt-panel[data-state=done] .doubt-ranking').waitFor({ timeout: patience });

/** A busy worker takes a moment to end. */
const workersLeft = (page: Page, count: number) =>
  expect.poll(() => page.workers().length, { timeout: 10_000 }).toBe(count);

test(
  'seasons run beside the page: progress is told, no task of the page takes over 50 ms, and strips and ranking come',
  async () => {
    const { page, panel, run, axe, finish } = await openPanel();
    expect(await panel.getByRole('img').count()).toBe(0);
    // What the page still has to do for itself is not what is measured.
    await page.waitForTimeout(1000);
    const measure = () =>
      longTasksDuring(page, async () => {
        await run.click();
        await panel.getByRole('progressbar').waitFor();
        await done(page);
        await page.waitForTimeout(300);
      });
    // A busy machine makes a task long once; a fault of the page does so each time.
    let tooLong = await measure();
    if (tooLong.length > 0) tooLong = await measure();
    expect(tooLong).toEqual([]);
    expect(await panel.locator('.doubt-strip svg').count()).toBe(5);
    expect(await panel.locator('.doubt-ranking tbody tr').count()).toBe(8);
    const said = await panel.locator('.doubt-strip svg').first().getAttribute('aria-label');
    const [low, high, lower, upper, middle, now] = [...said!.matchAll(/[\d,.]*\d/g)].map(([text]) =>
      Number(text.replaceAll(',', '')),
    );
    expect([low, lower, middle, upper, high]).toEqual([low!, lower!, middle!, upper!, high!].sort((a, b) => a - b));
    expect(now).toBeGreaterThan(0);
    expect(await axe()).toEqual([]);
    const keys = (await numberKeys(page)).filter((key) => key.startsWith('doubt/'));
    // Five quantiles of each strip, and of the ranking all that came to a number.
    expect(keys.length).toBeGreaterThan(25 + 8);
    expect(new Set(keys).size).toBe(keys.length);
    expect(
      await mismatches(
        page,
        keys.filter((_, at) => long || at % 7 === 0),
      ),
    ).toEqual([]);
    await finish();
  },
  patience,
);

test(
  'a task over 50 ms would be noticed',
  async () => {
    const { page, finish } = await openPanel();
    const busy = () =>
      page.evaluate(
        () =>
          new Promise<void>((after) => {
            setTimeout(() => {
              const from = performance.now();
              while (performance.now() - from < 400);
              after();
            });
          }),
      );
    expect(await longTasksDuring(page, busy)).not.toEqual([]);
    await finish();
  },
  patience,
);

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
