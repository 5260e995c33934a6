import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openStream } from '../../src/model/random.ts';
import { stationIds } from '../../src/model/station.ts';
import { stationPictures } from '../../src/pages/season/pictures/station-pictures.ts';
import { long, propertySeed } from '../laws/runs.ts';
import { openPage, settled, useBrowser } from './browser.ts';
import { readTwin, shownSeason, twinOf } from './season-of-page.ts';

useBrowser();

/** The page's words and table beside the model's own; both null while the page is between two stations. */
async function bothTwins(page: Page) {
  const shown = await shownSeason(page);
  return shown ? { page: await readTwin(page), model: twinOf(shown) } : null;
}

async function expectTwin(page: Page, after: string) {
  await expect
    .poll(
      async () => {
        const both = await bothTwins(page);
        return both !== null && JSON.stringify(both.page) === JSON.stringify(both.model);
      },
      { timeout: 15_000, message: after },
    )
    .toBe(true)
    .catch(async (error: unknown) => {
      const both = await bothTwins(page);
      expect(both?.page, after).toEqual(both?.model);
      throw error;
    });
}

/** Everything a hand may turn at a station, and the ways to other ones. */
const actions: readonly ((page: Page, chance: () => number) => Promise<string>)[] = [
  async (page, chance) => {
    const radios = page.locator('.decisions-panel input[type=radio]:enabled');
    const count = await radios.count();
    if (count === 0) return 'nothing to choose';
    const radio = radios.nth(Math.floor(chance() * count));
    await radio.press('Space');
    return `chose ${await radio.getAttribute('value')}`;
  },
  async (page, chance) => {
    const sliders = page.locator('.decisions-panel input[type=range]:enabled');
    const count = await sliders.count();
    if (count === 0) return 'nothing to slide';
    const slider = sliders.nth(Math.floor(chance() * count));
    await slider.focus();
    await page.keyboard.press(chance() < 0.5 ? 'ArrowRight' : 'ArrowLeft');
    return `slid ${await slider.getAttribute('aria-label')} to ${await slider.inputValue()}`;
  },
  async (page, chance) => {
    const ribbon = page.locator('.ribbon-track input');
    const [least, most] = [Number(await ribbon.getAttribute('min')), Number(await ribbon.getAttribute('max'))];
    const to = Math.round(least + chance() * (most - least));
    await ribbon.fill(String(to));
    return `scrubbed to ${to}`;
  },
  async (page, chance) => {
    const blocks = page.locator('.quilt-map button:not([aria-disabled=true])');
    const block = blocks.nth(Math.floor(chance() * (await blocks.count())));
    await block.click();
    return `went to ${await block.getAttribute('title')}`;
  },
  async (page, chance) => {
    const pair = page.locator('.bar-pair').nth(chance() < 0.5 ? 0 : 1);
    await pair.getByRole('button', { pressed: false }).click();
    return 'changed language or units';
  },
  async (page) => {
    await page.locator('.ribbon-button').nth(1).click();
    return 'one step';
  },
];

/** Every hand's turn is held against the model: some in each run, more in the long one. */
const turns = long ? 100 : 10;

test('after each of many random actions the words and the table of the scene are those of the model', async () => {
  const { page, finish } = await openPage({ path: '#/season/sewing', reducedMotion: true });
  await page.locator('.twin-see').waitFor();
  const chance = openStream(propertySeed, 'scene').uniform;
  for (let i = 0; i < turns; i++) {
    const action = actions[Math.floor(chance() * actions.length)]!;
    await settled(page);
    const did = `${i}: ${await action(page, chance)}`;
    await expectTwin(page, did);
  }
  await finish();
}, 240_000);

test('a word changed on the page would be noticed', async () => {
  const { page, finish } = await openPage({ path: '#/season/ginning', reducedMotion: true });
  await page.locator('.twin-see p').first().waitFor();
  await page.locator('.ribbon-track input').fill('20');
  await expectTwin(page, 'as it is');
  await page.evaluate(() => {
    // Within a piece of text: the page goes on writing to the pieces it made.
    const text = document.createTreeWalker(document.querySelector('.twin-see p')!, NodeFilter.SHOW_TEXT).nextNode()!;
    text.nodeValue = '1 lb comes in.';
  });
  const both = await bothTwins(page);
  expect(both!.page).not.toEqual(both!.model);
  await finish();
});

test('every scene draws as many counted pieces as the model counts', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  for (const station of stationIds) {
    await page.evaluate((to) => {
      location.hash = `#/season/${to}`;
    }, station);
    await page.locator(`main[data-station=${station}] .scene svg`).waitFor();
    const ribbon = page.locator('.ribbon-track input');
    await ribbon.fill((await ribbon.getAttribute('max'))!);
    const counts = async () => {
      const drawn = await page.evaluate(() => {
        const svg = document.querySelector('.scene svg')!;
        return {
          width: Number(svg.getAttribute('width')),
          height: Number(svg.getAttribute('height')),
          pieces: Number(svg.querySelector('[data-name=pieces]')?.getAttribute('data-count')),
        };
      });
      const shown = await shownSeason(page);
      const frame = shown && stationPictures[station].layOut(shown.season, shown.words, drawn)(shown.moment);
      return [drawn.pieces, frame?.moving.length];
    };
    // The picture is painted a moment after the ribbon moves.
    await expect.poll(async () => new Set(await counts()).size, { timeout: 10_000, message: station }).toBe(1);
  }
  await finish();
}, 120_000);

test('a whole season by keyboard alone: each station is decided at, stepped and sewn in', async () => {
  const { page, finish } = await openPage({ path: '', reducedMotion: true });
  await page.locator('main').waitFor();
  const reach = async (matches: string) => {
    for (let i = 0; i < 200; i++) {
      if (await page.evaluate((selector) => document.activeElement?.matches(selector) ?? false, matches)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`the keyboard never came to ${matches}`);
  };
  await reach('.doors a');
  await page.keyboard.press('Enter');
  // The first stations and the last in each run, all of them in the long one.
  for (const station of long ? stationIds : (['planting', 'bloom', 'sewing'] as const)) {
    if (!long && station === 'sewing')
      await page.evaluate(() => {
        location.hash = '#/season/sewing';
      });
    await page.locator(`main[data-station=${station}]`).waitFor();
    await reach('.decisions-panel input');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    await reach('.ribbon-button:nth-child(3)');
    await page.keyboard.press('Enter');
    await reach('.sew-in button');
    await page.keyboard.press('Enter');
    await page.waitForTimeout(650);
  }
  await page.locator('.sewn-note').waitFor();
  await finish();
}, 120_000);
