import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type StationId, stationIds } from '../../../src/model/station.ts';
import { openPage, settled, useBrowser } from '../browser.ts';
import { longTasksDuring, measuredAgain } from '../long-tasks.ts';

useBrowser([]);

/** What opens a scene for the first time builds it, and may take this long, ms. */
const buildMs = 200;
const playMs = 2500;
const repetitions = 3;

async function goTo(page: Page, station: StationId) {
  await page.evaluate((id) => {
    location.hash = `#/season/${id}`;
  }, station);
  await page.locator(`main[data-station=${station}]`).waitFor();
  await page.locator('.scene-stage canvas').first().waitFor();
  await settled(page);
}

/** Language, units or screen: whichever is not in force. */
const turnOver = async (page: Page, pair: number) => {
  await page.locator('.bar-pair').nth(pair).getByRole('button', { pressed: false }).click();
  await settled(page);
};

async function decide(page: Page) {
  const slider = page.locator('.decisions-panel input[type=range]:enabled').first();
  if ((await slider.count()) > 0) {
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await settled(page);
    await page.keyboard.press('ArrowLeft');
  } else await page.locator('.decisions-panel input[type=radio]:enabled:not(:checked)').first().press('Space');
  await settled(page);
}

async function useStation(page: Page) {
  await page.waitForTimeout(playMs);
  await page.locator('.ribbon-button').nth(1).click();
  await decide(page);
  for (const pair of [0, 1, 2]) await turnOver(page, pair);
  const number = page.locator('.season-ledger .working-number:visible').first();
  await number.click();
  await page.locator('.working-panel dl, .working-panel table, .working-panel math').first().waitFor();
  await number.click();
}

test('at every station no task takes over 50 ms but the first build of a scene, and that none over 200', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting' });
  await page.locator('.scene-stage canvas').first().waitFor();
  await settled(page);
  const tooLong: Record<string, number[]> = {};
  for (const [at, station] of stationIds.entries()) {
    const opening = await measuredAgain(async () => {
      const tasks = await longTasksDuring(page, () => goTo(page, station));
      const over = tasks.filter((ms) => ms > buildMs);
      if (over.length > 0) await goTo(page, stationIds[at === 0 ? 1 : 0]!);
      return over;
    });
    if (opening.length > 0) {
      tooLong[`${station}, opening`] = opening;
      await goTo(page, station);
    }
    for (let i = 0; i < repetitions; i++) {
      const using = await measuredAgain(() => longTasksDuring(page, () => useStation(page)));
      if (using.length > 0) tooLong[`${station}, ${i}`] = using;
    }
  }
  expect(tooLong).toEqual({});
  await finish();
}, 600_000);
