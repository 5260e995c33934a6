import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { csvParse } from 'd3-dsv';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import type { CheckSummary } from '../../src/checks/summarise-checks.ts';
import { allFacts } from '../../src/model/fact-list.ts';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

/** Every check runs in a worker, and in the command beside it, on as few as two cores. */
const patience = 240_000;

const openSources = () => openPage({ path: '#/sources', reducedMotion: true });
const script = fileURLToPath(new URL('../../src/cli/seamfield.mjs', import.meta.url));

/** What the command line counts: as a step before this one kept it, or asked for now. */
async function commandSummary(): Promise<CheckSummary> {
  const kept = process.env.SEAMFIELD_CHECKED ?? '';
  if (existsSync(kept)) return JSON.parse(await readFile(kept, 'utf8'));
  const child = spawn(process.execPath, [script, 'checks', '--json']);
  let out = '';
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
    out += chunk;
  });
  await new Promise((end) => child.once('close', end));
  return JSON.parse(out);
}

async function pageSummary(page: Page): Promise<CheckSummary> {
  const entries = await page
    .locator('.check-summary li')
    .evaluateAll((items) =>
      items.map((item) => [item.getAttribute('data-kind'), Number(item.querySelector('b')?.textContent)]),
    );
  return Object.fromEntries(entries);
}

/** Presses a button that saves a file, and reads the file. */
async function saved(page: Page, button: string) {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const file = await download;
  const text = await readFile(await file.path(), 'utf8');
  return { name: file.suggestedFilename(), rows: csvParse(text.replace(/^\uFEFF/, '')) };
}

/** How far the page is wider than its window, at the widths of small phones and large ones. */
async function widthsOver(page: Page): Promise<number[]> {
  const over: number[] = [];
  for (const width of [320, 390]) {
    await page.setViewportSize({ width, height: 844 });
    over.push(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth));
  }
  return over;
}

/** Constants are found by words and by mark, and saved. */
async function findConstants(page: Page, axe: () => Promise<string[]>) {
  const find = page.getByRole('searchbox');
  const shown = page.locator('.facts [role=status]');
  const count = allFacts().length;
  expect(await shown.innerText()).toBe(`${count} constants shown`);
  await find.fill('turnout');
  await expect.poll(() => shown.innerText()).not.toBe(`${count} constants shown`);
  const rows = page.locator('.fact-row');
  expect(await rows.count()).toBe(Number.parseInt(await shown.innerText(), 10));
  for (const text of await rows.allInnerTexts()) expect(text.toLowerCase()).toContain('turnout');
  await find.fill('turnout zyzzyva');
  await expect.poll(() => rows.count()).toBe(0);
  expect(await shown.innerText()).toBe('Nothing has these words. Try fewer.');
  await find.fill('');
  await page.getByRole('radio', { name: 'published' }).press('Space');
  const published = allFacts().filter(({ fact }) => fact.mark === 'published').length;
  await expect.poll(() => shown.innerText()).toBe(`${published} constants shown`);
  expect(await axe()).toEqual([]);
  const { name, rows: file } = await saved(page, 'Save the constants as CSV');
  expect(name).toBe('seamfield-constants.csv');
  expect(file).toHaveLength(count);
  expect(file.filter(({ source, mark }) => !source || !mark)).toEqual([]);
}

// One page for all of it: each new page runs the whole table again.
test(
  'constants are found and saved; the page counts what the command line counts, saves it, opens every check, and reflows, in both languages',
  async () => {
    const command = commandSummary();
    const { page, axe, finish } = await openSources();
    await findConstants(page, axe);
    await page.locator('.check-summary').waitFor({ timeout: patience });
    const [ours, theirs] = [await pageSummary(page), await command];
    // A page has no outside tools and holds the figures they gave, which the command also holds where a tool is missing.
    const missing = theirs.notRun;
    expect(theirs.failed).toBe(0);
    expect(ours).toMatchObject({ plainSum: theirs.plainSum, knownMiss: theirs.knownMiss, failed: 0, notRun: 0 });
    expect(ours.counted + ours.definition).toBe(theirs.counted + theirs.definition + missing);
    if (missing === 0) expect(ours).toEqual(theirs);
    expect(Object.values(ours).reduce((sum, count) => sum + count, 0)).toBe(allChecks.length);
    await page.locator('summary', { hasText: /^Units/ }).click();
    const row = page.locator('.check-row', { hasText: '480 lb in kg' });
    await expect.poll(() => row.innerText(), { timeout: 20_000 }).toContain('217.7');
    await expect.poll(() => row.innerText(), { timeout: 20_000 }).toContain('GNU units');
    expect(await axe()).toEqual([]);

    const { name, rows } = await saved(page, 'Save the checks as CSV');
    expect(name).toBe('seamfield-checks.csv');
    expect(rows.map(({ id }) => id)).toEqual(allChecks.map(({ id }) => id));
    expect(rows.filter((row) => row.ours === '' || row.passed !== 'true')).toEqual([]);

    await page.evaluate(() => {
      for (const group of document.querySelectorAll('details')) group.open = true;
    });
    await expect.poll(() => page.locator('.check-row').count()).toBe(allChecks.length + ours.knownMiss);
    expect(await page.locator('.check-row[data-passed=false]').count()).toBe(0);
    expect(Math.max(...(await widthsOver(page)))).toBeLessThanOrEqual(0);

    await page.evaluate(() => {
      for (const group of document.querySelectorAll('details')) group.open = false;
    });
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { name: 'Las comprobaciones' }).waitFor();
    expect(await pageSummary(page)).toEqual(ours);
    expect(await axe()).toEqual([]);
    expect(Math.max(...(await widthsOver(page)))).toBeLessThanOrEqual(0);
    await finish();
  },
  patience,
);
