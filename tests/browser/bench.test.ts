import { expect, test } from 'vitest';
import { long } from '../laws/runs.ts';
import { openPage, useBrowser } from './browser.ts';
import { mismatches, numberKeys, numbersLeft } from './working-numbers.ts';

useBrowser();

const patience = 120_000;
/** Examples of a yarn number, the number of a standard, and the names of cottons, yarns and sources. */
const notResults = '.trust-note, .bench-door, .bench-yarn-field .caption, .bench-rests, .bench-sources';
const overflow = () => document.documentElement.scrollWidth - window.innerWidth;

test(
  'the bench: four questions answered with numbers, reason and source; clean, in Spanish, at 320 px, on one printed page',
  async () => {
    const { page, axe, finish } = await openPage({ path: '#/bench', reducedMotion: true });
    await page.locator('.bench-top').waitFor({ timeout: patience });
    expect(await page.locator('.bench-picture svg').count()).toBe(10);
    expect(await axe()).toEqual([]);
    const answers = [
      ['Does a longer staple help against pilling', 'Fiber ends in a centimeter', 'common practice'],
      ['Why does lawn cost more', 'Spindle minutes for a yard', 'fibers side by side'],
      ['What is 50-weight thread', '50/3: three of them plied', 'Coats'],
      ['Why did my flannel shrink', 'First wash shrinks it', 'from memory'],
    ] as const;
    for (const [question, figure] of answers) {
      await page.getByRole('link', { name: question }).click();
      const answer = page.locator('.bench-answer');
      await expect.poll(() => answer.locator('h2').innerText()).toContain(question);
      expect(await answer.innerText()).toContain(figure);
      expect(await answer.locator('.bench-sources li').count()).toBeGreaterThan(0);
      expect(await answer.locator('.working-number').count()).toBeGreaterThan(3);
    }
    const number = page.locator('.bench-answer .working-number').first();
    await number.press('Enter');
    await page.locator('.working-panel table').waitFor({ timeout: patience });
    await page.keyboard.press('Escape');

    // Two strained or unreachable yarns: what binds, and what that rests on.
    await page.evaluate(() => {
      location.hash = '#/bench?a.cotton=uplandShort&a.warp=40Ne&b.cotton=desi&b.cloth=lawn';
    });
    await expect.poll(() => page.locator('.bench-verdict + .bench-rests').count()).toBe(3);
    await page.locator('.bench-sweep > summary').click();
    await page.locator('.sweep-limits .working-number').first().waitFor({ timeout: patience });
    expect(await page.locator('.sweep-limit-name').count()).toBe(await page.locator('.sweep-limits li').count());
    const keys = await numberKeys(page);
    expect(keys.length).toBeGreaterThan(150);
    expect(new Set(keys).size).toBe(keys.length);
    const some = keys.filter((key, i) => long || i % 40 === 0 || /verdict|^now|limit/.test(key));
    expect(await mismatches(page, some)).toEqual([]);
    const left = await numbersLeft(page, `th, label, select, .unseen, .difference-name, .bench-now b, ${notResults}`);
    expect(left.filter((text) => !text.includes('ISO/IEC 7810'))).toEqual([]);

    // The link holds the bench; what it does not know is named.
    await page.evaluate(() => {
      location.hash = '#/bench?a.cloth=denim&b.cloth=lawn&b.warp=thick&c=1';
    });
    const problems = page.locator('.bench-page .problem-list');
    await problems.waitFor({ timeout: patience });
    expect(await problems.innerText()).toContain('b.warp: thick');
    expect(await page.locator('.bench-cell[data-side=a]').nth(2).locator('select').first().inputValue()).toBe('denim');

    const pdf = await page.pdf({ format: 'Letter' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { name: 'La mesa de trabajo' }).waitFor({ timeout: patience });
    await page.setViewportSize({ width: 320, height: 800 });
    // Each picture is drawn anew in a task of its own.
    await expect.poll(() => page.evaluate(overflow)).toBeLessThanOrEqual(0);
    await finish();
  },
  patience,
);

test(
  'a phone, by touch alone and by keyboard alone: another cotton, a typed length, a slip that is named, the curve',
  async () => {
    const { page, axe, finish } = await openPage({
      path: '#/bench',
      width: 390,
      height: 844,
      touch: true,
      reducedMotion: true,
    });
    const first = page.locator('.bench-cell[data-side=a]').first();
    await first.waitFor({ timeout: patience });
    await page.locator('.bench-sweep > summary').tap();
    await page.locator('.sweep-chart svg').waitFor({ timeout: patience });
    expect(await page.locator('.sweep-line').count()).toBe(2);
    const length = first.locator('.bench-number').first();
    await length.focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('9');
    await expect.poll(() => first.locator('.refusal').count()).toBe(1);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('1.5', { delay: 60 });
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('a.lengthIn=1.5');
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('a.lengthIn=1.51');
    expect(await page.locator('.bench-now').innerText()).toMatch(/\d/);
    expect(await axe()).toEqual([]);
    await finish();
  },
  patience,
);
