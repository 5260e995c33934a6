import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const patience = 120_000;
const asked = '#/teach?minutes=20&for=children&about=pound&v=1&farm=river-bottom&seed=4';
const minutesOf = async (page: Page): Promise<number> =>
  (await page.locator('.teach-minutes').allInnerTexts()).reduce((sum, text) => sum + Number.parseInt(text, 10), 0);
/** What sticks out at the right of the window. */
const sideways = (page: Page) =>
  page.evaluate(() =>
    document.documentElement.scrollWidth <= window.innerWidth
      ? []
      : [...document.querySelectorAll('body *')]
          .filter((element) => element.getBoundingClientRect().right > window.innerWidth)
          .map((element) => `${element.tagName}.${element.className}`),
  );

test(
  'the planner: minutes add up through every change by keyboard; undo, file out and in, junk named; reload, Spanish, reflow; clean',
  async () => {
    const { page, axe, finish } = await openPage({ path: asked, reducedMotion: true });
    await page.getByRole('heading', { name: 'Where every pound goes: 20 minutes' }).waitFor({ timeout: patience });
    expect(await minutesOf(page)).toBe(20);
    expect(await axe()).toEqual([]);

    const second = (await page.locator('.teach-stop h3').nth(1).innerText()).trim();
    await page.getByRole('button', { name: `Shorter: ${second}` }).press('Enter');
    await page.getByText('One minute is free.').waitFor();
    await page.getByRole('button', { name: `Later: ${second}` }).press('Enter');
    expect((await page.locator('.teach-stop h3').nth(2).innerText()).trim()).toBe(second);
    await page.getByRole('button', { name: 'Longer: Opening' }).press('Enter');
    await page.getByText('All 20 minutes are given.').waitFor();
    await page.getByRole('button', { name: `Drop: ${second}` }).press('Enter');
    await page.getByRole('button', { name: 'Hand them out' }).press('Enter');
    expect(await minutesOf(page)).toBe(20);
    await page.getByLabel('Put in another stop').selectOption({ label: 'Weaving' });
    await page.getByRole('button', { name: 'Put it in' }).press('Enter');
    expect(await page.locator('.teach-stop h3').allInnerTexts()).toContain('Weaving');
    expect(await minutesOf(page)).toBeLessThanOrEqual(20);
    await page.getByRole('button', { name: 'Undo' }).press('Enter');
    expect(await page.locator('.teach-stop h3').allInnerTexts()).not.toContain('Weaving');

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).press('Enter');
    const file = await readFile(await (await download).path(), 'utf8');
    const before = await page.locator('.teach-stop h3').allInnerTexts();
    await page.getByRole('radio', { name: '45' }).press('Space');
    await page.getByRole('heading', { name: 'Where every pound goes: 45 minutes' }).waitFor();
    // The finished plan takes two sides of paper at most: page objects of the PDF (ISO 32000, 7.7.3.3).
    for (const format of ['Letter', 'A4']) {
      const pdf = await page.pdf({ format });
      expect((pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length, format).toBeLessThanOrEqual(2);
    }
    const open = (text: string) =>
      page
        .locator('input[type=file]')
        .setInputFiles({ name: 'plan.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await open(file.replace('"minutes": 20', '"minutes": 25'));
    expect(await page.getByRole('alert').innerText()).toContain('25');
    await page.getByRole('heading', { name: 'Where every pound goes: 45 minutes' }).waitFor();
    await open(file);
    await expect.poll(() => page.locator('.teach-stop h3').allInnerTexts()).toEqual(before);

    const hash = await page.evaluate(() => location.hash);
    await page.reload();
    await expect.poll(() => page.locator('.teach-stop h3').allInnerTexts()).toEqual(before);
    expect(await page.evaluate(() => location.hash)).toBe(hash);
    await page.evaluate(() => {
      location.hash = '#/';
    });
    await page.getByRole('link', { name: /Teach a class/ }).click();
    await expect.poll(() => page.locator('.teach-stop h3').allInnerTexts()).toEqual(before);

    await page.getByRole('button', { name: 'Español' }).click();
    await page.getByRole('heading', { level: 1, name: 'Dar una clase' }).waitFor();
    await page.setViewportSize({ width: 320, height: 800 });
    await expect.poll(() => sideways(page)).toEqual([]);
    expect(await axe()).toEqual([]);
    await finish();
  },
  patience,
);

test(
  'the class link: short, with a code; a word where pupils cannot reach it; answers of every season here are those on a pupil’s device',
  async () => {
    const { page, axe, finish } = await openPage({ path: asked, reducedMotion: true });
    await page.getByRole('link', { name: 'Class link and code' }).click({ timeout: patience });
    await page.getByRole('heading', { level: 1, name: 'The class link' }).waitFor();
    // The test's own site stands on this machine.
    expect(await page.getByRole('note').innerText()).toContain('npm start -- --share');
    await page.getByRole('img', { name: 'QR code of the class link' }).waitFor();
    const fill = page.getByRole('button', { name: 'The code on the whole screen' });
    await fill.press('Enter');
    const whole = page.getByRole('dialog').locator('svg');
    // Large enough for the back of a room: most of the screen's height, with the address below it.
    expect((await whole.boundingBox())!.height).toBeGreaterThan(0.7 * 768);
    expect(await axe()).toEqual([]);
    await page.keyboard.press('Escape');
    await whole.waitFor({ state: 'hidden' });
    const link = page.locator('.class-address');
    const address = await link.innerText();
    expect(address.length).toBeLessThan(300);
    await page.locator('.class-answers select').selectOption({ index: 11 });
    await page.locator('.class-list li').nth(23).waitFor({ timeout: patience });
    const answers = await page.locator('.class-list b').allInnerTexts();
    expect(new Set(answers).size).toBeGreaterThan(1);
    expect(await axe()).toEqual([]);

    await link.click();
    await page.getByLabel('The number your teacher gave you').fill('25');
    await page.keyboard.press('Enter');
    expect(await page.getByRole('alert').innerText()).toContain('1 to 24');
    await page.getByLabel('The number your teacher gave you').fill('3');
    expect(await axe()).toEqual([]);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('seed=7');
    const season = await page.evaluate(() => location.hash);
    await page.goto(page.url().replace(/#.*/, season.replace('planting', 'sewing')));
    await page.reload();
    await page.getByRole('button', { name: 'This is my guess' }).click({ timeout: patience });
    await expect.poll(() => page.locator('.predict-panel .answer dd').innerText()).toBe(answers[2]);
    await finish();
  },
  patience,
);
