import type { Page } from 'playwright-core';
import { newKiosk, settingsPlace } from '../../src/kiosk/settings.ts';
import { type OpenOptions, openPage, settled } from './browser.ts';

/** Where a kiosk stands in a test: a morning in November, between harvest and seed. */
const morning = new Date(2025, 10, 27, 10, 0, 10);

export interface KioskOptions extends OpenOptions {
  readonly settings?: Partial<typeof newKiosk>;
  /** The time on the wall as it opens, ms. */
  readonly time?: number;
  /** Script that runs before the page's own. */
  readonly before?: () => void;
}

/** Opens the kiosk as installed, on a clock that a test moves on. */
export async function openKiosk({ settings = {}, before, time, ...options }: KioskOptions = {}) {
  const opened = await openPage({ width: 1920, height: 1080, fresh: true, ...options });
  const { page } = opened;
  await page.clock.install({ time: time ?? morning });
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
  // Sizes come from the glass: drawn once more when they are known.
  await settled(page);
}

export const screenNow = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.querySelector<HTMLElement>('.kiosk')?.dataset.screen);

/** A finger on a key, by what it says. */
export async function press(page: Page, name: string) {
  await page.locator('.kiosk-band').getByRole('button', { name, exact: true }).dispatchEvent('click');
  await settled(page);
}

/** Presses a key of the screen and waits until what follows is drawn. */
async function pressOnPage(page: Page, selector: string, index: number) {
  await page.evaluate(
    ([keys, at]) => {
      const found = [...document.querySelectorAll<HTMLElement>(keys as string)];
      const key = found.at(at as number);
      if (!key) throw new Error(`no key ${at} of ${keys}`);
      key.click();
    },
    [selector, index],
  );
  await settled(page);
}

/**
 * Every screen of a visit, in order, each told to a reader.
 * @param stations places of the stations to look at in explore, 0 to 11
 */
export async function walkKiosk(page: Page, stations: readonly number[], look: (screen: string) => Promise<void>) {
  const nav = '.kiosk-row:last-of-type button';
  const go = async (selector: string, index: number, name: string) => {
    await pressOnPage(page, selector, index);
    await look(name);
  };
  await look('attract');
  await go('.kiosk-band button', 0, 'language');
  await go('.kiosk-choices button', 0, 'stop 1');
  for (const stop of ['2', '3']) await go(nav, -1, `stop ${stop}`);
  await go('.kiosk-choices button', 1, 'stop 3 answered');
  for (const stop of ['4', '5', '6']) await go(nav, -1, `stop ${stop}`);
  await go(nav, -1, 'keepsake');
  await pressOnPage(page, nav, -1);
  for (const station of stations) {
    await go('.kiosk-block', station, `explore ${station}`);
    await go(nav, 3, `compare ${station}`);
    await go('.kiosk-choices button', 1, `compare ${station} other`);
    await pressOnPage(page, nav, 1);
    await go(nav, 4, `lesson ${station}`);
    await pressOnPage(page, nav, 1);
  }
}
