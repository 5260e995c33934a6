import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openPage, settled, useBrowser } from './browser.ts';
import { serveCopy, siteFolder } from './served-copy.mjs';

useBrowser();

/** An open page of every kind; all of them begin with one heading. */
const routes = [
  '#/',
  '#/season/planting',
  '#/season/ginning?v=1&farm=coastal-plain&seed=7',
  '#/season/sewing',
  '#/bench',
  '#/trace',
  '#/lessons',
  '#/lessons/staple-length',
  '#/glossary',
  '#/authors',
  '#/teach',
  '#/teach/class',
  '#/teach/worksheets',
  '#/ask',
  '#/compare',
  '#/farm',
  '#/card',
  '#/sources',
  '#/model',
  '#/kiosk/setup',
  '#/kiosk/sheet',
  '#/kiosk',
  '#/',
];

/** Waits until the copy on the device is complete and serves the page. */
const kept = (page: Page) =>
  page.waitForFunction(
    async () =>
      (await navigator.serviceWorker.ready).active?.state === 'activated' && navigator.serviceWorker.controller,
    null,
    { timeout: 45_000 },
  );

/** The title of the document as it was served, whatever the page has made of it since. */
const servedTitle = (page: Page) =>
  page.evaluate(async () => /<title>([^<]*)/.exec(await (await fetch('./index.html')).text())?.[1]);

test('the copy for use offline holds every file, none over 2 MiB and 2.5 MB gzipped at most', () => {
  const worker = readFileSync(join(siteFolder, 'sw.js'), 'utf8');
  const keptFiles = new Set([...worker.matchAll(/url:"([^"]+)"/g)].map(([, url]) => url));
  const files = readdirSync(siteFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name));
  const names = files.map((file) => relative(siteFolder, file).replaceAll('\\', '/'));
  expect(names.length).toBeGreaterThan(200);
  expect([...keptFiles].sort()).toEqual(names.sort());
  expect(files.filter((file) => statSync(file).size > 2 * 1024 * 1024)).toEqual([]);
  const total = files.reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0);
  expect(total).toBeLessThan(2_500_000);
  // The worker is one file, and fetches from nowhere else.
  expect(/importScripts\(/.test(worker)).toBe(false);
});

test('from a folder of a shared host: once kept, every page opens with the server gone, by a link, anew and in Spanish', async () => {
  const copy = await serveCopy('some/where/');
  const { page, faults, finish } = await openPage({ site: copy.site, serviceWorkers: true, reducedMotion: true });
  await kept(page);
  await copy.takeAway();
  for (const route of routes) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, route);
    await page.locator('main h1').first().waitFor({ timeout: 20_000 });
    await settled(page);
  }
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await page.goto(`${copy.site}?from=a-link#/season/ginning`);
  await page.locator('.scene canvas').first().waitFor({ timeout: 20_000 });
  await page.getByRole('button', { name: 'Español' }).press('Space');
  await page.locator('html[lang^=es]').waitFor();
  await page.goto(`${copy.site}lessons/es/staple-length.html`);
  expect(await page.locator('h1').count()).toBe(1);
  expect(faults).toEqual([]);
  await finish();
  await copy.remove();
}, 120_000);

test('a newer version waits until it is asked for; the season that is open stays', async () => {
  const copy = await serveCopy();
  const { page, finish } = await openPage({
    site: copy.site,
    serviceWorkers: true,
    reducedMotion: true,
    path: '#/season/module?v=1&farm=coastal-plain&seed=7',
  });
  await kept(page);
  const before = await servedTitle(page);
  await page.evaluate(() => Object.assign(globalThis, { sameDocument: true }));
  copy.nextVersion('The next version');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const button = page.getByRole('button', { name: 'Load the new version' });
  await button.waitFor();
  expect(await servedTitle(page)).toBe(before);
  expect(await page.evaluate(() => 'sameDocument' in globalThis)).toBe(true);
  const address = page.url();
  await Promise.all([page.waitForEvent('load'), button.press('Space')]);
  expect(await page.evaluate(() => 'sameDocument' in globalThis)).toBe(false);
  expect(await servedTitle(page)).toBe('The next version');
  expect(page.url()).toBe(address);
  expect(await button.count()).toBe(0);
  await finish();
  await copy.remove();
}, 90_000);
