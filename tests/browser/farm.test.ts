import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });

test('by keyboard a farm is made, kept over a reload, run under its own name, and saved and opened as a file', async () => {
  const { page, axe, finish } = await openPage({ path: '#/farm?v=1&farm=river-bottom&seed=4', reducedMotion: true });
  await heading(page, 'A farm and a gin of your own').waitFor();
  expect(await axe()).toEqual([]);
  await page.getByLabel('Name', { exact: true }).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('Ridge & <b>mill</b>');
  await page.locator('[data-station=ginning] summary').focus();
  await page.keyboard.press('Enter');
  await page.locator('[data-station=ginning]').getByRole('radio', { name: 'Roller', exact: true }).focus();
  await page.keyboard.press('Space');
  await expect.poll(() => page.locator('.farm-quilt .caption').innerText()).toContain('1 thing unlike River bottom');
  expect(await axe()).toEqual([]);

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const file = await (await download).path();
  const saved = JSON.parse(await readFile(file, 'utf8'));
  expect(saved).toMatchObject({ name: { en: 'Ridge & <b>mill</b>' }, decisions: { ginning: { stand: 'roller' } } });

  await page.reload();
  await heading(page, 'A farm and a gin of your own').waitFor();
  await page.getByRole('button', { name: 'Open Ridge & <b>mill</b>' }).click();
  await page
    .locator('.farm-files input[type=file]')
    .setInputFiles({ name: 'junk.json', mimeType: 'text/plain', buffer: Buffer.from('{"acres":') });
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('alert').innerText()).toContain('junk.json: no JSON is not allowed');
  await page.locator('.farm-files input[type=file]').setInputFiles(file);
  await expect
    .poll(() => page.locator('.farm-files [role=status]').innerText())
    .toContain('is open under an id of its own');
  expect(await page.getByRole('alert').count()).toBe(0);

  await page.getByRole('button', { name: 'Run this farm' }).click();
  await heading(page, 'Planting').waitFor();
  expect(await page.locator('.season-head').innerText()).toContain('Ridge & <b>mill</b>');
  await page.waitForURL(/&own=own-[0-9a-z]{8}$/);
  await page.reload();
  await heading(page, 'Planting').waitFor();
  expect(await page.locator('.season-head').innerText()).toContain('Ridge & <b>mill</b>');
  await finish();
});

test('elsewhere the link opens with the same decisions, and says whose farm it is; nothing scrolls sideways', async () => {
  const { page, axe, finish } = await openPage({
    path: '#/season/planting?v=1&farm=river-bottom&seed=4&set=0h01&land=3---&own=own-abcdefgh&weather=1abcdef',
    reducedMotion: true,
    language: 'es-MX',
  });
  await heading(page, 'Siembra').waitFor();
  const notes = await page.locator('.address-note').allInnerTexts();
  expect(notes.join(' ')).toContain('Esta es la granja propia de alguien');
  expect(notes.join(' ')).toContain('registro del clima que no está en este aparato');
  await page.getByRole('link', { name: 'Cambiar esta granja' }).click();
  await heading(page, 'Una granja y un despepite propios').waitFor();
  await page.getByRole('button', { name: 'Proyector' }).click();
  for (const [width, height] of [
    [320, 700],
    [390, 844],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.evaluate(() => {
      for (const plan of document.querySelectorAll('details')) plan.open = true;
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
  expect(await axe()).toEqual([]);
  await finish();
});
