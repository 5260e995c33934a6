import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { openPage, useBrowser } from './browser.ts';
import { closedNumbers, mismatches, numberKeys } from './working-numbers.ts';

useBrowser();

const patience = 120_000;
/** The farm's own season, and the same with the harvest aid at 40 per cent open and a third lint cleaner. */
const pair = '#/compare?v=1&farm=coastal-plain&seed=1/v=1&farm=coastal-plain&seed=1&set=06040k03';

test(
  'two seasons side by side: words, columns, bands, arrays and parts that add up; clean, by keyboard, at 320 px, junk named',
  async () => {
    const { page, axe, finish } = await openPage({ path: pair, reducedMotion: true });
    const phrases = page.locator('.difference-phrases li');
    await phrases.first().waitFor({ timeout: patience });
    expect(await phrases.allInnerTexts()).toContain('color 41 → 31');
    expect(await page.locator('.loud-decisions tbody tr').count()).toBe(2);
    expect(await page.locator('.bands-beside svg').count()).toBe(2);
    expect(await page.locator('.arrays-beside svg').count()).toBe(2);
    const parts = page.locator('.parts-table');
    await parts.waitFor({ timeout: patience });
    const dollars = (text: string) => Number(text.replace('−', '-').replace(/[^\d.-]/g, ''));
    const turns = await parts.locator('tbody tr td.number:nth-of-type(2)').allInnerTexts();
    const whole = await parts.locator('tfoot td.number').first().innerText();
    // Each is rounded to a dollar.
    expect(Math.abs(turns.reduce((sum, text) => sum + dollars(text), 0) - dollars(whole))).toBeLessThanOrEqual(2);
    // Every number opens how it was come by: those of sentences and tables, and of the parts.
    const keys = await numberKeys(page);
    expect(new Set(keys).size).toBe(keys.length);
    expect(await closedNumbers(page)).toEqual([]);
    for (const kind of ['phrase/', 'before/', 'after/', 'less/', 'apart/'])
      expect(keys.filter((key) => key.startsWith(kind)).length).toBeGreaterThan(3);
    expect(
      await mismatches(
        page,
        keys.filter((_, at) => long || at % 4 === 0),
      ),
    ).toEqual([]);
    await page.locator('[data-working="phrase/difference/bales"]').press('Enter');
    const panel = page.locator('#working-panel');
    await panel.locator('.working-result').waitFor();
    const lines = await panel.locator('tbody th').allInnerTexts();
    expect(lines.filter((line) => line.startsWith('Before the choice')).length).toBeGreaterThan(2);
    expect(lines.filter((line) => line.startsWith('With the choice')).length).toBeGreaterThan(2);
    expect(lines.at(-1)).toContain('Difference');
    expect(await axe()).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('.bands-beside input[type=radio]').nth(1).focus();
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('.bands-beside input:checked').count()).toBe(1);
    await page.setViewportSize({ width: 320, height: 800 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Español' }).press('Enter');
    await page.getByRole('heading', { name: 'Dos temporadas lado a lado' }).waitFor();
    expect(await axe()).toEqual([]);

    await page.evaluate(() => {
      location.hash = '#/compare?v=1&farm=nowhere&seed=1/v=1&farm=river-bottom&seed=1&set=zz00';
    });
    const note = page.locator('.address-note code');
    await note.waitFor({ timeout: patience });
    expect(await note.innerText()).toContain('farm=nowhere');
    expect(await note.innerText()).toContain('set=zz00');
    await finish();
  },
  patience,
);

test(
  'a question: swatch, answer, working, the other language; clean, and an unknown one is named',
  async () => {
    const { page, axe, finish } = await openPage({ path: '#/ask', reducedMotion: true });
    await page.locator('.swatch').first().waitFor({ timeout: patience });
    expect(await page.locator('.swatch').count()).toBe(12);
    expect(await axe()).toEqual([]);
    await page.getByRole('link', { name: 'Where does all the seed go?' }).press('Enter');
    await page.locator('.ask-headline').waitFor({ timeout: patience });
    expect(await page.locator('.ask-headline').innerText()).toMatch(/\d\slb with each bale/);
    const number = page.locator('.ask-numbers .working-number').nth(1);
    await number.press('Enter');
    await page.locator('.working-panel').waitFor({ timeout: patience });
    await expect.poll(() => page.locator('.working-panel').innerText()).toContain(await number.innerText());
    expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 320, height: 800 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { name: '¿A dónde va toda la semilla?' }).waitFor({ timeout: patience });
    expect(await axe()).toEqual([]);
    // An answer over many seasons lists them, and their mean is the one in the sentence.
    await page.evaluate(() => {
      location.hash = '#/ask/third-lint-cleaning';
    });
    await page.locator('.ask-seasons').waitFor({ timeout: patience });
    const keys = await numberKeys(page);
    expect(keys.filter((key) => key.startsWith('every/'))).toHaveLength(8 * 3 + 1);
    expect(await closedNumbers(page)).toEqual([]);
    expect(await mismatches(page, [...keys.filter((_, at) => long || at % 6 === 0), 'every/mean'])).toEqual([]);
    const mean = (await page.locator('[data-working="every/mean"]').innerText()).replace(/^[−+]/, '');
    expect(await page.locator('.ask-answer').innerText()).toContain(mean);
    expect(await axe()).toEqual([]);
    await page.evaluate(() => {
      location.hash = '#/ask/no-such-question';
    });
    await expect.poll(() => page.locator('.ask-lead').innerText()).toContain('no-such-question');
    await finish();
  },
  patience,
);
