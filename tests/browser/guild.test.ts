import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { guildTalk } from '../../src/teach/guild/talk.ts';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const isLong = Boolean(process.env.SEAMFIELD_LONG);
/** Width and height of a landscape page within its margins of 10 and 9 mm, CSS pixels; US Letter and ISO 216 A4. */
const papers = {
  Letter: { width: Math.floor(((279.4 - 20) / 25.4) * 96), height: Math.floor(((215.9 - 18) / 25.4) * 96) },
  A4: { width: Math.floor(((297 - 20) / 25.4) * 96), height: Math.floor(((210 - 18) / 25.4) * 96) },
} as const;
/** One paper and language; in the long run all of them, and another farm. */
const prints = isLong
  ? (['en-US', 'es-MX'] as const).flatMap((language) =>
      (['Letter', 'A4'] as const).flatMap((paper) =>
        ['', '?v=1&farm=river-bottom&seed=4', '?v=1&farm=long-staple-valley&seed=2'].map((query) => ({
          language,
          paper,
          query,
        })),
      ),
    )
  : [{ language: 'es-MX', paper: 'Letter', query: '' } as const];

/** Pages of a PDF, counted by its page objects (ISO 32000, 7.7.3.3). */
const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

/** What a slide cuts off or lets out, in words; print layout at the paper's own width. */
const clipped = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.guild-slide')].flatMap((slide) => {
      const box = slide.getBoundingClientRect();
      return [...slide.querySelectorAll<HTMLElement>('*:not(svg *, .unseen)')]
        .filter((element) => {
          const { right, bottom } = element.getBoundingClientRect();
          const { clientWidth, scrollWidth } = element;
          return right > box.right + 1 || bottom > box.bottom + 1 || (clientWidth > 0 && scrollWidth > clientWidth + 1);
        })
        .map(
          (element) =>
            `${slide.getAttribute('aria-labelledby')}: ${element.tagName} ${element.textContent?.slice(0, 40)}`,
        );
    }),
  );

test.each(prints)(
  'the guild evening prints a slide a page with nothing clipped, $language, $paper $query',
  async ({ language, paper, query }) => {
    const { page, axe, finish } = await openPage({ language, path: `#/teach/guild${query}` });
    await page.locator('.guild-slide').last().waitFor();
    expect(await page.locator('.guild-slide').count()).toBe(guildTalk.length);
    expect(await page.locator('.guild-page').innerText()).not.toMatch(/[{}]|undefined|NaN/);
    if (!isLong) expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 320, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    const { width, height } = papers[paper];
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ media: 'print' });
    expect(await clipped(page)).toEqual([]);
    const tallest = await page.evaluate(() =>
      Math.max(...[...document.querySelectorAll('.guild-slide')].map((slide) => slide.getBoundingClientRect().height)),
    );
    expect(tallest).toBeLessThanOrEqual(height);
    expect(pagesOf(await page.pdf({ format: paper, landscape: true }))).toBe(guildTalk.length);
    await finish();
  },
);
