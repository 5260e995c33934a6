// @vitest-environment happy-dom
import { render } from 'preact';
import { afterEach, expect, test, vi } from 'vitest';
import type { Language } from '../../src/language/language.ts';
import { loadMessages } from '../../src/language/load-messages.ts';
import { makeWords, useWords, WordsContext } from '../../src/language/words.ts';
import { InTurn } from '../../src/ui/in-turn.tsx';

const said = { en: 'Language', es: 'Idioma' };
const wordsOf = {
  en: makeWords('en', 'us', await loadMessages('en')),
  es: makeWords('es', 'us', await loadMessages('es')),
};

const Speaking = () => <p>{useWords().messages.common.language}</p>;

afterEach(() => document.body.replaceChildren());

function openParts() {
  const place = document.body.appendChild(document.createElement('main'));
  const draw = (language: Language, scene: string, more = '', of = 0) => {
    render(
      <WordsContext.Provider value={wordsOf[language]}>
        {['one', 'two'].map((name) => (
          <InTurn key={name} as="div" class={name} scene={scene} of={of}>
            <Speaking />
            {more}
          </InTurn>
        ))}
      </WordsContext.Provider>,
      place,
    );
  };
  const part = (name: string) => place.querySelector<HTMLElement>(`.${name}`)!;
  const told = () => ['one', 'two'].map((name) => [part(name).textContent, part(name).lang]);
  return { draw, part, told };
}

test('each part keeps its words, and says in which language, until its turn', async () => {
  const { draw, told } = openParts();
  draw('en', 'day');
  expect(told()).toEqual([
    [said.en, 'en-US'],
    [said.en, 'en-US'],
  ]);
  draw('es', 'day');
  const seen: string[] = [];
  await vi.waitFor(
    () => {
      const now = told().join(' ');
      if (seen.at(-1) !== now) seen.push(now);
      expect(now).toBe(`${said.es},es-US ${said.es},es-US`);
    },
    { interval: 1 },
  );
  expect(seen[0]).toBe(`${said.en},en-US ${said.en},en-US`);
  expect(seen).toContain(`${said.es},es-US ${said.en},en-US`);
});

test('for another screen a part lies behind a curtain until its turn, and not for other words', async () => {
  const { draw, part } = openParts();
  const curtains = () => ['one', 'two'].map((name) => part(name).dataset.curtain);
  draw('en', 'day');
  expect(curtains()).toEqual([undefined, undefined]);
  draw('es', 'day');
  expect(curtains()).toEqual([undefined, undefined]);
  draw('es', 'projector');
  expect(curtains()).toEqual(['down', 'down']);
  await vi.waitFor(() => expect(curtains()).toEqual([undefined, undefined]));
  expect(part('two').textContent).toBe(said.es);
});

test('whatever else changes comes at once, and what changes meanwhile comes with the turn', async () => {
  const { draw, part } = openParts();
  draw('en', 'day');
  draw('en', 'day', ' 1');
  expect(part('one').textContent).toBe(`${said.en} 1`);
  draw('es', 'day', ' 2');
  draw('es', 'day', ' 3');
  expect(part('one').textContent).toBe(`${said.en} 1`);
  await vi.waitFor(() => expect(part('two').textContent).toBe(`${said.es} 3`));
});

test('what takes its time comes in turn too, in sight', async () => {
  const { draw, part } = openParts();
  draw('en', 'day', ' 1', 1);
  draw('en', 'day', ' 2', 2);
  expect(part('two').textContent).toBe(`${said.en} 1`);
  expect(part('two').dataset.curtain).toBeUndefined();
  await vi.waitFor(() => expect(part('two').textContent).toBe(`${said.en} 2`));
});

test('back in the words a part still has, there is nothing to wait for', async () => {
  const { draw, part } = openParts();
  draw('en', 'day');
  draw('es', 'day');
  draw('en', 'day', ' 1');
  expect(part('one').textContent).toBe(`${said.en} 1`);
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(part('two').textContent).toBe(`${said.en} 1`);
});
