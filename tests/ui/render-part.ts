import { type ComponentChild, h, render } from 'preact';
import { act } from 'preact/test-utils';
import type { Language } from '../../src/language/language.ts';
import { loadMessages } from '../../src/language/load-messages.ts';
import type { UnitSystem } from '../../src/language/unit-system.ts';
import { makeWords, WordsContext } from '../../src/language/words.ts';

/** Draws a part into an empty page, in a language and units, and gives back the place it stands in. */
export async function renderPart(
  part: ComponentChild,
  language: Language = 'en',
  unitSystem: UnitSystem = 'us',
): Promise<HTMLElement> {
  const words = makeWords(language, unitSystem, await loadMessages(language));
  document.body.replaceChildren();
  const place = document.body.appendChild(document.createElement('main'));
  await act(() => render(h(WordsContext.Provider, { value: words, children: part }), place));
  return place;
}

/** Does something to the page and waits until the parts have answered. */
export const afterwards = (what: () => void): Promise<void> => act(what);

/** Text as read: spaces that do not break are spaces. */
export const textOf = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replaceAll('\u00a0', ' ').trim();
