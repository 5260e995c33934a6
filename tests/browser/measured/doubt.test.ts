import { expect, test } from 'vitest';
import { useBrowser } from '../browser.ts';
import { done, openPanel, patience } from '../doubt-of-page.ts';
import { longTasksDuring, measuredAgain } from '../long-tasks.ts';

useBrowser([]);

test(
  'seasons run beside the page: progress is told, and no task of the page takes over 50 ms',
  async () => {
    const { page, panel, run, finish } = await openPanel();
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
