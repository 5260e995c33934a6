import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const query = 'v=1&farm=coastal-plain&seed=7';

/** Sheets of a PDF, counted by its page objects (ISO 32000, 7.7.3.3). */
const sheetsOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

/** The saved picture: its size, and how many of its points differ from its corner. */
async function savedPicture(page: Page, button: string) {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const file = await download;
  const bytes = await readFile(await file.path());
  const seen = await page.evaluate(async (base64) => {
    const data = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([data], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const context = canvas.getContext('2d')!;
    context.drawImage(picture, 0, 0);
    const points = context.getImageData(0, 0, picture.width, picture.height).data;
    const middle = points.slice(0, 4);
    let inked = 0;
    for (let i = 0; i < points.length; i += 4) if (points[i] !== middle[0] || points[i + 3] !== middle[3]) inked++;
    return { width: picture.width, height: picture.height, inkedShare: (4 * inked) / points.length };
  }, bytes.toString('base64'));
  return { name: file.suggestedFilename(), ...seen };
}

const sheet = (page: Page) => page.locator('.card-sheet svg');

test('the card prints on one sheet of US Letter and of A4, saves as a picture, reflows and holds the rules', async () => {
  const { page, axe, finish } = await openPage({ path: `#/card?${query}`, reducedMotion: true });
  await sheet(page).waitFor();
  expect(await axe()).toEqual([]);
  for (const format of ['Letter', 'A4']) expect(sheetsOf(await page.pdf({ format }))).toBe(1);

  const picture = await savedPicture(page, 'Save as a picture');
  expect(picture.name).toBe('coastal-plain-7.png');
  expect([picture.width, picture.height]).toEqual([1750, 2420]);
  expect(picture.inkedShare).toBeGreaterThan(0.5);

  // On paper nothing but the card is left, at its true size.
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(false);
  expect((await sheet(page).boundingBox())!.width).toBe(700);
  await page.emulateMedia({ media: null });

  for (const width of [320, 390]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
  await page.setViewportSize({ width: 1024, height: 768 });
  await page.getByRole('button', { name: 'Projector' }).click();
  await page.getByRole('button', { name: 'Español' }).click();
  await page.getByRole('heading', { level: 1, name: 'Tarjeta de temporada' }).waitFor();
  expect(await axe()).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(sheetsOf(await page.pdf({ format: 'Letter' }))).toBe(1);
  await finish();
});

test('by keyboard alone: from a number of the card to its working, and back to the season it came from', async () => {
  const { page, finish } = await openPage({ path: `#/card?${query}`, reducedMotion: true });
  await sheet(page).waitFor();
  await page.locator('[data-working="card/pressing/balesPressed"]').focus();
  await page.keyboard.press('Enter');
  await page.locator('#working-panel').waitFor();
  await page.keyboard.press('Escape');
  await page.locator('#working-panel').waitFor({ state: 'detached' });
  await page.getByRole('link', { name: 'Back to this season' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Sewing table' }).waitFor();
  await page.waitForURL((url) => url.hash.startsWith(`#/season/sewing?${query}`));
  await page.getByRole('button', { name: 'Sew this block in' }).click();
  await page.getByRole('link', { name: /season card/ }).click();
  await sheet(page).waitFor();
  await page.waitForURL((url) => url.hash.startsWith(`#/card?${query}`));
  await finish();
});
