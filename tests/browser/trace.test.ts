import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { openPage, useBrowser } from './browser.ts';
import { mismatches, numberKeys, numbersLeft } from './working-numbers.ts';

useBrowser();

const patience = 120_000;
const asked = '#/trace?project=jeans&count=3&from=plant&v=1&farm=irrigated-desert&seed=7';

/** Sheets of a PDF, counted by its page objects (ISO 32000, 7.7.3.3). */
const sheetsOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

test(
  'a link reopens the page: its numbers open their workings; keyboard, units, language, file, print and reflow; clean',
  async () => {
    const { page, axe, finish } = await openPage({ path: asked, reducedMotion: true });
    const headline = page.locator('.trace-headline');
    await headline.waitFor({ timeout: patience });
    await page.locator('.trace-picture svg').first().waitFor();
    expect(await headline.innerText()).toMatch(/^3 × Jeans: [\d,]+ bolls, [\d,]+\ssq ft of field$/);
    expect(await page.evaluate(() => location.hash)).toBe(asked);
    expect(await axe()).toEqual([]);

    const keys = await numberKeys(page);
    expect(keys.length).toBeGreaterThan(100);
    // What was chosen, and the bale a figure is named after, are names.
    const left = await numbersLeft(page, 'label, select, .unseen, .trace-which, .trace-figure-name, .trace-address');
    expect(left.filter((text) => !text.startsWith('3 × Jeans'))).toEqual([]);
    const some = long ? keys : keys.filter((key, i) => i % 8 === 0 || key.startsWith('trace/differs/bollGrams'));
    expect(await mismatches(page, some)).toEqual([]);

    // By keyboard alone: another project, its number's working opened and closed.
    await page.getByLabel('Project').focus();
    await page.keyboard.type('Bandana');
    await expect.poll(() => headline.innerText()).toContain('Bandana');
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('project=bandana&count=3');
    await page.locator('[data-working="trace/answer/bolls"]').press('Enter');
    await page.locator('#working-panel').waitFor();
    await page.keyboard.press('Escape');
    await page.locator('#working-panel').waitFor({ state: 'detached' });
    await page.getByRole('radio', { name: 'A bale' }).press('Space');
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('from=bale');

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the numbers' }).press('Enter');
    const csv = await readFile(await (await download).path(), 'utf8');
    expect(csv.split('\n')[0]).toContain('low');
    expect(csv).toMatch(/^Bolls,[\d.]+,[\d.]+,[\d.]+,$/m);
    const picture = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the picture' }).click();
    expect((await readFile(await (await picture).path())).subarray(1, 4).toString()).toBe('PNG');

    for (const format of ['Letter', 'A4']) expect(sheetsOf(await page.pdf({ format }))).toBe(1);

    await page.getByText('kg, mm').click();
    await expect.poll(() => headline.innerText()).toContain('m²');
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { level: 1, name: 'Lo que le costó al campo' }).waitFor();
    expect(await headline.innerText()).toContain('bellotas');
    await page.setViewportSize({ width: 320, height: 800 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);
    expect(await axe()).toEqual([]);
    await finish();
  },
  patience,
);

test(
  'a phone by touch alone: own cloth, a farm, the averages; junk is named and the rest kept; the open season comes along',
  async () => {
    const { page, axe, finish } = await openPage({
      path: '#/trace?project=tote&count=zero&v=1&farm=nowhere&seed=4',
      width: 390,
      height: 844,
      touch: true,
      reducedMotion: true,
    });
    const headline = page.locator('.trace-headline');
    await headline.waitFor({ timeout: patience });
    expect(await headline.innerText()).toContain('Tote bag');
    const notes = (await page.locator('.address-note').allInnerTexts()).join(' ');
    expect(notes).toContain('count: zero is not allowed');
    expect(notes).toContain('farm=nowhere');
    await page.getByLabel('Project').selectOption('own');
    await page.getByLabel('Length (yd)').fill('2');
    await page.getByLabel('Or a named cloth').selectOption('denim');
    await expect.poll(() => headline.innerText()).toContain('2.00');
    await page.getByLabel('Length (yd)').fill('0');
    expect(await page.getByRole('alert').innerText()).toContain('not allowed');
    await page.getByLabel('Whose field, gin and mill').selectOption('stated');
    await expect.poll(() => page.locator('.trace-differs').count()).toBe(0);
    expect(await page.evaluate(() => location.hash)).toContain('through=averages');
    await page.locator('[data-working="trace/answer/field"]').tap();
    await page.locator('#working-panel').waitFor();
    expect(await axe()).toEqual([]);
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);

    await page.evaluate(() => {
      location.hash = '#/season/planting?v=1&farm=river-bottom&seed=3';
    });
    await page.getByRole('heading', { level: 1, name: 'Planting' }).waitFor({ timeout: patience });
    await page.evaluate(() => {
      location.hash = '#/trace';
    });
    await headline.waitFor({ timeout: patience });
    const chosen = page.getByLabel('Whose field, gin and mill').locator('option:checked');
    expect(await chosen.innerText()).toContain('season 3: the season you have open');
    await finish();
  },
  patience,
);
