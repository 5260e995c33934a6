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
/** All ten kinds with their chains take a pupil so many sides at most. */
const mostSides = 5;

/** A set of thirty and its keys are printed twice in a few seconds; the long run prints four of them. */
const patienceMs = isLong ? 600_000 : 120_000;

/** Units and level of the sets printed. */
const sets = isLong
  ? ([
      ['us', 1],
      ['metric', 2],
      ['us', 3],
      ['metric', 3],
    ] as const)
  : ([['us', 3]] as const);

/** Opens a page that prints with a choice kept from before, laid out as on paper. */
async function openPrinted(address: string, language: string, kept: object) {
  const opened = await openPage({ language, path: '#/sources' });
  const { page } = opened;
  await page.evaluate((text) => localStorage.setItem('seamfield.sheets.1', text), JSON.stringify(kept));
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
  await page.locator('.sheets-page button[data-primary]:not([aria-disabled])').waitFor();
  // The design box of a page of print, 190 mm, in CSS pixels.
  await page.setViewportSize({ width: 718, height: 1000 });
  await page.emulateMedia({ media: 'print' });
  expect(await clippedOnPaper(page)).toEqual([]);
  return opened;
}

/** Sides of each pupil's sheet, and what runs over the foot of a side. */
const sidesIn = (page: Page) =>
  page.evaluate(() => ({
    ofEach: [...document.querySelectorAll('.paper-sheet')].map((sheet) => sheet.querySelectorAll('.paper-side').length),
    over: [...document.querySelectorAll<HTMLElement>('.paper-side')]
      .filter((side) => side.scrollHeight > side.clientHeight + 1)
      .map((side) => side.textContent?.slice(0, 80)),
  }));

test.each(prints)(
  'sheets for thirty pupils and their keys, $language, $paper',
  async ({ language, paper }) => {
    for (const [units, level] of sets) {
      const kept = { ...choice, units, level };
      const sheets = await openPrinted('#/teach/sheets', language, kept);
      const { ofEach, over } = await sidesIn(sheets.page);
      expect(ofEach.length).toBe(30);
      expect(over).toEqual([]);
      for (const sides of ofEach) expect(sides).toBeLessThanOrEqual(mostSides);
      // What is printed is what was laid out: no side runs on to a page of its own.
      const pages = pagesOf(await sheets.page.pdf({ format: paper }));
      expect(pages).toBe(ofEach.reduce((sum, sides) => sum + sides, 0));
      // Printed on both sides of the paper, each sheet begins on paper of its own.
      await sheets.page.emulateMedia({ media: null });
      await sheets.page.locator('.sheets-choose input[value=both]').check();
      await sheets.page.locator('.sheets-page button[data-primary]:not([aria-disabled])').waitFor();
      const both = await sidesIn(sheets.page);
      for (const sides of both.ofEach) expect(sides % 2).toBe(0);
      if (isLong)
        expect(pagesOf(await sheets.page.pdf({ format: paper }))).toBe(
          both.ofEach.reduce((sum, sides) => sum + sides, 0),
        );
      await sheets.finish();

      // A page for the teacher, and a side for each key at most.
      const keys = await openPrinted('#/teach/keys', language, kept);
      await keys.page.locator('.key-guide').waitFor();
      expect(await keys.page.locator('.key-set .paper-sheet').count()).toBe(30);
      const keyPages = pagesOf(await keys.page.pdf({ format: paper }));
      expect(keyPages).toBeLessThanOrEqual(1 + 30);
      expect(keyPages).toBeGreaterThan(30 / 4);
      await keys.finish();
      if (isLong)
        console.log(`${language} ${paper} level ${level} ${units}: ${pages} sides of sheets, ${keyPages} of keys`);
    }
  },
  patienceMs,
);

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
  'each handout takes its one side or two, and so do season card and recap; nothing is clipped, $language, $paper',
  async ({ language, paper }) => {
    const { page, axe, finish } = await openPage({ language, path: '#/teach/handouts', width: 1366, height: 768 });
    await page.locator('.handout').waitFor();
    const choices = page.locator('.choose-handout input');
    // Chain, fiber card, cloth guide, tag, gin tour, words.
    const sides = [1, 1, 2, 1, 1, 2];
    const count = await choices.count();
    expect(count).toBe(sides.length);
    for (let i = 0; i < count; i++) {
      await choices.nth(i).check();
      if (i === 0 || i === 1) expect(await axe()).toEqual([]);
      await page.setViewportSize({ width: 718, height: 1000 });
      await page.emulateMedia({ media: 'print' });
      expect(await clippedOnPaper(page)).toEqual([]);
      expect(pagesOf(await page.pdf({ format: paper })), `handout ${i}`).toBe(sides[i]);
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
    // The season card that the page leads to, and the recap with its questions and with its reasons.
    await page.locator('a[href="#/card"]').press('Enter');
    await page.locator('.card-sheet svg').waitFor();
    expect(pagesOf(await page.pdf({ format: paper }))).toBeLessThanOrEqual(2);
    await page.evaluate(() => {
      location.hash = '#/teach/recap';
    });
    await page.locator('.recap-question').first().waitFor();
    for (const what of [0, 1]) {
      await page.locator('.sheets-choose input[type=radio]').nth(what).check();
      expect(pagesOf(await page.pdf({ format: paper })), `recap ${what}`).toBeLessThanOrEqual(2);
    }
    await finish();
  },
  patienceMs,
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
