import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

/** Pages of a PDF, counted by its page objects (ISO 32000, 7.7.3.3). */
const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
const kept = (page: Page) => page.evaluate(() => JSON.parse(localStorage.getItem('seamfield.kiosk.1') ?? '{}'));
const sideways = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
const file = (fields: object) => ({
  name: 'kiosk.json',
  mimeType: 'application/json',
  buffer: Buffer.from(JSON.stringify(fields)),
});
const counts = { visit: { count: 3, seconds: 0 }, 'station:ginning': { count: 2, seconds: 25 } };

test('the installer’s page: every setting is kept at once, junk is named, counts are saved and forgotten, in both languages', async () => {
  const { page, axe, finish } = await openPage({ path: '#/kiosk/setup', touch: true });
  await page.getByRole('heading', { level: 1, name: 'Set up the kiosk' }).waitFor();
  await page.locator('.setup-test > div').nth(4).waitFor();
  expect(await axe()).toEqual([]);

  // A ruler against the bar of 240 px: 60 mm are 0.25 mm a pixel.
  await page.getByLabel('Length of the bar').fill('60');
  expect((await kept(page)).mmPerPx).toBe(0.25);
  await page.getByLabel('Length of the bar').fill('a hand');
  await page.getByText('From 12 to 360 mm.').waitFor();
  await page.getByRole('radio', { name: 'Spanish, then English' }).press('Space');
  await page.getByRole('radio', { name: 'Silent' }).press('Space');
  await page.getByRole('switch', { name: 'High contrast' }).press('Space');
  await page.getByLabel('Address for phones').fill('https://gin.example/season/');
  await page.getByLabel('From', { exact: true }).selectOption('9');
  await page.getByLabel('To', { exact: true }).selectOption('17');
  await page.getByText('anew each night at 01:00').waitFor();
  await page.getByRole('checkbox', { name: 'River bottom' }).press('Space');
  await page.getByRole('switch', { name: 'Our own gin' }).press('Space');
  await page.getByRole('radio', { name: 'Roller' }).press('Space');
  await page.getByLabel('Greeting in English').fill('Welcome to our gin');
  const settings = await kept(page);
  expect(settings).toMatchObject({
    languages: ['es', 'en'],
    volume: 0,
    highContrast: true,
    phoneAddress: 'https://gin.example/season/',
    hours: { from: 9, to: 17 },
    ownGin: { stand: 'roller', greeting: { en: 'Welcome to our gin' } },
  });
  expect(settings.scenarios).not.toContain('river-bottom');
  expect(settings.scenarios).toHaveLength(5);

  // To a file and back; a file with junk names each field and changes nothing.
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the settings' }).press('Enter');
  const saved = JSON.parse(readFileSync(await (await saving).path(), 'utf8'));
  expect(saved).toEqual({ kioskSettings: 1, ...settings });
  const open = page.locator('input[type=file]').last();
  await open.setInputFiles(file({ ...saved, volume: 'loud', hours: { from: 9, to: 99 } }));
  const problems = page.locator('.problem-list li');
  await problems.first().waitFor();
  expect(await problems.allTextContents()).toEqual([
    expect.stringMatching(/^volume: loud .*0 to 100/),
    expect.stringMatching(/^hours\.to: 99 .*1 to 24/),
  ]);
  expect(await kept(page)).toEqual(settings);
  await open.setInputFiles(file({ ...saved, volume: 25 }));
  await page.getByText('The settings of kiosk.json are in force.').waitFor();
  expect((await kept(page)).volume).toBe(25);

  // The site's gin as a farm file, and a gin taken from one.
  const farming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a farm file' }).press('Enter');
  const farm = JSON.parse(readFileSync(await (await farming).path(), 'utf8'));
  expect(farm.decisions.ginning.stand).toBe('roller');
  farm.decisions.ginning.stand = 'saw';
  await page.locator('input[type=file]').first().setInputFiles(file(farm));
  await expect.poll(async () => (await kept(page)).ownGin.stand).toBe('saw');

  // Counts, as a table for any program, and forgotten when asked twice.
  await page.evaluate((some) => localStorage.setItem('seamfield.kiosk.tallies.1', JSON.stringify(some)), counts);
  await page.reload();
  const table = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as CSV' }).press('Enter');
  expect(readFileSync(await (await table).path(), 'utf8')).toBe(
    'what,count,seconds\r\nvisit,3,0\r\nstation:ginning,2,25\r\n',
  );
  await page.getByRole('button', { name: 'Start counting anew' }).press('Enter');
  await page.getByRole('button', { name: 'Yes, forget' }).press('Enter');
  await page.getByText('Nothing counted yet.').waitFor();

  await page.getByRole('button', { name: 'Español' }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Preparar el quiosco' }).waitFor();
  expect(await axe()).toEqual([]);
  for (const width of [320, 390, 1024]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await sideways(page)).toBeLessThanOrEqual(0);
  }
  await finish();
}, 120_000);

test('the gesture opens it from the kiosk, and nothing else does', async () => {
  const { page, finish } = await openPage({ path: '#/kiosk', width: 1080, height: 1920, reducedMotion: true });
  await page.locator('.kiosk[data-screen=attract] svg').first().waitFor();
  const tap = async (x: number, y: number) => {
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.up();
  };
  const round = async () => {
    await tap(1075, 5);
    await tap(1075, 1915);
    await tap(5, 1915);
    await tap(5, 5);
  };
  await round();
  expect(new URL(page.url()).hash).toBe('#/kiosk');
  await page.mouse.move(5, 5);
  await page.mouse.down();
  await page.waitForTimeout(5200);
  await page.mouse.up();
  await round();
  await page.waitForURL(/#\/kiosk\/setup$/);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await finish();
}, 60_000);

test.each(['en-US', 'es-MX'])(
  'the installation sheet prints on two sides with nothing clipped, %s',
  async (language) => {
    const { page, axe, finish } = await openPage({ language, path: '#/kiosk/sheet' });
    await page.locator('.kiosk-sheet').waitFor();
    expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await sideways(page)).toBeLessThanOrEqual(0);
    // The design box of a page of print, 190 mm, in CSS pixels.
    await page.setViewportSize({ width: 718, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    const clipped = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.kiosk-sheet, .kiosk-sheet :not(svg, svg *)')]
        .filter((part) => part.scrollWidth > part.clientWidth + 1 && getComputedStyle(part).display !== 'inline')
        .map((part) => `${part.tagName} ${part.textContent?.slice(0, 60)}`),
    );
    expect(clipped).toEqual([]);
    for (const format of ['Letter', 'A4']) expect(pagesOf(await page.pdf({ format }))).toBe(2);
    await finish();
  },
);
