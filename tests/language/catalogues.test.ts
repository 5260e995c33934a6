import { describe, expect, test } from 'vitest';
import { en } from '../../src/language/messages/en.ts';
import { es } from '../../src/language/messages/es.ts';
import { addressed } from './addressed.ts';
import { catalogueLines } from './catalogue-lines.ts';

const english = catalogueLines(en);
const spanish = catalogueLines(es);
const placeholders = (line: string): string[] =>
  [...new Set([...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))].sort();
const words = (line: string): string[] => line.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Empty on purpose: a count has no unit. */
const mayBeEmpty = new Set(['problems.units.count']);
/** Spanish has a third plural form, for whole millions. */
const spanishOnly = /\.many$/;

describe('the two catalogues', () => {
  test('are not nearly empty', () => {
    expect(english.size).toBeGreaterThan(450);
  });

  test('hold the same keys', () => {
    expect([...spanish.keys()].filter((key) => !spanishOnly.test(key)).sort()).toEqual([...english.keys()].sort());
  });

  test('have the same placeholders line by line', () => {
    const differing = [...english]
      .filter(([key, line]) => `${placeholders(line)}` !== `${placeholders(spanish.get(key) ?? '')}`)
      .map(([key]) => key);
    expect(differing).toEqual([]);
  });

  test('have no empty line and no stray space', () => {
    const bad = [...english, ...spanish].filter(
      ([key, line]) => (line === '' && !mayBeEmpty.has(key)) || line !== line.trim(),
    );
    // A step is added to a range with the space that its language wants.
    expect(bad.map(([key]) => key).filter((key) => key !== 'problems.steps')).toEqual([]);
  });

  test('the placeholder check sees a name that differs', () => {
    expect(placeholders('{low} to {high}')).not.toEqual(placeholders('{low} a {alto}'));
  });
});

describe('short words', () => {
  test.each([
    ['English', english],
    ['Spanish', spanish],
  ])('an instruction takes at most twelve words in %s', (_, lines) => {
    const long = [...lines].filter(([key, line]) => key.endsWith('.instruction') && words(line).length > 12);
    expect(long).toEqual([]);
  });

  test('no control of one English word grows more than threefold in Spanish (W3C note on text size: 200 to 300 % for short words)', () => {
    const controls = [
      'common.yes',
      'common.no',
      'common.close',
      'common.back',
      'common.next',
      'common.more',
      'common.less',
      'common.print',
      'common.before',
      'common.after',
      'scenes.ribbon.play',
      'scenes.ribbon.pause',
      'scenes.ribbon.speed',
      ...[...english.keys()].filter((key) => /^(navigation\.pages|stations\.\w+\.name)/.test(key)),
    ];
    const grown = controls.filter((key) => spanish.get(key)!.length > 3 * english.get(key)!.length);
    expect(grown).toEqual([]);
  });
});

describe('Spanish manners', () => {
  const speaks =
    /(^|[^\p{L}])(tu|tus|tú|ti|te|contigo|elige|decide|mira|compacta|cúbrelo|cuida|lee|cambia|compara|escribe|usa)(?![\p{L}])/iu;
  /** 'cambia' is also a plain statement about a third thing; these lines were read. */
  const thirdPerson = new Set(['navigation.doors.season.line']);
  const marked = (key: string): boolean => addressed.some((pattern) => pattern.test(key));

  test('only marked lines speak to the reader as tú', () => {
    const unmarked = [...spanish].filter(([key, line]) => speaks.test(line) && !marked(key) && !thirdPerson.has(key));
    expect(unmarked).toEqual([]);
  });

  test('every marked line exists, and they stay under one line in five', () => {
    for (const pattern of addressed) expect([...spanish.keys()].some((key) => pattern.test(key))).toBe(true);
    expect([...spanish.keys()].filter(marked).length).toBeLessThan(spanish.size / 5);
  });

  test('nobody is addressed as usted or vosotros', () => {
    const formal = /(^|[^\p{L}])(usted|ustedes|vosotros|vuestr[oa]s?|elija|toque)(?![\p{L}])/iu;
    expect([...spanish].filter(([, line]) => formal.test(line))).toEqual([]);
  });

  test('words that mislead or offend somewhere in the audience never stand alone', () => {
    const banned =
      /(^|[^\p{L}])(stripper|bala|balas|mota|motas|motitas|mote|pluma|muselina|coger|bicho|pico|paja|ginebra|césped|indio|esclavos|clickear|resetear|algodoncito)(?![\p{L}])/iu;
    expect([...spanish].filter(([, line]) => banned.test(line))).toEqual([]);
  });

  test('questions and exclamations open as well as close', () => {
    const halves = [...spanish].filter(
      ([, line]) => line.includes('?') !== line.includes('¿') || line.includes('!') !== line.includes('¡'),
    );
    expect(halves).toEqual([]);
  });

  test('yield and cloth words carry what they are a yield or cloth of', () => {
    const bare = [...spanish].filter(([, line]) => /rendimientos?\b(?! de (campo|fibra|hilo|primeras))/i.test(line));
    expect(bare).toEqual([]);
  });
});

describe('English is American', () => {
  test('no British spelling on screen', () => {
    const british = /\b(fibres?|colours?|metres?|centimetres?|grey|mould|mercerised|labour|centre|analyse)\b/i;
    expect([...english].filter(([, line]) => british.test(line))).toEqual([]);
  });

  test('no claim that the evidence does not bear', () => {
    const claims = /(does not|less|never) (wrinkle|fade)|shrinks less|last(s)? longer/i;
    expect([...english].filter(([, line]) => claims.test(line))).toEqual([]);
  });
});
