import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { kiosk as english } from '../../src/language/messages/en/kiosk.ts';
import { kiosk as spanish } from '../../src/language/messages/es/kiosk.ts';
import { stationIds } from '../../src/model/station.ts';
import { capitalShare } from '../../src/pages/kiosk/kiosk-sizes.ts';
import { contrastRatio } from '../../src/style/inks.ts';
import { useBrowser } from './browser.ts';
import { inAttract, keep, openKiosk, walkKiosk } from './kiosk-of-page.ts';

useBrowser();
const patience = 400_000;
const isLong = process.env.SEAMFIELD_LONG === '1';

/** What stands on a screen: words, keys and letters, px; and whatever sticks out of its place. */
const measured = (page: Page) =>
  page.evaluate(() => {
    const seen = [...document.querySelectorAll<HTMLElement>('.kiosk *')].filter((each) => each.checkVisibility());
    /** The cloth under a word: its own patch, the band, the night side, or the page. */
    const clothUnder = (each: Element) => {
      const patch = each.closest('.patch');
      const style = getComputedStyle(patch ?? each);
      const name = patch
        ? '--fill'
        : each.closest('.kiosk-band')
          ? '--ground-deep'
          : each.closest('.on-night')
            ? '--indigo'
            : '--ground';
      return style.getPropertyValue(name).trim();
    };
    const own = (each: Element) => [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
    const rect = (each: Element) => {
      const { x, y, width, height } = each.getBoundingClientRect();
      return { x, y, width, height };
    };
    const hex = (color: string) =>
      `#${(color.match(/\d+/g) ?? [])
        .slice(0, 3)
        .map((part) => Number(part).toString(16).padStart(2, '0'))
        .join('')}`;
    const texts = seen.filter((each) => own(each) && !each.closest('svg'));
    return {
      words: texts
        .map((each) => each.textContent)
        .join(' ')
        .split(/\s+/)
        .filter((word) => /[\p{L}\p{N}]/u.test(word)).length,
      told: [...document.querySelectorAll('.kiosk :is(h1, p)')]
        .map((each) => each.textContent)
        .join(' ')
        .split(/\s+/)
        .filter(Boolean).length,
      letters: texts.map((each) => ({
        text: each.textContent!.slice(0, 30),
        px: Number.parseFloat(getComputedStyle(each).fontSize),
        ink: hex(getComputedStyle(each).color),
        cloth: clothUnder(each),
      })),
      keys: [...document.querySelectorAll('.kiosk button')].map(rect),
      drawnWords: document.querySelectorAll('.kiosk svg text').length,
      band: rect(document.querySelector('.kiosk-band')!),
      out: texts
        .filter((each) => {
          const { left, right, top, bottom } = each.getBoundingClientRect();
          const place = each.closest('.kiosk-say, .kiosk-key, .kiosk-boll')?.getBoundingClientRect();
          const beyond = place && (top < place.top - 1 || bottom > place.bottom + 1 || right > place.right + 1);
          return (
            left < 0 ||
            top < 0 ||
            right > innerWidth + 1 ||
            bottom > innerHeight + 1 ||
            beyond ||
            each.scrollWidth > each.clientWidth + 1
          );
        })
        .map((each) => each.textContent!.slice(0, 40)),
    };
  });

const gapBetween = (one: DOMRect | Rect, other: DOMRect | Rect) =>
  Math.hypot(
    Math.max(0, one.x - other.x - other.width, other.x - one.x - one.width),
    Math.max(0, one.y - other.y - other.height, other.y - one.y - one.height),
  );
interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const said = { en: english, es: spanish };
const all = stationIds.map((_, place) => place);
/** Stations to look at: all of them in the long run; else the wordiest, and more of them on the smallest screen. */
function stationsToWalk(language: 'en' | 'es', mmPerPx: number): readonly number[] {
  if (isLong) return all;
  const letters = (place: number) => JSON.stringify(said[language].stations[stationIds[place]!]).length;
  return [...all].sort((one, other) => letters(other) - letters(one)).slice(0, mmPerPx < 0.2 ? 2 : 1);
}

// Three displays a kiosk is built from, either way up. 36 CFR 1194, 402.4: capitals of 3/16 in; Colle and Hiszem 2004: keys of 20 mm.
test.each([
  ['10.1 in', 0.17, 1280, 800],
  ['21.5 in', 0.248, 1920, 1080],
  ['32 in', 0.369, 1920, 1080],
] as const)(
  '%s, both ways up, both languages: 60 words a screen and 25 at a stop, keys of 20 mm 3 mm apart, capitals of 4.8 mm, all within reach, nothing cut off',
  async (_, mmPerPx, long, short) => {
    const { page, finish } = await openKiosk({ reducedMotion: true, width: long, height: short });
    const ways = (['en', 'es'] as const).flatMap((language) => [
      { language, width: long, height: short },
      { language, width: short, height: long },
    ]);
    // All four on the smallest screen, where least fits; two that differ in both on the others, and all in the long run.
    for (const { language, width, height } of ways.filter((_, i) => isLong || mmPerPx < 0.2 || i % 3 === 0)) {
      await page.setViewportSize({ width, height });
      await keep(page, { mmPerPx, languages: language === 'en' ? ['en', 'es'] : ['es', 'en'] });
      await page.reload();
      await inAttract(page);
      const faults: string[] = [];
      await walkKiosk(page, stationsToWalk(language, mmPerPx), async (screen) => {
        const at = `${width}x${height} ${language} ${screen}`;
        const seen = await measured(page);
        const fault = (wrong: boolean, what: string) => wrong && faults.push(`${at}: ${what}`);
        fault(seen.words > 60, `${seen.words} words`);
        fault(screen.startsWith('stop') && seen.told > 25, `${seen.told} words at a stop`);
        fault(seen.drawnWords > 0, 'words in a drawing');
        for (const text of seen.out) fault(true, `cut off: ${text}`);
        for (const { text, px, ink, cloth } of seen.letters) {
          fault(px * capitalShare * mmPerPx < 4.76, `${text}: ${(px * capitalShare * mmPerPx).toFixed(1)} mm`);
          fault(contrastRatio(ink, cloth) < 4.5, `${text}: ${ink} on ${cloth}`);
        }
        seen.keys.forEach((key, i) => {
          fault(
            Math.min(key.width, key.height) * mmPerPx < 20,
            `key ${i} of ${(Math.min(key.width, key.height) * mmPerPx).toFixed(1)} mm`,
          );
          fault(key.y < seen.band.y, `key ${i} above the band`);
          for (const other of seen.keys.slice(i + 1))
            fault(
              gapBetween(key, other) * mmPerPx < 3,
              `keys ${i} apart by ${(gapBetween(key, other) * mmPerPx).toFixed(1)} mm`,
            );
        });
        // The lower half of an upright screen; a screen that lies is no taller than an arm's reach.
        fault(height > width && seen.band.y < height / 2, `band from ${Math.round(seen.band.y)}`);
      });
      expect(faults).toEqual([]);
    }
    await finish();
  },
  patience,
);
