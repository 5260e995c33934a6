import { describe, expect, test } from 'vitest';
import { bench as en } from '../../src/language/messages/en/bench.ts';
import { bench as es } from '../../src/language/messages/es/bench.ts';
import { catalogueLines } from './catalogue-lines.ts';

const english = catalogueLines(en);
const spanish = catalogueLines(es);
const placeholders = (line: string): string =>
  [...new Set([...line.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!))].sort().join();

describe('the words of the bench', () => {
  test('have the same keys and placeholders in both languages', () => {
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
    for (const [key, line] of english) expect(placeholders(spanish.get(key)!), key).toBe(placeholders(line));
  });
  test('have no empty line and no exclamation', () => {
    for (const [key, line] of [...english, ...spanish]) {
      expect(line.trim(), key).toBe(line);
      expect(line, key).not.toMatch(/!|¡/);
      expect(line, key).not.toBe('');
    }
  });
  test('claim nothing that the evidence does not bear', () => {
    const claims = /(does not|less|never) (wrinkle|fade)|shrinks less|last(s)? longer|no se arruga|dura más/i;
    expect([...english, ...spanish].filter(([, line]) => claims.test(line))).toEqual([]);
  });
  test('address nobody as usted or vosotros, and use no word that misleads alone', () => {
    const wrong =
      /(^|[^\p{L}])(usted|ustedes|vosotros|elija|toque|bala|balas|mota|mote|césped|muselina|pico)(?![\p{L}])/iu;
    expect([...spanish].filter(([, line]) => wrong.test(line))).toEqual([]);
  });
  test('are American in English', () => {
    const british = /\b(fibres?|colours?|metres?|centimetres?|grey|mercerised|lustre)\b/i;
    expect([...english].filter(([, line]) => british.test(line))).toEqual([]);
  });
});
