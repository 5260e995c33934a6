import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { stationIds } from '../../src/model/station.ts';
import { long } from '../laws/runs.ts';
import { openPage, settled, useBrowser } from './browser.ts';

useBrowser();

/** The closing error written under the ledger, as a number: '2.3 × 10⁻¹⁶' gives 2.3e-16. */
async function closingError(page: Page): Promise<number> {
  const text = await page.locator('.closing').first().innerText();
  const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
  const found = /([\d.]+) × 10(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/.exec(text);
  if (!found) return 0;
  const exponent = [...found[3]!].map((sign) => raised.indexOf(sign)).join('');
  return Number(found[1]) * 10 ** (Number(exponent) * (found[2] ? -1 : 1));
}

const played = [
  {
    language: 'en-US',
    first: 'Follow a season',
    byStage: 'By stage',
    finished: 'The quilt is finished',
    leftOver: /0\.0.lb left over/,
  },
  {
    language: 'es-MX',
    first: 'Seguir una temporada',
    byStage: 'Por etapa',
    finished: 'El quilt está terminado',
    leftOver: /sobran 0\.0.lb/,
  },
] as const;
// Playing takes its time: one language in every run, both in the long one.
test.each(long ? played : played.slice(1))(
  'in $language a season plays at speed from planting to the sewing table, and its ledger closes on the screen',
  async ({ language, first, byStage, finished, leftOver }) => {
    const { page, axe, finish } = await openPage({ language, width: 800, height: 600 });
    await page.getByRole('link', { name: first }).click();
    await page.getByRole('radio', { name: byStage }).press('Space');
    await page.getByText(finished).first().waitFor({ timeout: 60_000 });
    expect(await axe()).toEqual([]);
    expect(await page.locator('main.season').getAttribute('data-station')).toBe('sewing');
    expect(await page.locator('.closing').first().innerText()).toMatch(leftOver);
    expect(await closingError(page)).toBeLessThan(1e-9);
    expect(await page.locator('.quilt-map button').count()).toBe(12);
    await finish();
  },
  90_000,
);

test('every station answers at its own address, closes its ledger and holds the accessibility rules', async () => {
  const { page, axe, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  for (const station of stationIds) {
    await page.evaluate((to) => {
      location.hash = `#/season/${to}`;
    }, station);
    await page.locator(`main[data-station=${station}]`).waitFor();
    await page.locator('.scene svg').waitFor();
    expect(await closingErrorOrNone(page), station).toBeLessThan(1e-9);
    // Every third one in each run, all of them in the long one.
    if (long || stationIds.indexOf(station) % 3 === 0) expect(await axe(), station).toEqual([]);
  }
  await finish();
}, 300_000);

const closingErrorOrNone = async (page: Page) =>
  (await page.locator('.closing').count()) > 0 ? closingError(page) : 0;

// The longer language; both in the long run.
test.each(long ? ['en-US', 'es-US'] : ['es-US'])(
  'nothing scrolls sideways at any size, in %s',
  async (language) => {
    const { page, finish } = await openPage({ path: '', language, reducedMotion: true });
    await page.locator('main').waitFor();
    for (const hash of ['', '#/season/planting', '#/season/cleaning', '#/season/classing']) {
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
      if (hash !== '') await page.locator(`main[data-station=${hash.split('/')[2]}]`).waitFor();
      for (const [width, height] of [
        [320, 568],
        [390, 844],
        [1024, 768],
        [1080, 1920],
      ] as const) {
        await page.setViewportSize({ width, height });
        await settled(page);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(wide, `${hash} at ${width}`).toBeLessThanOrEqual(0);
      }
    }
    await finish();
  },
  60_000,
);

test('a decision shows at once what it changed, against the choice before', async () => {
  const { page, finish } = await openPage({ path: '#/season/ginning', reducedMotion: true });
  const changed = page.locator('.twin-changed');
  await changed.getByText('Turnout').waitFor();
  expect(await changed.getByText('Before').count()).toBe(0);
  await page.getByRole('radio', { name: '3', exact: true }).press('Space');
  await changed.getByText('Before').waitFor();
  expect(await changed.locator('tr.changed').count()).toBeGreaterThan(1);
  await page.waitForURL(/set=/);
  await finish();
});

test('a link brings back the same numbers', async () => {
  const { page, finish } = await openPage({ path: '#/season/ginning', reducedMotion: true });
  await page.getByRole('radio', { name: '0', exact: true }).press('Space');
  await page.locator('.twin-changed tr.changed').first().waitFor();
  // The ledger comes in its turn.
  await page.locator('[aria-busy=true]').first().waitFor({ state: 'detached' });
  await page.waitForURL(/set=/);
  const numbers = await page.locator('.ledger').innerText();
  const other = await openPage({ path: new URL(page.url()).hash, reducedMotion: true });
  await other.page.locator('.ledger').waitFor();
  expect(await other.page.locator('.ledger').innerText()).toBe(numbers);
  await other.finish();
  await finish();
});

test('a yarn too fine is refused in words, and a coarser one passes', async () => {
  const { page, axe, finish } = await openPage({ path: '#/season/spinning', reducedMotion: true });
  const slider = page.getByRole('slider', { name: 'Yarn number' });
  await slider.fill('120');
  await page.getByRole('button', { name: 'Sew this block in' }).click();
  await page.getByRole('alert').getByText('too fine').waitFor();
  expect(await axe()).toEqual([]);
  expect(await page.locator('main.season').getAttribute('data-station')).toBe('spinning');
  await slider.fill('30');
  await page.getByRole('button', { name: 'Sew this block in' }).click();
  await page.locator('main[data-station=weaving]').waitFor();
  await finish();
});

test('by keyboard alone: a station can be decided, sewn in and gone back to', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  await page.locator('main.season').waitFor();
  await page.getByRole('slider', { name: 'Row width' }).focus();
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('button', { name: 'Sew this block in' }).focus();
  await page.keyboard.press('Enter');
  await page.locator('main[data-station=bloom]').waitFor();
  await page.getByRole('button', { name: /Planting/ }).focus();
  await page.keyboard.press('Enter');
  await page.locator('main[data-station=planting]').waitFor();
  await finish();
});

test('a double click sews one block in, not two', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  await page.getByRole('button', { name: 'Sew this block in' }).dblclick();
  await page.locator('main[data-station=bloom]').waitFor();
  await page.waitForTimeout(700);
  expect(await page.locator('main.season').getAttribute('data-station')).toBe('bloom');
  await finish();
});

test('Back goes to the station before, and a reload keeps the blocks that were sewn', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  for (const next of ['bloom', 'boll']) {
    await page.getByRole('button', { name: 'Sew this block in' }).click();
    await page.locator(`main[data-station=${next}]`).waitFor();
    await page.waitForTimeout(600);
  }
  await page.goBack();
  await page.locator('main[data-station=bloom]').waitFor();
  expect(await page.getByRole('button', { name: 'Bloom: you are here' }).count()).toBe(1);
  await page.reload();
  await page.locator('main[data-station=bloom]').waitFor();
  await page.getByRole('button', { name: /^Boll/ }).click();
  await page.locator('main[data-station=boll]').waitFor();
  await finish();
});

test('the menu leads back to the season that is open, with its station, its choices and its blocks', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  const menu = page.getByRole('navigation', { name: 'Pages' });
  await page.getByRole('slider', { name: 'Row width' }).focus();
  await page.keyboard.press('ArrowLeft');
  for (const next of ['bloom', 'boll']) {
    await page.getByRole('button', { name: 'Sew this block in' }).click();
    await page.locator(`main[data-station=${next}]`).waitFor();
    await page.waitForTimeout(600);
  }
  await page.getByRole('button', { name: /^Bloom/ }).click();
  await page.locator('main[data-station=bloom]').waitFor();
  // The address follows what is painted.
  await page.waitForURL(/bloom.*set=/);
  const address = page.url();
  await menu.getByRole('link', { name: 'Lessons' }).click();
  await page.locator('main.season').waitFor({ state: 'detached' });
  await menu.getByRole('link', { name: 'Season' }).click();
  await page.locator('main[data-station=bloom]').waitFor();
  expect(page.url()).toBe(address);
  await page.getByRole('button', { name: /^Boll/ }).click();
  await page.locator('main[data-station=boll]').waitFor();
  // From within the season it leads nowhere else.
  await menu.getByRole('link', { name: 'Season' }).click();
  await page.waitForTimeout(300);
  expect(await page.locator('main.season').getAttribute('data-station')).toBe('boll');
  await finish();
});

test('a slider turned through many steps is compared with where it began', async () => {
  const { page, finish } = await openPage({ path: '#/season/spinning', reducedMotion: true });
  const limit = page.locator('.twin-changed tr', { hasText: 'Unevenness' });
  const began = await limit.locator('.after').innerText();
  const slider = page.getByRole('slider', { name: 'Yarn number' });
  for (const count of ['31', '32', '33']) await slider.fill(count);
  await page.locator('.twin-changed tr.changed').first().waitFor();
  expect(await limit.locator('td').first().innerText()).toBe(began);
  await finish();
});

test('junk in the address is ignored with a word, never a blank page', async () => {
  const { page, finish } = await openPage({ path: '#/nowhere/at/all', reducedMotion: true });
  const start = page.url().split('#')[0]!;
  for (const junk of [
    '#/nowhere/at/all',
    '#/season/moon',
    '#/season/ginning?v=9&farm=%F0%9F%90%84&seed=banana&set=zzzzzz',
    `#/season/${'x'.repeat(3000)}?${'y'.repeat(3000)}`,
  ]) {
    // Opened afresh each time: another hash alone would only be a move within the page.
    await page.goto('about:blank');
    await page.goto(`${start}${junk}`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.locator('.address-note').first().waitFor();
  }
  await finish();
});

/** A daily record of a made-up warm year. */
function record(header: string, line: (date: string, month: number) => string): string {
  const lines = [header];
  for (let day = 0; day < 365; day++) {
    const date = new Date(Date.UTC(2019, 0, 1 + day));
    lines.push(line(date.toISOString().slice(0, 10), date.getUTCMonth()));
  }
  return lines.join('\n');
}
const asFile = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

test('a daily weather record drives the season; a bad one is refused in its place and leaves the season as it was', async () => {
  const { page, finish } = await openPage({ path: '#/season/planting', reducedMotion: true });
  const ledger = page.locator('.count-table');
  await ledger.waitFor();
  const before = await page.locator('.twin-changed').innerText();
  const picker = page.locator('input[type=file]');
  await picker.setInputFiles(
    asFile(
      'no-high.csv',
      record('DATE,TMIN,PRCP', (date) => `${date},10,0`),
    ),
  );
  await page.getByRole('alert').getByText('TMAX').first().waitFor();
  expect(await page.locator('.twin-changed').innerText()).toBe(before);
  const warm = record(
    'prcp,tmin,TMAX,Date',
    (date, month) => `2,${month > 3 && month < 10 ? 22 : 8},${month > 3 && month < 10 ? 34 : 18},${date}`,
  );
  await picker.setInputFiles(asFile('warm.csv', warm));
  await page.getByText('warm.csv').first().waitFor();
  expect(await page.getByRole('alert').count()).toBe(0);
  await expect.poll(() => page.locator('.twin-changed').innerText()).not.toBe(before);
  await finish();
});

test('with motion wished away the picture is still and no renderer is fetched', async () => {
  const fetched: string[] = [];
  const { page, finish } = await openPage({ path: '#/season/ginning', reducedMotion: true });
  page.on('request', (request) => fetched.push(request.url()));
  await page.locator('.scene svg').waitFor();
  await page.waitForTimeout(800);
  expect(await page.locator('.scene canvas').count()).toBe(0);
  await finish();
});

test('with motion the living picture takes its place, drawn in a canvas, and can be paused', async () => {
  const { page, finish } = await openPage({ path: '#/season/ginning', width: 800, height: 600 });
  const canvas = page.locator('.scene canvas').first();
  await canvas.waitFor({ timeout: 15_000 });
  const picture = () => page.locator('.scene').screenshot();
  const one = await picture();
  await expect.poll(async () => (await picture()).equals(one)).toBe(false);
  await page
    .getByRole('button', { name: 'Play' })
    .or(page.getByRole('button', { name: 'Pause' }))
    .first()
    .click();
  await finish();
}, 30_000);

test('in its other states too: living, on the projector’s colors, and with a crop that never opened', async () => {
  const { page, axe, finish } = await openPage({ path: '#/season/ginning', width: 1024 });
  await page.locator('.scene canvas').first().waitFor({ timeout: 30_000 });
  expect(await axe(), 'living').toEqual([]);
  await page.getByRole('button', { name: 'Projector' }).click();
  await page.waitForTimeout(500);
  for (const station of long ? stationIds : (['bloom', 'classing'] as const)) {
    await page.evaluate((to) => {
      location.hash = `#/season/${to}`;
    }, station);
    await page.locator(`main[data-station=${station}]`).waitFor();
    await page.waitForTimeout(500);
    // Other colors: contrast is looked at anew.
    expect(await axe(true), `${station} on the projector`).toEqual([]);
  }
  await finish();

  const failed = await openPage({ path: '#/season/planting?v=1&farm=high-plains-dryland&seed=3', reducedMotion: true });
  await failed.page.getByRole('slider', { name: 'Planting date' }).fill('191');
  await failed.page.waitForURL(/set=/);
  await failed.page.evaluate(() => {
    location.hash = location.hash.replace('planting', 'boll');
  });
  await failed.page.locator('.stop-note').waitFor();
  expect(await failed.axe(), 'stopped').toEqual([]);
  await failed.finish();
}, 120_000);
