import { describe, expect, test } from 'vitest';
import { type FormulaMarkup, formulaMathml } from '../../src/cli/formula-mathml.mjs';
import { formulaTexts } from '../../src/workings/formula-texts.ts';

/** How many children an element of MathML Core takes, where that is fixed (W3C, MathML Core, sections 3.3 and 3.4). */
const childCounts: Readonly<Record<string, number>> = { mfrac: 2, msub: 2, msup: 2, msubsup: 3 };
/** The elements of MathML Core that a formula here needs; the last line holds words, not elements. */
const groups = ['math', 'mrow', 'msqrt', 'mfrac', 'msub', 'msup', 'msubsup'];
const tokens = ['mi', 'mn', 'mo', 'mtext'];

/** What is wrong with a piece of MathML, one line each. */
function problemsOf(mathml: string): string[] {
  const problems: string[] = [];
  const open: { readonly name: string; children: number }[] = [{ name: 'page', children: 0 }];
  for (const [, closing, name = '', attributes = '', words = ''] of mathml.matchAll(
    /<(\/?)([a-z]+)((?: [a-z]+="[^"]*")*)>|([^<]+)/g,
  )) {
    const here = open.at(-1)!;
    if (words !== '') {
      if (!tokens.includes(here.name)) problems.push(`words in ${here.name}: ${words}`);
    } else if (closing === '/') {
      const wanted = childCounts[here.name];
      if (here.name !== name) problems.push(`${here.name} is closed by ${name}`);
      else if (wanted !== undefined && wanted !== here.children) problems.push(`${name} has ${here.children} children`);
      open.pop();
    } else {
      if (![...groups, ...tokens].includes(name)) problems.push(`${name} is no element of a formula`);
      if (tokens.includes(here.name)) problems.push(`${name} in ${here.name}`);
      if (/ (?:style|class|scriptlevel)=/.test(attributes)) problems.push(`${name} has${attributes}`);
      here.children++;
      open.push({ name, children: 0 });
    }
  }
  if (open.length !== 1 || open[0]!.children !== 1 || !mathml.startsWith('<math'))
    problems.push('not one math element');
  return problems;
}

const made = await formulaMathml(formulaTexts);
const each = Object.entries(made) as [string, FormulaMarkup][];

test('there is a formula to look at for each text', () => {
  expect(Object.keys(made)).toEqual(Object.keys(formulaTexts));
});

test.each(each)('%s is valid MathML without styles, to look at and to fill in', (_, { formula, filled }) => {
  expect(problemsOf(formula)).toEqual([]);
  expect(problemsOf(filled)).toEqual([]);
});

test.each(each)('%s has a place for each letter', (id, { filled }) => {
  const letters = formulaTexts[id as keyof typeof formulaTexts].match(/\b[A-Za-z](?:_\d)?\b/g) ?? [];
  const places = [...filled.matchAll(/<mtext>@([\w-]+)@<\/mtext>/g)].map(([, name]) => name!.replace('-', '_'));
  expect(places.sort()).toEqual([...letters].sort());
});

describe('what would be wrong is seen', () => {
  test.each([
    ['a style that the policy forbids', '<math><mi style="color:red">x</mi></math>', 'mi has style'],
    ['a fraction without a denominator', '<math><mfrac><mn>1</mn></mfrac></math>', 'mfrac has 1 children'],
    ['an element left open', '<math><mrow><mn>1</mn></math>', 'mrow is closed by math'],
    ['words between elements', '<math>1<mo>+</mo></math>', 'words in math'],
    ['an element of another language', '<math><span>1</span></math>', 'span is no element'],
  ])('%s', (_, mathml, problem) => {
    expect(problemsOf(mathml).join('; ').replace('  ', ' ')).toContain(problem);
  });
});

test('a formula that cannot be read stops the build', async () => {
  await expect(formulaMathml({ broken: '2 * (a' })).rejects.toThrow();
});
