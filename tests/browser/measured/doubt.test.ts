import { expect, test } from 'vitest';
import { long } from '../../laws/runs.ts';
import { useBrowser } from '../browser.ts';
import { done, openPanel, patience } from '../doubt-of-page.ts';
import { longTasksDuring, measuredAgain } from '../long-tasks.ts';
import { mismatches, numberKeys } from '../working-numbers.ts';

useBrowser([]);

test(
  'seasons run beside the page: progress is told, no task of the page takes over 50 ms, and strips and ranking come',
  async () => {
    const { page, panel, run, axe, finish } = await openPanel();
    expect(await panel.getByRole('img').count()).toBe(0);
    // What the page still has to do for itself is not what is measured.
    await page.waitForTimeout(1000);
    const tooLong = await measuredAgain(() =>
      longTasksDuring(page, async () => {
        await run.click();
        await panel.getByRole('progressbar').waitFor();
        await done(page);
        await page.waitForTimeout(300);
      }),
    );
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
