import { describe, expect, test } from 'vitest';
import { reaches, reachMm } from '../../../../src/kiosk/reach.ts';
import { selfTestParts } from '../../../../src/kiosk/self-test.ts';
import { loadInstallerWords } from '../../../../src/pages/kiosk/setup/use-setup-words.ts';
import { catalogueLines } from '../../../language/catalogue-lines.ts';

const [en, es] = [await loadInstallerWords('en'), await loadInstallerWords('es')];
const english = catalogueLines({ setup: en.setup, sheet: en.sheet });
const spanish = catalogueLines({ setup: es.setup, sheet: es.sheet });
const placeholders = (line: string): string[] => [...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();

describe('the installer’s words', () => {
  test('both languages have the same lines with the same figures; Spanish addresses nobody and opens what it closes', () => {
    expect([...spanish.keys()]).toEqual([...english.keys()]);
    expect(english.size).toBeGreaterThan(150);
    for (const [key, line] of english)
      expect([key, placeholders(spanish.get(key)!)]).toEqual([key, placeholders(line)]);
    const address =
      /(^|[^\p{L}])(tu|tus|tú|ti|te|usted|ustedes|elige|decide|mira|escribe|usa|toque|elija)(?![\p{L}])/iu;
    const open = [...spanish].filter(
      ([key, line]) =>
        !key.includes('.phrases.') &&
        ((address.test(line) && !/Toque$/.test(line)) || line.includes('?') !== line.includes('¿')) &&
        // The sign itself is named.
        !/sin # ni \?/.test(line),
    );
    expect(open).toEqual([]);
    expect([...english, ...spanish].filter(([, line]) => /[!¡]/.test(line))).toEqual([]);
  });

  test('no sentence is over forty words', () => {
    for (const line of [...english.values(), ...spanish.values()])
      for (const sentence of line.split(/[.?](?=\s|$)/))
        expect((sentence.match(/[\p{L}\p{N}]+/gu) ?? []).length).toBeLessThan(41);
  });

  test('each outcome of the self-test has its line in both languages', () => {
    const outcomes = {
      graphics: ['chip', 'processor', 'canvas', 'none'],
      storage: ['promised', 'kept', 'none'],
      offline: ['whole', 'notYet', 'none'],
      touch: ['touch', 'none'],
      sound: ['all', 'some', 'none'],
    };
    for (const { setup } of [en, es])
      for (const part of selfTestParts)
        expect(Object.keys(setup.test.parts[part]).sort()).toEqual(['name', ...outcomes[part]].sort());
  });
});

test('heights in millimeters are those the standard prints (2010 ADA Standards 308.2.1: 15 in is 380 mm, 48 in is 1220 mm)', () => {
  const adult = reaches.find(({ who }) => who === 'adult')!;
  expect([adult.lowInches, adult.highInches]).toEqual([15, 48]);
  expect([reachMm(15), reachMm(48)]).toEqual([380, 1220]);
});
