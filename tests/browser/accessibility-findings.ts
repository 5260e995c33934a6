import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { long } from '../laws/runs.ts';

const { source } = createRequire(import.meta.url)('axe-core') as { source: string };

/** Every level and version of the accessibility guidelines that a page must hold. */
const axeTags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** Both measure where everything lies, and take two thirds of the time. */
const slowRules = ['color-contrast', 'target-size'];

/**
 * Accessibility findings of a page as it stands, one line each.
 * @param whole every rule; else all but the two slow ones, which then run in the long run alone
 */
export async function accessibilityFindings(page: Page, whole: boolean): Promise<string[]> {
  const options: RunOptions = {
    runOnly: { type: 'tag', values: axeTags },
    resultTypes: ['violations'],
    rules: whole || long ? {} : Object.fromEntries(slowRules.map((rule) => [rule, { enabled: false }])),
  };
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  const { violations } = await page.evaluate(async (asked) => {
    // At the end of the page the sticky foot lies in its own place: above it, whatever it happens to cover counts as too small.
    window.scrollTo(0, document.documentElement.scrollHeight);
    return (globalThis as unknown as { axe: { run(options: RunOptions): Promise<AxeResults> } }).axe.run(asked);
  }, options);
  return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`);
}
