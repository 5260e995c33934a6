import type { Page } from 'playwright-core';

/** A number of the page whose working says something else, or nothing. */
export interface Mismatch {
  readonly key: string;
  readonly printed: string;
  readonly worked: string;
}

/** The keys of all numbers of the page that open a working; what is folded away is unfolded first. */
export const numberKeys = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const folded of document.querySelectorAll('main details')) (folded as HTMLDetailsElement).open = true;
    return [...document.querySelectorAll<HTMLElement>('main .working-number')].map(
      (each) => each.dataset.working ?? '',
    );
  });

/** Opens the working of each number, one after the other, and sets its result beside the number, letter for letter. */
export const mismatches = (page: Page, keys: readonly string[]): Promise<Mismatch[]> =>
  page.evaluate(async (asked) => {
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    const found: Mismatch[] = [];
    for (const key of asked) {
      const number = document.querySelector<HTMLElement>(`[data-working="${CSS.escape(key)}"]`);
      const printed = number?.textContent ?? '';
      number?.click();
      const result = () => document.querySelector('#working-panel .working-result');
      const late = performance.now() + 5000;
      while (!result() && performance.now() < late) await frame();
      const lines = document.querySelectorAll('#working-panel tbody tr').length;
      const worked = lines > 0 ? (result()?.textContent ?? '') : '';
      if (printed === '' || worked !== printed) found.push({ key, printed, worked });
      number?.click();
      while (result() && performance.now() < late) await frame();
    }
    return found;
  }, keys);

/** Where numbers of the season stand. */
const places = [
  '.what-changed tbody td',
  '.ledger td',
  '.ledger dd',
  '.ledger b',
  '.count-table td',
  '.bales-panel td',
  '.money-panel td',
  '.seed-panel td',
  '.twin-table td',
  '.practice-panel .ours',
  '.finished-quilt p',
  '.seen-lines > p',
  '.seen-table td',
  '.part-journey td',
  '.always-closing',
  '.doubt-strips td.number',
  '.doubt-ranking td.number',
  '.difference-phrases li',
  '.downstream-line',
  '.choice-result',
  '.outcomes-beside td.number',
  '.parts-table td.number',
  '.ask-numbers td.number',
  '.ask-seasons td.number',
].join(', ');

/** Numbers that stand among the season's figures and open nothing. */
export const closedNumbers = (page: Page): Promise<string[]> =>
  page.evaluate(
    (selector) =>
      [...document.querySelectorAll(selector)].flatMap((place) => {
        if (place.closest('.working-panel')) return [];
        const copy = place.cloneNode(true) as Element;
        for (const fine of copy.querySelectorAll('.working-number, .working-panel, .unseen')) fine.remove();
        const left = (copy.textContent ?? '').trim();
        // The year of the hand-cranked gin is a name, not a figure.
        return /\d/.test(left.replace('1793', '')) ? [left] : [];
      }),
    places,
  );

/**
 * What a page says with digits outside the numbers that open a working: pieces of text, but for names, headings, help beside a
 * field, sources and pictures, which `besides` lists as a selector.
 */
export const numbersLeft = (page: Page, besides: string): Promise<string[]> =>
  page.evaluate((selector) => {
    for (const folded of document.querySelectorAll('main details')) (folded as HTMLDetailsElement).open = true;
    const walker = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
    const left: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if (/\d/.test(node.textContent ?? '') && !node.parentElement?.closest(`.working-number, svg, ${selector}`))
        left.push(node.textContent!.trim());
    return left;
  }, besides);
