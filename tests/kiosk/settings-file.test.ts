import { describe, expect, test } from 'vitest';
import { type KioskField, kioskFields, newKiosk } from '../../src/kiosk/settings.ts';
import { mostSettingsBytes, readSettingsFile, settingsFileText } from '../../src/kiosk/settings-file.ts';
import { problemLine } from '../../src/model/problem.ts';

const gin = { farm: 'river-bottom', stand: 'saw', lintCleaners: 1, greeting: { en: 'Hello', es: 'Hola' } } as const;
const file = (fields: object) => JSON.stringify({ kioskSettings: 1, ...fields });
const refused = (text: string): string[] => {
  const read = readSettingsFile(text, 'kiosk.json');
  return read.ok ? ['read'] : read.problems.map(problemLine);
};

test('what is saved opens the same on another kiosk, also with a mark at its beginning', () => {
  const settings = { ...newKiosk, mmPerPx: 0.369, ownGin: gin, hours: { from: 9, to: 17 }, highContrast: true };
  expect(readSettingsFile(settingsFileText(settings), 'kiosk.json')).toEqual({ ok: true, value: settings });
  expect(readSettingsFile(`\uFEFF${settingsFileText(newKiosk)}`, 'kiosk.json')).toEqual({ ok: true, value: newKiosk });
});

test('fields that are missing take their defaults', () => {
  expect(readSettingsFile(file({ volume: 0 }), 'kiosk.json')).toEqual({ ok: true, value: { ...newKiosk, volume: 0 } });
});

describe('junk is named field by field', () => {
  test.each<[object, string]>([
    [{ mmPerPx: 'wide' }, 'mmPerPx: wide is not allowed; allowed: 0.05 to 1.5 mm'],
    [{ volume: 101 }, 'volume: 101 is not allowed; allowed: 0 to 100 percent, in steps of 1'],
    [{ languages: ['fr'] }, 'languages: ["fr"] is not allowed; allowed: a list of en, es, each once'],
    [{ hours: { from: 9, to: 25 } }, 'hours.to: 25 is not allowed; allowed: 1 to 24, in steps of 1'],
    [
      { hours: { from: 17, to: 9 } },
      'hours: {"from":17,"to":9} is not allowed; allowed: from and to, whole hours, from before to',
    ],
    [{ ownGin: { ...gin, stand: 'hand' } }, 'ownGin.stand: hand is not allowed; allowed: saw, roller'],
    [{ ownGin: { ...gin, lintCleaners: 9 } }, 'ownGin.lintCleaners: 9 is not allowed; allowed: 0 to 3, in steps of 1'],
    [{ ownGin: { ...gin, colour: 1 } }, 'ownGin.colour: 1 is not allowed; allowed: nothing (unknown field)'],
    [{ highContrast: 'yes' }, 'highContrast: yes is not allowed; allowed: true or false'],
    [{ sound: 3 }, 'sound: 3 is not allowed; allowed: nothing (unknown field)'],
  ])('%j', (fields, line) => {
    expect(refused(file(fields))).toEqual([line]);
  });

  test('every field at once, and a version that is not known', () => {
    const junk = Object.fromEntries(
      kioskFields.map((field): [KioskField, unknown] => [field, Symbol.iterator.toString()]),
    );
    const lines = refused(file({ ...junk, kioskSettings: 2 }));
    expect(lines.map((line) => line.split(':')[0])).toEqual(['kioskSettings', ...kioskFields]);
  });

  test('the parts of the own gin that are missing', () => {
    expect(refused(file({ ownGin: { farm: 'river-bottom' } })).map((line) => line.split(' is ')[0])).toEqual([
      'ownGin.stand: nothing',
      'ownGin.lintCleaners: nothing',
      'ownGin.greeting: nothing',
    ]);
  });
});

test('a file that is no settings at all is refused as a whole', () => {
  for (const text of [
    '',
    '{',
    '7',
    'null',
    '[]',
    '{}',
    '{"version":1,"id":"river-bottom"}',
    ' '.repeat(mostSettingsBytes + 1),
  ])
    expect(refused(text)).toEqual([
      expect.stringMatching(/^kiosk\.json: .* allowed: the settings of a kiosk as JSON, at most 20 kB$/),
    ]);
});
