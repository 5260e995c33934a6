import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { stationIds } from '../../src/model/station.ts';
import { long, propertySeed } from '../laws/runs.ts';
import { openPage, settled, useBrowser } from './browser.ts';
import { closedNumbers, mismatches, numberKeys } from './working-numbers.ts';

useBrowser();

/** Numbers opened at a station when not all of them are. */
const picked = 8;

/** Some of the keys, the same in every run; all of them in the long run. */
function picksOf(keys: readonly string[], seed: number): readonly string[] {
  if (long || keys.length <= picked) return keys;
  const some = fc.shuffledSubarray([...keys], { minLength: picked, maxLength: picked });
  return fc.sample(some, { seed, numRuns: 1 })[0]!;
}

async function openStation(station: string, farm = 'coastal-plain', options: Parameters<typeof openPage>[0] = {}) {
  const path = `#/season/${station}?v=1&farm=${farm}&seed=1`;
  const opened = await openPage({ path, reducedMotion: true, ...options });
  await opened.page.locator(`main[data-station=${station}] .scene svg`).waitFor();
  await settled(opened.page);
  return opened;
}
/** Another station of the same farm, on the page that is open. */
async function goTo(page: Page, station: string, farm = 'coastal-plain') {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/season/${station}?v=1&farm=${farm}&seed=1`);
  await page.locator(`main[data-station=${station}] .scene svg`).waitFor();
  await settled(page);
}
const openNumber = (page: Page, key: string) => page.locator(`[data-working="${key}"]`);
const panel = (page: Page) => page.locator('#working-panel');

test.each([
  { farm: 'coastal-plain', language: 'en-US', from: 0 },
  { farm: 'coastal-plain', language: 'es-MX', from: 2 },
  { farm: 'hand-picked-1930s', language: 'en-US', from: 4 },
])(
  '$farm, $language: every number of each station opens its working, which ends in that number',
  async ({ farm, language, from }) => {
    // Two stations each in every run, six in all; all twelve for each in the long run.
    const tried = stationIds.filter((_, i) => long || i % 6 === from);
    const { page, finish } = await openStation(tried[0]!, farm, { language });
    for (const station of tried) {
      await goTo(page, station, farm);
      const keys = await numberKeys(page);
      expect(keys.length, station).toBeGreaterThanOrEqual(8);
      expect(new Set(keys).size, station).toBe(keys.length);
      expect(await closedNumbers(page), station).toEqual([]);
      const picks = picksOf(keys, propertySeed + stationIds.indexOf(station));
      expect(picks.length, station).toBeGreaterThanOrEqual(8);
      expect(await mismatches(page, picks), station).toEqual([]);
    }
    await finish();
  },
  long ? 900_000 : 180_000,
);

test('on a phone, in kilograms, the list of the ledger opens its numbers too', async () => {
  const { page, finish } = await openStation('cleaning', 'coastal-plain', { width: 390, height: 844 });
  await page
    .getByRole('button', { name: /kg, mm/ })
    .or(page.getByText('kg, mm'))
    .first()
    .click();
  await settled(page);
  const keys = await numberKeys(page);
  expect(await closedNumbers(page)).toEqual([]);
  expect(await mismatches(page, picksOf(keys, propertySeed))).toEqual([]);
  await finish();
});

describe('at one station', () => {
  let opened: Awaited<ReturnType<typeof openStation>>;
  beforeAll(async () => {
    opened = await openStation('ginning');
  });
  // Each begins with no working open; what was chosen stays chosen.
  beforeEach(async () => {
    const close = panel(opened.page).locator('.working-close');
    if ((await close.count()) > 0) await close.press('Enter');
    await panel(opened.page).waitFor({ state: 'detached' });
  });
  afterAll(() => opened.finish());

  test('what was there before a choice opens the working of that season', async () => {
    const { page } = opened;
    const before = await openNumber(page, 'ginning/turnout').innerText();
    await page.getByRole('radio', { name: '0', exact: true }).press('Space');
    const was = openNumber(page, 'before/ginning/turnout');
    expect(await was.innerText()).toBe(before);
    expect(await mismatches(page, ['ginning/turnout', 'before/ginning/turnout'])).toEqual([]);
  });

  test('an open working follows a choice', async () => {
    const { page } = opened;
    await openNumber(page, 'ginning/turnout').click();
    const result = panel(page).locator('.working-result');
    const before = await result.innerText();
    await page.getByRole('radio', { name: '3', exact: true }).press('Space');
    await expect.poll(() => result.innerText()).not.toBe(before);
    expect(await result.innerText()).toBe(await openNumber(page, 'ginning/turnout').innerText());
  });

  test('by keyboard: Enter opens, what it comes to is said, Escape closes and goes back to the number', async () => {
    const { page } = opened;
    const number = openNumber(page, 'ginning/turnout');
    await number.focus();
    await page.keyboard.press('Enter');
    await panel(page).locator('.working-result').waitFor();
    expect(await number.getAttribute('aria-expanded')).toBe('true');
    const said = page.locator('[role=status]', { hasText: await number.innerText() });
    await said.waitFor({ state: 'attached' });
    expect(await said.innerText()).toContain('Turnout');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    await panel(page).waitFor({ state: 'detached' });
    expect(await number.evaluate((each) => each === document.activeElement)).toBe(true);
    expect(await number.getAttribute('aria-expanded')).toBe('false');
  });

  test('a working closes with its station', async () => {
    const { page } = opened;
    await openNumber(page, 'ginning/turnout').click();
    await panel(page).waitFor();
    await page.getByRole('button', { name: /^Cleaning/ }).click();
    await page.locator('main[data-station=cleaning]').waitFor();
    await page.getByRole('button', { name: /^Ginning/ }).click();
    await page.locator('main[data-station=ginning]').waitFor();
    expect(await panel(page).count()).toBe(0);
  });

  test('the formula is drawn as MathML, with the numbers of the season in it', async () => {
    const { page } = opened;
    await openNumber(page, 'ginning/turnout').click();
    const formulas = panel(page).locator('math');
    await formulas.first().waitFor();
    expect(await formulas.count()).toBe(2);
    const drawn = await formulas.evaluateAll((all) =>
      all.map((math) => ({ space: math.namespaceURI, height: math.getBoundingClientRect().height })),
    );
    for (const { space, height } of drawn) {
      expect(space).toBe('http://www.w3.org/1998/Math/MathML');
      expect(height).toBeGreaterThan(20);
    }
    expect(await formulas.nth(1).textContent()).toMatch(/100×\d\d,\d{3}\.\d/);
  });

  test('the reader sees a number that differs from its working, and one without', async () => {
    const { page } = opened;
    const key = 'ginning/turnout';
    expect(await mismatches(page, [key])).toEqual([]);
    await openNumber(page, key).evaluate((number) => {
      number.textContent = '99.9%';
    });
    expect((await mismatches(page, [key])).map((each) => each.printed)).toEqual(['99.9%']);
    expect(await mismatches(page, ['ginning/nothing'])).toHaveLength(1);
    await page.evaluate(() => document.querySelector('.seed-panel td')!.append('12.5 lb'));
    expect(await closedNumbers(page)).toEqual(['12.5 lb']);
  });
});

test('nothing of the workings is fetched before one is opened', async () => {
  const fetched: string[] = [];
  const { page, finish } = await openStation('ginning');
  page.on('request', (request) => fetched.push(request.url()));
  await page.waitForTimeout(500);
  expect(fetched.filter((url) => /working/.test(url))).toEqual([]);
  await openNumber(page, 'ginning/turnout').click();
  await panel(page).locator('.working-result').waitFor();
  expect(fetched.filter((url) => /working-text/.test(url))).toHaveLength(1);
  expect(fetched.filter((url) => /working-words/.test(url))).toHaveLength(1);
  await finish();
});

describe.each([
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
  { width: 320, height: 568 },
])('at $width x $height', (size) => {
  const places = [
    ['a formula', 'spinning', 'spinning/tenacity'],
    ['a procedure', 'boll', 'boll/lintPerBoll'],
    ['a number of a wide table', 'classing', 'bale/1/value'],
  ] as const;
  // The narrowest page is the hardest; the others take one each, and all in the long run.
  const tried = places.filter((_, at) => long || size.width === 320 || at === (size.width === 390 ? 0 : 2));
  test('an open working holds the accessibility rules and nothing scrolls sideways', async () => {
    const { page, axe, finish } = await openStation(tried[0]![1], 'coastal-plain', size);
    for (const [what, station, key] of tried) {
      await goTo(page, station);
      await openNumber(page, key).click();
      await panel(page).locator('.working-result').waitFor();
      expect(await axe(), what).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide, what).toBeLessThanOrEqual(0);
      const inView = await panel(page).evaluate((each) => {
        const { left, right } = each.getBoundingClientRect();
        const around = (each.closest('.wide-table') ?? document.documentElement).getBoundingClientRect();
        return left >= around.left - 1 && right <= around.right + 1;
      });
      expect(inView, what).toBe(true);
    }
    await finish();
  });
});

test('every number is a target of 24 px at least', async () => {
  const { page, finish } = await openStation('boll', 'coastal-plain', { width: 390, height: 844 });
  for (const station of long ? ['boll', 'ginning', 'classing'] : ['classing']) {
    await goTo(page, station);
    await numberKeys(page);
    const small = await page.evaluate(() =>
      // Those within a sentence are its words: WCAG 2.2, 2.5.8, excepts targets in a line of text.
      [...document.querySelectorAll<HTMLElement>('.working-number:not(.seen-lines > p *)')].flatMap((number) => {
        const { width, height } = number.getBoundingClientRect();
        return width < 24 || height < 24 ? [`${number.dataset.working}: ${width} x ${height}`] : [];
      }),
    );
    expect(small, station).toEqual([]);
  }
  await finish();
});

test('on paper an open working stands whole, without its buttons', async () => {
  // A page of Letter or A4 less its margins is about 690 CSS pixels wide.
  const { page, finish } = await openStation('spinning', 'coastal-plain', { width: 690, height: 960 });
  await openNumber(page, 'spinning/tenacity').click();
  await panel(page).locator('.working-result').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await panel(page).isVisible()).toBe(true);
  expect(await panel(page).locator('.working-close').isVisible()).toBe(false);
  const cut = await panel(page)
    .locator('.working-formula')
    .evaluateAll((all) => all.filter((each) => each.scrollWidth > each.clientWidth + 1).length);
  expect(cut).toBe(0);
  await finish();
});
