import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { loadMessages } from '../../src/language/load-messages.ts';
import { makeWords, WordsContext } from '../../src/language/words.ts';
import { figureDocs, figures } from '../../src/pages/lessons/figures/all-figures.ts';
import { loadLesson } from '../../src/pages/lessons/lesson-file.ts';
import { LessonContext, lessonFrame } from '../../src/pages/lessons/lesson-frame.ts';
import { loadLessonWords } from '../../src/pages/lessons/lesson-words.ts';
import { inTurn } from '../laws/runs.ts';

type Props = Readonly<Record<string, string>>;
const file = (await loadLesson('en', 'staple-length'))!;

async function drawn(name: string, props: Props, language: 'en' | 'es', still: boolean): Promise<string> {
  const words = makeWords(language, 'us', await loadMessages(language));
  const frame = lessonFrame('x', file, await loadLessonWords(language), {}, still);
  const figure = h((figures as Readonly<Record<string, preact.ComponentType<Props>>>)[name]!, props);
  return renderToString(
    <WordsContext.Provider value={words}>
      <LessonContext.Provider value={frame}>{figure}</LessonContext.Provider>
    </WordsContext.Provider>,
  );
}

/** Languages, each live and still: every one in the long run, otherwise one language live and the other still. */
const ways = [
  ['en', false],
  ['es', false],
  ['es', true],
  ['en', true],
] as const;

/** Every figure with every value of each of its options. */
const cases = figureDocs.flatMap(({ name, options }): [string, Props][] => [
  [name, {}],
  ...options.flatMap((option) => option.values.map((value): [string, Props] => [name, { [option.name]: value }])),
]);

test('every figure describes itself', () => {
  expect(figureDocs.map(({ name }) => name).sort()).toEqual(Object.keys(figures).sort());
  for (const { options } of figureDocs) for (const { usual, values } of options) expect(values).toContain(usual);
});

test.each(cases.map(([name, props], turn) => [name, props, turn] as const))(
  '%s %j has a picture, words and a table, with scripts and without',
  async (name, props, turn) => {
    for (const [language, still] of inTurn(ways, turn)) {
      const html = await drawn(name, props, language, still);
      expect(html).toMatch(/<svg|<img/);
      expect(html).toMatch(/<figcaption/);
      expect(html).toMatch(/<tbody><tr>/);
      expect(/.{0,40}(NaN|undefined).{0,40}/.exec(html)?.[0]).toBeUndefined();
      // Rulers set their marks through the style property once the page runs; a page without scripts has none.
      if (still) expect(/.{0,40}(style="|<details|<input|<button).{0,40}/.exec(html)?.[0]).toBeUndefined();
    }
  },
);

test.each(figureDocs.filter(({ options }) => options.length > 0))(
  '$name refuses a value it does not know',
  async (doc) => {
    await expect(drawn(doc.name, { [doc.options[0]!.name]: 'nothing' }, 'en', true)).rejects.toThrow(RangeError);
  },
);
