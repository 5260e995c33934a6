import type { Page } from 'playwright-core';
import { newKiosk, settingsPlace } from '../../src/kiosk/settings.ts';
import { type OpenOptions, openPage, settled } from './browser.ts';

/** Where a kiosk stands in a test: a morning in November, between harvest and seed. */
const morning = new Date(2025, 10, 27, 10, 0, 10);

export interface KioskOptions extends OpenOptions {
  readonly settings?: Partial<typeof newKiosk>;
  /** Script that runs before the page's own. */
  readonly before?: () => void;
}

/** Opens the kiosk as installed, on a clock that a test moves on. */
export async function openKiosk({ settings = {}, before, ...options }: KioskOptions = {}) {
  const opened = await openPage({ width: 1920, height: 1080, ...options });
  const { page } = opened;
  await page.clock.install({ time: morning });
  if (before) await page.addInitScript(before);
  await keep(page, settings);
  await page.goto(`${page.url().replace(/#.*$/, '')}#/kiosk`);
  await page.reload();
  await inAttract(page);
  return opened;
}

/** Installs settings for the next load. */
export async function keep(page: Page, settings: Partial<typeof newKiosk>) {
  await page.evaluate(
    ([place, text]) => localStorage.setItem(place!, text!),
    [settingsPlace, JSON.stringify({ ...newKiosk, phoneAddress: 'https://gin.example/season/', ...settings })],
  );
}

export async function inAttract(page: Page) {
  await page.locator('.kiosk[data-screen=attract] .kiosk-band button').waitFor({ timeout: 60_000 });
  await page.evaluate(() => document.fonts.ready);
}

export const screenNow = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.querySelector<HTMLElement>('.kiosk')?.dataset.screen);

/** A finger on a key, by what it says. */
export async function press(page: Page, name: string) {
  await page.locator('.kiosk-band').getByRole('button', { name, exact: true }).click();
  await settled(page);
}

/** Every screen of a visit, in order, each told to a reader. */
export async function walkKiosk(page: Page, look: (screen: string) => Promise<void>) {
  const at = (index: number) => page.locator('.kiosk-row').last().locator('button').nth(index);
  const go = async (key: ReturnType<typeof at>, name: string) => {
    await key.press('Enter');
    await settled(page);
    await look(name);
  };
  await look('attract');
  await go(page.locator('.kiosk-band button').first(), 'language');
  await go(page.locator('.kiosk-choices button').first(), 'stop 1');
  for (const stop of ['2', '3']) await go(at(-1), `stop ${stop}`);
  await go(page.locator('.kiosk-choices button').last(), 'stop 3 answered');
  for (const stop of ['4', '5', '6']) await go(at(-1), `stop ${stop}`);
  await go(at(-1), 'keepsake');
  await go(at(-1), 'explore planting');
  for (let station = 1; station <= 12; station++) {
    await go(at(3), `compare ${station}`);
    await go(page.locator('.kiosk-choices button').last(), `compare ${station} other`);
    await go(at(1), `explore ${station} again`);
    await go(at(4), `lesson ${station}`);
    await go(at(1), `explore ${station}`);
    if (station < 12) await go(page.locator('.kiosk-block').nth(station), `explore ${station + 1}`);
  }
}
