import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const isLong = Boolean(process.env.SEAMFIELD_LONG);
/** One paper and language; in the long run all of them. */
const prints = isLong
  ? (['en-US', 'es-MX'] as const).flatMap((language) =>
      (['Letter', 'A4'] as const).map((paper) => ({ language, paper })),
    )
  : [{ language: 'en-US', paper: 'Letter' } as const];

/** Pages of a PDF, counted by its page objects (ISO 32000, 7.7.3.3). */
const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

/** What is wider than the paper it lies on, in words; print layout at the paper's own width. */
async function clippedOnPaper(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.paper-sheet, .paper-sheet :not(svg, svg *, .unseen)')]
      .filter(
        (element) => element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).display !== 'inline',
      )
      .map((element) => `${element.tagName} ${element.className} ${element.textContent?.slice(0, 60)}`),
  );
}

const choice = {
  kinds: ['heat', 'ginBalance', 'turnout', 'bales', 'staple', 'yarn', 'clothWeight', 'conversions', 'layout', 'trace'],
  level: 3,
  pupils: 30,
  first: 1,
  units: 'us',
};

/** Opens a page that prints with a choice kept from before. */
async function openWith(address: string, language: string) {
  const opened = await openPage({ language, path: '#/sources' });
  const { page } = opened;
  await page.evaluate((kept) => localStorage.setItem('seamfield.sheets.1', kept), JSON.stringify(choice));
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
  await page.locator('.sheets-page button[data-primary]:not([aria-disabled])').waitFor();
  return opened;
}

test.each(prints)('sheets for thirty pupils and their keys, $language, $paper', async ({ language, paper }) => {
  const printed: Record<string, number> = {};
  for (const [address, sides] of [
    ['#/teach/sheets', 6],
    ['#/teach/keys', 2],
  ] as const) {
    const { page, finish } = await openWith(address, language);
    expect(await page.locator('.paper-sheet').count()).toBe(30);
    // The design box of a page of print, 190 mm, in CSS pixels.
    await page.setViewportSize({ width: 718, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    expect(await clippedOnPaper(page)).toEqual([]);
    const pdf = await page.pdf({ format: paper });
    printed[address] = pagesOf(pdf);
    // All ten kinds with their chains: a pupil's sheet takes so many sides at most, and each begins on a side of its own.
    expect(printed[address]).toBeGreaterThanOrEqual(30);
    expect(printed[address]).toBeLessThanOrEqual(30 * sides);
    await finish();
  }
});

test('a pupil’s page shows no answer and leads to no key; both pages by keyboard, clean and without a sideways scroll', async () => {
  const { page, axe, finish } = await openPage({ path: '#/teach/sheets', width: 1366, height: 768 });
  await page.locator('.sheets-page button[data-primary]:not([aria-disabled])').waitFor();
  // It says in words where the answers are, and the teacher's plan leads there.
  expect(await page.locator('a[href*="keys"]').count()).toBe(0);
  expect(await page.locator('.sheet-helps').textContent()).toContain('Answer keys');
  expect(await page.locator('.key-table').count()).toBe(0);
  expect(await axe()).toEqual([]);

  const kind = page.getByRole('checkbox', { name: 'Turnout' });
  await kind.focus();
  await page.keyboard.press('Space');
  expect(await page.locator('.paper-sheet:not([data-only-paper]) h3').allTextContents()).not.toContain('2. Turnout');
  await page.getByRole('radio', { name: 'A chain' }).check();
  await page.getByLabel('Pupils').fill('0');
  await page.getByText('A whole number from 1 to 40.').waitFor();
  await page.getByLabel('Pupils').fill('2');
  await page.getByRole('button', { name: 'Print 2 sheets' }).waitFor();
  const asked = await page.locator('.paper-sheet .sheet-asks > li').count();

  // The teacher's plan leads to the key, which opens with what the sheets were made of and answers each thing asked.
  await page.getByRole('link', { name: 'Teach', exact: true }).press('Enter');
  await page.getByRole('link', { name: 'Answer keys' }).press('Enter');
  await page.getByRole('button', { name: 'Print the keys to 2 sheets' }).waitFor();
  await page.locator('.paper-sheet').nth(1).waitFor({ state: 'attached' });
  expect(await page.locator('.key-table td.number').count()).toBe(asked);
  expect(await axe()).toEqual([]);
  for (const width of [320, 390, 1024]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
  await finish();
});

test.each(prints)(
  'each handout takes two sides at most and nothing is clipped, $language, $paper',
  async ({ language, paper }) => {
    const { page, axe, finish } = await openPage({ language, path: '#/teach/handouts', width: 1366, height: 768 });
    await page.locator('.handout').waitFor();
    const choices = page.locator('.choose-handout input');
    const count = await choices.count();
    expect(count).toBe(6);
    for (let i = 0; i < count; i++) {
      await choices.nth(i).check();
      if (i === 0 || i === 1) expect(await axe()).toEqual([]);
      await page.setViewportSize({ width: 718, height: 1000 });
      await page.emulateMedia({ media: 'print' });
      expect(await clippedOnPaper(page)).toEqual([]);
      expect(pagesOf(await page.pdf({ format: paper })), `handout ${i}`).toBeLessThanOrEqual(2);
      // A ruler to measure with has its true size: 3 in of 96 px, and 4 mm on either side.
      const ruler = page.locator('.staple-ruler');
      if ((await ruler.count()) > 0) {
        const { width } = (await ruler.boundingBox())!;
        expect(Math.abs(width - (3 * 96 + (8 * 96) / 25.4))).toBeLessThan(1);
      }
      await page.emulateMedia({ media: null });
      await page.setViewportSize({ width: 320, height: 844 });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
        `handout ${i}`,
      ).toBeLessThanOrEqual(0);
      await page.setViewportSize({ width: 1366, height: 768 });
    }
    await finish();
  },
);

test('the recap by keyboard: each answer is explained at once, nothing is sent or kept, and paper shows no reasons unless asked', async () => {
  const { page, axe, finish } = await openPage({ path: '#/teach/recap', width: 1366, height: 768 });
  await page.locator('.recap-question').first().waitFor();
  const kept = await page.evaluate(() => JSON.stringify(localStorage));
  const first = page.locator('.recap-question').first();
  await first.locator('input').first().focus();
  await page.keyboard.press('Space');
  expect((await first.locator('.recap-why').textContent())!.length).toBeGreaterThan(20);
  expect(await axe()).toEqual([]);
  expect(await page.evaluate(() => JSON.stringify(localStorage))).toBe(kept);
  await page.emulateMedia({ media: 'print' });
  expect(await first.locator('.recap-why').isVisible()).toBe(false);
  expect(pagesOf(await page.pdf({ format: 'Letter' }))).toBeLessThanOrEqual(2);
  await page.emulateMedia({ media: null });
  await page.getByRole('radio', { name: 'Questions with answers' }).check();
  expect(await page.locator('.recap-reasons').count()).toBe(await page.locator('.recap-lessons input').count());
  await page.setViewportSize({ width: 320, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await finish();
});
