import type { Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Time of the thread's own, microseconds. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

const longMs = 50;
const afterMs = 150;

/**
 * The tasks of a page's main thread that took over 50 ms while something ran, ms of the thread's own time: what other
 * programs on the machine took from it meanwhile is not the page's doing.
 */
export async function longTasksDuring(page: Page, run: () => Promise<unknown>): Promise<number[]> {
  const browser = page.context().browser()!;
  await browser.startTracing(page, { categories: ['toplevel', 'disabled-by-default-devtools.timeline'] });
  await run();
  // What it leaves to be drawn is its doing too.
  await page.waitForTimeout(afterMs);
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  const main = traceEvents.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain');
  const tasks = traceEvents.filter(
    ({ name, pid, tid, tdur }) =>
      name === 'RunTask' && tdur !== undefined && main.some((thread) => thread.pid === pid && thread.tid === tid),
  );
  if (tasks.length === 0) throw new Error('the browser told of no task');
  return tasks.map(({ tdur }) => Math.round(tdur! / 1000)).filter((ms) => ms > longMs);
}

/** How often a measurement is tried. */
const tries = 3;

/** What was measured; again where it saw any, up to three times: a busy machine makes a task long now and then, a fault of the page each time. */
export async function measuredAgain(measure: () => Promise<number[]>): Promise<number[]> {
  let tooLong = await measure();
  for (let tried = 1; tried < tries && tooLong.length > 0; tried++) tooLong = await measure();
  return tooLong;
}
