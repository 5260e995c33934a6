import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { encodePlan } from '../../src/teach/plan/plan-link.ts';
import { showSteps } from '../../src/teach/show/show-steps.ts';
import { everyPlan } from '../teach/plan/any-plan.ts';
import { openPage, useBrowser } from './browser.ts';

useBrowser();

const isLong = Boolean(process.env.SEAMFIELD_LONG);
const patience = isLong ? 3_600_000 : 120_000;
/** A plan for each language, which hold every kind of stop between them; in the long run all for both. */
const few = ['30 minutes, guild, pound', '45 minutes, adults, staple'];
const plans = everyPlan.filter(({ name }) => isLong || few.includes(name));
const addressOf = (plan: (typeof plans)[number]['plan'], page = 'show') => `#/teach/${page}?${encodePlan(plan)}`;

/** The wall is ready: its step's answers are worked out. */
const ready = (page: Page) =>
  page.waitForFunction(
    () => document.querySelector('.show-step') && !document.querySelector('.show-step [role=status]'),
  );

/** What a step does against the projector's rules, in words: scroll bars, the outer 3 %, letters under 4 %, key numbers under 6 %. */
const faultsOfStep = (page: Page) =>
  page.evaluate(() => {
    const faults: string[] = [];
    const { innerWidth: wide, innerHeight: tall } = window;
    const root = document.documentElement;
    if (root.scrollHeight > tall || root.scrollWidth > wide) faults.push('the page scrolls');
    const step = document.querySelector('.show-step')!;
    const room = step.getBoundingClientRect();
    for (const element of document.querySelectorAll<HTMLElement>('.show *:not(svg, svg *, .scene-words *)')) {
      const box = element.getBoundingClientRect();
      const name = `${element.tagName} ${element.className}: ${element.textContent?.slice(0, 40)}`;
      if (box.width === 0 || element.closest('.unseen, .ruler input')) continue;
      if (box.left < 0.03 * wide || box.right > 0.97 * wide || box.top < 0.03 * tall || box.bottom > 0.97 * tall)
        faults.push(`in the rim: ${name}`);
      if (step.contains(element) && (box.top < room.top - 1 || box.bottom > room.bottom + 1))
        faults.push(`out of the step: ${name}`);
      const hasText = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
      const px = Number.parseFloat(getComputedStyle(element).fontSize);
      if (hasText && px < 0.04 * tall) faults.push(`${px} px: ${name}`);
      if (element.matches('.show-number, .show-answers dd, .show-bar b') && px < 0.06 * tall)
        faults.push(`key number of ${px} px: ${name}`);
    }
    return faults;
  });

const sizes = [
  [1024, 768],
  [1920, 1080],
] as const;

const languages = ['en-US', 'es-MX'];

test.each(languages)(
  'every step on the wall fits without a scroll bar, with large letters and a free rim, %s',
  async (language) => {
    for (const [at, { name, plan }] of plans.entries()) {
      if (!isLong && at !== languages.indexOf(language)) continue;
      for (const [width, height] of isLong ? sizes : [sizes[at % 2]!]) {
        const { page, axe, finish } = await openPage({
          path: addressOf(plan),
          width,
          height,
          language,
          reducedMotion: true,
        });
        const steps = showSteps(plan);
        for (const [i, { phase }] of steps.entries()) {
          await ready(page);
          await page.waitForFunction(
            (n) => document.querySelector('.show-head')!.textContent!.includes(`${n} `),
            i + 1,
          );
          expect(await faultsOfStep(page), `${name}, step ${i}, ${width}`).toEqual([]);
          if (!isLong && phase === 'see' && i < 8) expect(await axe()).toEqual([]);
          await page.keyboard.press(i % 2 === 0 ? 'PageDown' : 'ArrowRight');
        }
        await finish();
      }
    }
  },
  patience,
);

test(
  'two windows turn together by keyboard and survive a reload; the clock, the blank, the ends, the way back; a refused window is said',
  async () => {
    const { plan } = plans[0]!;
    const steps = showSteps(plan);
    const { page, axe, finish } = await openPage({
      path: addressOf(plan),
      width: 1024,
      height: 768,
      reducedMotion: true,
    });
    await ready(page);
    const placeOf = (where: Page) =>
      where.evaluate(() => /\d+/.exec(document.querySelector('.show-head, .notes-now')!.textContent!)![0]);
    await page.evaluate(() => {
      const open = window.open;
      window.open = () => {
        window.open = open;
        return null;
      };
    });
    await page.getByRole('button', { name: 'Notes' }).press('Enter');
    expect(await page.getByRole('alert').getByRole('link').getAttribute('href')).toContain('#/teach/notes?');
    const opened = page.waitForEvent('popup');
    await page.getByRole('button', { name: 'Notes' }).press('Enter');
    const notes = await opened;
    await notes.locator('.notes-now').waitFor();
    await page.keyboard.press('PageDown');
    await expect.poll(() => placeOf(notes)).toBe('2');
    await notes.keyboard.press('ArrowRight');
    await expect.poll(() => placeOf(page)).toBe('3');
    await expect.poll(() => notes.locator('.notes-spent').last().innerText()).toMatch(/^0:0[1-9]$/);

    await notes.reload();
    await notes.locator('.notes-now').waitFor();
    expect(await placeOf(notes)).toBe('3');
    await page.reload();
    await ready(page);
    expect(await placeOf(page)).toBe('3');
    await page.keyboard.press('Space');
    await expect.poll(() => placeOf(notes)).toBe('4');

    await notes.keyboard.press('b');
    await page.locator('.show[data-blank]').waitFor();
    await page.keyboard.press('.');
    await notes.getByText('The screen is blank.').waitFor({ state: 'detached' });
    await notes.keyboard.press('p');
    await notes.getByText('The clock stands.').waitFor();
    const stood = await notes.locator('.notes-spent').allInnerTexts();
    await page.keyboard.press('End');
    await expect.poll(() => placeOf(notes)).toBe(String(steps.length));
    await notes.getByText('This is the last step.').waitFor();
    expect((await notes.locator('.notes-spent').allInnerTexts()).at(-1)).toBe(stood.at(-1));
    const findings = await notes.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(findings).toBeLessThanOrEqual(0);
    await notes.keyboard.press('Home');
    await expect.poll(() => placeOf(page)).toBe('1');
    // Junk under the key is no state.
    await page.evaluate(() => localStorage.setItem('seamfield.show.1', '{"step":99}'));
    await notes.close();
    await page.reload();
    await ready(page);
    expect(await placeOf(page)).toBe('1');
    await page.evaluate(
      (hash) => {
        location.hash = hash;
      },
      addressOf(plan, 'notes'),
    );
    await page.locator('.notes-now').waitFor();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageDown');
    expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 320, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1024, height: 768 });
    await page.evaluate((hash) => {
      location.hash = hash;
    }, addressOf(plan));
    await ready(page);
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('projector');
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'Show it to the class' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('day');
    await finish();
  },
  patience,
);
