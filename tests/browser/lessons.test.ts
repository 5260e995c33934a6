import { LinkChecker } from 'linkinator';
import { expect, test } from 'vitest';
import { openPage, siteUrl, useBrowser } from './browser.ts';

useBrowser();

test('a lesson in the app: guess, see, choose a cotton, answer; clean to a program and without sideways scrolling at 320 px', async () => {
  const { page, axe, finish } = await openPage({ path: '#/lessons/staple-length', width: 320, height: 568 });
  await page.getByRole('heading', { level: 1, name: /Staple length/ }).waitFor();
  await page.getByRole('button', { name: 'See what the model counts' }).click();
  await page.getByText('The model:').waitFor();
  await page.getByRole('radio', { name: 'Pima' }).check();
  expect(await page.locator('.lesson-figure figcaption').innerText()).toContain('Pima');
  await page.getByRole('radio', { name: 'The mean of the longer half' }).check();
  await page.getByText('Yes.').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  expect(await axe()).toEqual([]);
  await finish();
});

test('the index leads to a lesson three ways, a term to the glossary, and all are clean to a program', async () => {
  const { page, axe, finish } = await openPage({ path: '#/lessons', language: 'es-MX' });
  await page.getByRole('heading', { level: 1, name: 'Lecciones' }).waitFor();
  for (const path of ['Para una clase', 'En un minuto', 'Para quien hace quilts']) {
    await page.getByRole('radio', { name: path }).check();
    expect(await page.locator('.lesson-entry').count()).toBeGreaterThanOrEqual(2);
  }
  expect(await axe()).toEqual([]);
  await page.goto(siteUrl('#/glossary/boll'));
  await page.locator('#boll dt:focus').waitFor();
  expect(await axe()).toEqual([]);
  await page.goto(siteUrl('#/authors'));
  await page.getByText('LengthArray').first().waitFor();
  expect(await axe()).toEqual([]);
  await finish();
});

test('a lesson without scripts is complete: headings, tables, answers; clean at 320 px; printed on a few pages', async () => {
  const { page, finish } = await openPage({
    path: 'lessons/en/staple-length.html',
    width: 320,
    height: 568,
    javaScriptEnabled: false,
  });
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('Staple length');
  expect(await page.locator('.lesson-figure table tbody tr').count()).toBe(5);
  expect(await page.locator('.lesson-figure svg').count()).toBeGreaterThan(0);
  expect(await page.locator('.num-source').count()).toBeGreaterThan(5);
  const broken = await page
    .locator('.num-source')
    .evaluateAll((links) =>
      links.map((link) => link.getAttribute('href')!).filter((href) => !document.getElementById(href.slice(1))),
    );
  expect(broken).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(320);
  const paper = (await page.pdf({ format: 'Letter' })).toString('latin1');
  expect(paper.match(/\/Type \/Page\b/g)!.length).toBeLessThanOrEqual(5);
  await finish();
  const seen = await openPage({ path: 'lessons/es/one-boll-one-patch.html', width: 320, height: 568 });
  expect(await seen.axe()).toEqual([]);
  await seen.finish();
});

test('every link of the pages without scripts leads somewhere on the site', async () => {
  const { links, passed } = await new LinkChecker().check({
    path: siteUrl('lessons/en/index.html'),
    recurse: true,
    concurrency: 4,
  });
  expect(links.filter(({ state }) => state === 'BROKEN').map(({ url, parent }) => `${parent} -> ${url}`)).toEqual([]);
  expect(links.length).toBeGreaterThanOrEqual(10);
  expect(passed).toBe(true);
});
