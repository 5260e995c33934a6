import type { Page } from 'playwright-core';
import { long } from '../laws/runs.ts';
import { openPage } from './browser.ts';

/** The reduced count in every run, the full one in the long run. */
const seasons = long ? '500' : '100';
/** How long a test of the doubt may take, ms. */
export const patience = 240_000;

/** The doubt of a season at classing, open and not begun. */
export async function openPanel(
  options: { readonly width?: number; readonly height?: number; readonly language?: string } = {},
) {
  const opened = await openPage({ path: '#/season/classing', reducedMotion: true, ...options });
  const panel = opened.page.locator('.doubt-panel');
  await panel.waitFor();
  await opened.page.locator('.scene svg').waitFor();
  await panel.getByRole('radio', { name: seasons }).press('Space');
  return { ...opened, panel, run: panel.locator('.doubt-start .patch-button') };
}

/** Waits for the result: the ranking comes last, a frame after the strips. */
export const done = (page: Page) =>
  page.locator('.doubt-panel[data-state=done] .doubt-ranking').waitFor({ timeout: patience });
