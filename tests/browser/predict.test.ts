import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';
import { closedNumbers, mismatches, numberKeys } from './working-numbers.ts';

useBrowser();

const patience = 120_000;
const plain = 'v=1&farm=coastal-plain&seed=1';

test(
  'a link that asks first: the numbers wait for a guess, by ruler, pieces and typing; then both stand together, clean, at 320 px, in Spanish',
  async () => {
    const { page, axe, finish } = await openPage({ path: `#/season/ginning?${plain}&predict=1`, reducedMotion: true });
    const panel = page.locator('.predict-panel');
    await panel.waitFor({ timeout: patience });
    expect(await page.locator('.ledger, .what-changed, .fibre-card, .seen-table').count()).toBe(0);
    // Time waits too.
    const place = () => page.locator('.ribbon-track input').inputValue();
    const held = await place();
    await page.waitForTimeout(400);
    expect(await place()).toBe(held);
    expect(await axe()).toEqual([]);
    await panel.getByRole('slider').focus();
    await page.keyboard.press('ArrowRight');
    await panel.getByRole('button', { name: 'This is my guess' }).press('Enter');
    await page.locator('.predict-panel[data-state=answered]').waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H2');
    expect(await panel.locator('dd').allInnerTexts()).toEqual(['51%', expect.stringMatching(/^5\d\.\d%$/)]);
    await page.locator('.what-changed').first().waitFor();
    const keys = (await numberKeys(page)).filter((key) => key.startsWith('guess/'));
    expect(keys.length).toBe(4);
    expect(await mismatches(page, keys)).toEqual([]);
    expect(await closedNumbers(page)).toEqual([]);
    expect(await axe()).toEqual([]);

    await page.locator('.sew-in .patch-button').click();
    await page.getByRole('textbox').waitFor();
    // This picture would tell.
    expect(await page.locator('.predict-cover').count()).toBe(1);
    expect(await page.locator('.scene').count()).toBe(0);
    await panel.getByRole('button', { name: 'This is my guess' }).click();
    expect(await panel.getByRole('alert').innerText()).toContain('99,999');
    await page.getByRole('textbox').fill('40');
    await page.keyboard.press('Enter');
    await page.locator('.predict-panel[data-state=answered]').waitFor();
    expect(await panel.locator('dd').first().innerText()).toBe('40');
    await page.setViewportSize({ width: 320, height: 800 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);

    await page.locator('.quilt-map button').nth(1).click();
    await panel.getByRole('radio').nth(3).press('Space');
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);
    expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { name: 'De 100 flores' }).waitFor();
    await panel.getByRole('button', { name: 'Esta es mi estimación' }).click();
    await page.locator('.predict-panel[data-state=answered]').waitFor();
    expect(await panel.innerText()).toContain('bellotas tiernas');
    // Back where a guess was given, it is still there.
    await page.locator('.quilt-map button').nth(6).click();
    await page.locator('main[data-station=ginning]').waitFor();
    expect(await panel.locator('dd').first().innerText()).toBe('51%');
    await finish();
  },
  patience,
);

test(
  'off until it is turned on: the switch is kept on the device and goes into the link, and can be turned off where it asks',
  async () => {
    const { page, finish } = await openPage({ path: `#/season/planting?${plain}`, reducedMotion: true });
    await page.locator('.what-changed').first().waitFor({ timeout: patience });
    expect(await page.locator('.predict-panel').count()).toBe(0);
    await page.getByRole('switch', { name: 'Guess each station’s number first' }).press('Enter');
    await page.locator('.predict-panel').waitFor();
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('predict=1');
    await page.evaluate((query) => {
      location.hash = '#/sources';
      setTimeout(() => {
        location.hash = `#/season/bloom?${query}`;
      }, 300);
    }, plain);
    await page.getByRole('heading', { name: 'Of 100 flowers' }).waitFor({ timeout: patience });
    await page.getByRole('button', { name: 'No more questions' }).press('Enter');
    await page.locator('.what-changed').first().waitFor();
    await expect.poll(() => page.evaluate(() => location.hash)).not.toContain('predict');
    expect(await page.evaluate(() => localStorage.getItem('seamfield.predict.1'))).toBeNull();
    await finish();
  },
  patience,
);

test(
  'the last choice: what it did downstream, both seasons by a link, and undone by its button and by Ctrl+Z',
  async () => {
    const { page, axe, finish } = await openPage({ path: `#/season/harvest?${plain}`, reducedMotion: true });
    await page.locator('.what-changed').first().waitFor({ timeout: patience });
    const table = () => page.locator('.what-changed').first().innerText();
    const [hash, numbers] = [await page.evaluate(() => location.hash), await table()];
    const undo = page.getByRole('button', { name: 'Undo the last choice' });
    expect(await undo.count()).toBe(0);
    const byHand = page.locator('.decisions-panel').getByRole('radio', { name: 'Hand' });
    await byHand.press('Space');
    const line = page.locator('.choice-result', { hasText: 'Your last choice:' });
    await line.waitFor();
    expect(await page.locator('.choice-result, .downstream-line').allInnerTexts()).toEqual([
      expect.stringMatching(/\d/),
      expect.stringMatching(/Further on, it also changed:[\s\S]*\d/),
    ]);
    expect((await page.locator('.choice-result, .downstream-line').allInnerTexts()).join()).toMatch(/\d bales more/);
    expect(await line.getByRole('link').getAttribute('href')).toMatch(
      /^#\/compare\?v=1&farm=coastal-plain&seed=1\/v=1&farm=coastal-plain&seed=1&set=\w+$/,
    );
    const said = (await numberKeys(page)).filter((key) => key.startsWith('downstream/'));
    expect(said.length).toBeGreaterThan(2);
    expect(await closedNumbers(page)).toEqual([]);
    expect(await mismatches(page, said)).toEqual([]);
    expect(await axe()).toEqual([]);
    await undo.press('Enter');
    await expect.poll(() => page.evaluate(() => location.hash)).toBe(hash);
    expect(await table()).toBe(numbers);
    expect(await line.count()).toBe(0);
    expect(await undo.getAttribute('aria-disabled')).toBe('true');
    await byHand.press('Space');
    await line.waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.evaluate(() => location.hash)).toBe(hash);
    expect(await table()).toBe(numbers);
    await finish();
  },
  patience,
);
