// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import {
  type KioskField,
  keepSettings,
  keptSettings,
  kioskFields,
  kioskLimits,
  mayStand,
  newKiosk,
  readSettings,
  settingsPlace,
} from '../../src/kiosk/settings.ts';

beforeEach(() => localStorage.clear());

const gin = { farm: 'river-bottom', stand: 'saw', lintCleaners: 1, greeting: { en: 'Hello', es: 'Hola' } } as const;

test('what is kept comes back the same', () => {
  const settings = {
    ...newKiosk,
    mmPerPx: 0.17,
    languages: ['es', 'en'],
    volume: 0,
    ownGin: gin,
    phoneAddress: 'https://gin.example/season/',
    hours: { from: 9, to: 17 },
    highContrast: true,
  } as const;
  expect(keepSettings(settings)).toBe(true);
  expect(keptSettings()).toEqual(settings);
});

test('nothing kept, junk kept and another kind of value give a new kiosk', () => {
  expect(keptSettings()).toEqual(newKiosk);
  for (const junk of ['{', '7', 'null', '[]', '"x"', '{"__proto__":{"volume":3}}']) {
    localStorage.setItem(settingsPlace, junk);
    expect(keptSettings()).toEqual(newKiosk);
  }
});

test.each<[KioskField, unknown[], unknown[]]>([
  ['mmPerPx', [0.05, 0.369, 1.5], [0, 0.04, 1.6, '0.2', Number.NaN, null]],
  ['languages', [['en'], ['es', 'en']], [[], ['en', 'en'], ['fr'], 'en']],
  ['volume', [0, 50, 100], [-1, 101, 12.5, '50']],
  ['scenarios', [['river-bottom']], [[], ['nowhere'], ['river-bottom', 'river-bottom'], 'river-bottom']],
  ['ownGin', [null, gin], [{ ...gin, lintCleaners: 4 }, { ...gin, stand: 'hand' }, { ...gin, extra: 1 }, {}]],
  [
    'phoneAddress',
    ['', 'https://gin.example/', 'http://10.0.0.4:8080/app/'],
    ['gin.example', 'javascript:1', 'https://a/#/b', 'https://a b/'],
  ],
  [
    'hours',
    [
      { from: 0, to: 24 },
      { from: 9, to: 17 },
    ],
    [{ from: 9, to: 9 }, { from: 9, to: 25 }, { from: 9 }, [9, 17]],
  ],
  ['highContrast', [true, false], ['true', 1, null]],
])('%s: only what may stand there does, and junk leaves the others alone', (field, good, bad) => {
  for (const value of good) expect(mayStand(field, value)).toBe(true);
  for (const value of bad) {
    expect(mayStand(field, value)).toBe(false);
    const read = readSettings({ ...newKiosk, volume: 25, highContrast: true, [field]: value });
    expect(read.junk).toEqual([field]);
    expect(read.settings).toEqual({ ...newKiosk, volume: 25, highContrast: true, [field]: newKiosk[field] });
  }
});

test('greetings and addresses are held to their lengths', () => {
  const greeting = (letters: number) => ({ ...gin, greeting: { en: 'a'.repeat(letters), es: '' } });
  const address = (letters: number) => `https://${'a'.repeat(letters - 8)}`;
  expect(mayStand('ownGin', greeting(kioskLimits.greetingLetters))).toBe(true);
  expect(mayStand('ownGin', greeting(kioskLimits.greetingLetters + 1))).toBe(false);
  expect(mayStand('phoneAddress', address(kioskLimits.addressLetters))).toBe(true);
  expect(mayStand('phoneAddress', address(kioskLimits.addressLetters + 1))).toBe(false);
});

test('a new kiosk may stand itself; unknown fields are named', () => {
  for (const field of kioskFields) expect(mayStand(field, newKiosk[field])).toBe(true);
  expect(readSettings({ colour: 'red' })).toEqual({ settings: newKiosk, junk: ['colour'] });
});
