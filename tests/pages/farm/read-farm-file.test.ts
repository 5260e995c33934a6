import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadMessages } from '../../../src/language/load-messages.ts';
import { phrase } from '../../../src/language/phrase.ts';
import { problemText } from '../../../src/language/problem-text.ts';
import { makeWords } from '../../../src/language/words.ts';
import { farms } from '../../../src/model/farms.ts';
import type { Problem } from '../../../src/model/problem.ts';
import { checkScenario } from '../../../src/model/scenario.ts';
import { decisionTitle } from '../../../src/pages/farm/decided-lines.ts';
import { farmWords } from '../../../src/pages/farm/farm-words.ts';
import { farmFileText, mostFarmBytes, newFarmId, readFarmFile } from '../../../src/pages/farm/read-farm-file.ts';
import { propertySeed, runs } from '../../laws/runs.ts';

const farm = farms[0]!;
const problemsOf = (text: string): readonly Problem[] => {
  const read = readFarmFile(text, 'mine.json');
  return read.ok ? [] : read.problems;
};
const withValue = (path: string, value: unknown): string => {
  const copy = structuredClone(farm) as unknown as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop()!;
  const group = keys.reduce((at, key) => at[key] as Record<string, unknown>, copy);
  Object.defineProperty(group, last, { value, enumerable: true, configurable: true, writable: true });
  return JSON.stringify(copy);
};

describe('a farm file', () => {
  test.each(farms.map((each) => [each.id, each] as const))('gives %s back as it went out', (_, each) => {
    expect(readFarmFile(farmFileText(each), 'x.json')).toEqual({ ok: true, value: each });
  });

  test('is laid out as the files of the six farms are', async () => {
    const { readFile } = await import('node:fs/promises');
    const text = await readFile(`content/scenarios/${farm.id}.json`, 'utf8');
    expect(farmFileText(farm)).toBe(text);
  });

  test('may begin with a byte order mark', () => {
    expect(readFarmFile(`\uFEFF${farmFileText(farm)}`, 'x.json')).toEqual({ ok: true, value: farm });
  });

  test.each([
    ['an empty file', ''],
    ['half a file', farmFileText(farm).slice(0, 300)],
    ['a page of markup', '<html><script>alert(1)</script></html>'],
    ['endless brackets', '['.repeat(mostFarmBytes - 1)],
  ])('refuses %s as no JSON', (_, text) => {
    expect(problemsOf(text)).toMatchObject([{ field: 'mine.json', value: 'not JSON' }]);
  });

  test('refuses a huge file unread', () => {
    expect(problemsOf(' '.repeat(mostFarmBytes + 1))).toMatchObject([{ field: 'mine.json', value: 'too large' }]);
  });

  test.each([
    ['acres', 0, 'acres'],
    ['acres', '40', 'acres'],
    ['soilWaterMm', 900, 'soilWaterMm'],
    ['climate', 'moon', 'climate'],
    ['era', null, 'era'],
    ['version', 2, 'version'],
    ['id', 'No Spaces', 'id'],
    ['name', 'Ridge', 'name'],
    ['name.es', 7, 'name.es'],
    ['name.en', 'x'.repeat(201), 'name.en'],
    ['decisions.planting.rowInches', 38.5, 'decisions.planting.rowInches'],
    ['decisions.planting.rowInches', 900, 'decisions.planting.rowInches'],
    ['decisions.ginning.stand', ['saw'], 'decisions.ginning.stand'],
    ['decisions.sewing.prewash', 'yes', 'decisions.sewing.prewash'],
    ['decisions.sewing', [], 'decisions.sewing.prewash'],
    ['decisions.sewing', 'quickly', 'decisions.sewing'],
    ['tractor', true, 'tractor'],
    ['decisions.planting.tractor', 1, 'decisions.planting.tractor'],
    ['constructor', {}, 'constructor'],
    ['__proto__', { isAdmin: true }, '__proto__'],
    ['decisions.planting.__proto__', { rowInches: 20 }, 'decisions.planting.__proto__'],
  ])('with %s set to %j is refused by that field', (path, value, field) => {
    const problems = problemsOf(withValue(path, value));
    expect(problems.map((problem) => problem.field)).toContain(field);
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
  });

  test('names a decision that is missing', () => {
    const copy = structuredClone(farm) as unknown as { decisions: Record<string, Record<string, unknown>> };
    delete copy.decisions.weaving!.picksPerInch;
    expect(problemsOf(JSON.stringify(copy))).toMatchObject([
      { field: 'decisions.weaving.picksPerInch', value: 'nothing', rule: { kind: 'range', low: 20, high: 200 } },
    ]);
  });

  test('law: no text throws, and none but a whole farm is taken', () => {
    const bytes = fc.uint8Array({ maxLength: 300 }).map((binary) => new TextDecoder().decode(binary));
    const text = fc.oneof(fc.string({ maxLength: 60 }), fc.json({ maxDepth: 4 }), bytes);
    fc.assert(
      fc.property(text, (junk) => problemsOf(junk).length > 0),
      { seed: propertySeed, numRuns: runs(500) },
    );
  });
});

test('law: a farm file damaged anywhere is read as a legal farm or refused by the field, in both languages, and never throws', async () => {
  const fields = (at: unknown, path: string): string[] =>
    typeof at === 'object' && at !== null
      ? Object.entries(at).flatMap(([k, v]) => fields(v, path ? `${path}.${k}` : k))
      : [path];
  const anyField = fc.constantFrom(...fields(farm, ''));
  const anyJson = fc.jsonValue({ maxDepth: 2 });
  const all = await Promise.all(
    (['en', 'es'] as const).map(async (language) => makeWords(language, 'us', await loadMessages(language))),
  );
  let refused = 0;
  fc.assert(
    fc.property(anyField, anyJson, (path, value) => {
      const read = readFarmFile(withValue(path, value), 'mine.json');
      if (read.ok) {
        expect(checkScenario(read.value)).toEqual({ ok: true, value: read.value });
        return;
      }
      refused++;
      for (const words of all)
        for (const problem of read.problems) {
          const said = problemText(problem, words.messages, words.formats);
          expect(said).toContain(problem.field);
          expect(said).not.toMatch(/undefined|NaN|\[object/);
        }
      expect(read.problems.some(({ field }) => field.startsWith(path) || path.startsWith(field))).toBe(true);
    }),
    { seed: propertySeed, numRuns: runs(1000) },
  );
  expect(refused).toBeGreaterThan(10);
});

describe('what is wrong with a farm file is said in the reader’s words', () => {
  const said = async (language: 'en' | 'es', text: string) => {
    const all = makeWords(language, 'us', await loadMessages(language));
    const { phrases } = farmWords(language);
    return problemsOf(text).map(({ field, value, rule }) =>
      problemText(
        {
          field: decisionTitle(field, all),
          value: phrase(value, phrases),
          rule: rule.kind === 'type' ? { kind: 'type', expected: phrase(rule.expected, phrases) } : rule,
        },
        all.messages,
        all.formats,
      ),
    );
  };

  test.each([
    [
      '',
      'mine.json: no JSON is not allowed. Allowed: a farm file in JSON, at most 200 kB.',
      'mine.json: algo que no es JSON no se permite. Se permite: un archivo de granja en JSON, de 200 kB como máximo.',
    ],
    [
      withValue('decisions.planting.rowInches', 900),
      'Row width (decisions.planting.rowInches): 900 is not allowed. Allowed: 15 to 40 inches, in steps of 1.',
      'Ancho de surco (decisions.planting.rowInches): 900 no se permite. Se permite: 15 a 40 pulgadas, de 1 en 1.',
    ],
    [
      withValue('acres', -3),
      'acres: -3 is not allowed. Allowed: 1 to 5,000 acres.',
      'acres: -3 no se permite. Se permite: 1 a 5,000 acres.',
    ],
    [
      withValue('name', 7),
      'name: 7 is not allowed. Allowed: a text in en and one in es.',
      'name: 7 no se permite. Se permite: un texto en en y otro en es.',
    ],
    [
      withValue('tractor', 1),
      'tractor: "tractor" is not allowed. Allowed: nothing: this field is not known.',
      'tractor: "tractor" no se permite. Se permite: nada: este campo no se conoce.',
    ],
  ])('case %#', async (text, english, spanish) => {
    expect((await said('en', text))[0]).toBe(english);
    expect((await said('es', text))[0]).toBe(spanish);
  });
});

test('ids of own farms are legal, and no two alike', () => {
  const ids = Array.from({ length: 200 }, newFarmId);
  expect(new Set(ids).size).toBe(200);
  for (const id of ids) expect(readFarmFile(farmFileText({ ...farm, id }), 'x').ok).toBe(true);
});
