import { languages } from '../language/language.ts';
import { decisionTable } from '../model/decisions.ts';
import { farms } from '../model/farms.ts';
import type { Checked, Problem, Rule } from '../model/problem.ts';
import { type KioskField, type KioskSettings, kioskFields, kioskLimits, mayStand, readSettings } from './settings.ts';

/** The largest settings file that is read, bytes: many times what every field takes. */
export const mostSettingsBytes = 20_000;
const version = 1;
const hoursOfDay = 24;

/** What a file says it is, so that a farm or a plan is not taken for it. */
const head = { kioskSettings: version } as const;

const type = (expected: string): Rule => ({ kind: 'type', expected });
const choice = (options: readonly string[]): Rule => ({ kind: 'choice', options });
const range = (low: number, high: number, unit = '', step: number | null = 1): Rule => ({
  kind: 'range',
  low,
  high,
  step,
  unit,
});
const farmIds = farms.map(({ id }) => id);
const unknown = type('nothing (unknown field)');
const { lintCleaners, stand } = decisionTable.ginning;

/** What may stand in a field, and in the parts of those that have parts. */
const rules: Readonly<Record<KioskField, Rule>> = {
  mmPerPx: range(kioskLimits.mmPerPx.low, kioskLimits.mmPerPx.high, 'mm', null),
  languages: type(`a list of ${languages.join(', ')}, each once`),
  volume: range(kioskLimits.volume.low, kioskLimits.volume.high, 'percent'),
  scenarios: type(`a list of ${farmIds.join(', ')}, each once`),
  ownGin: type('null, or farm, stand, lintCleaners and greeting'),
  phoneAddress: type(`an http or https address without # and ?, at most ${kioskLimits.addressLetters} characters`),
  hours: type('from and to, whole hours, from before to'),
  highContrast: type('true or false'),
};
const partRules: Readonly<Partial<Record<KioskField, Readonly<Record<string, Rule>>>>> = {
  hours: { from: range(0, hoursOfDay - 1), to: range(1, hoursOfDay) },
  ownGin: {
    farm: choice(farmIds),
    stand: choice(stand.options),
    lintCleaners: range(lintCleaners.low, lintCleaners.high),
    greeting: type(`a text in en and one in es, at most ${kioskLimits.greetingLetters} characters each`),
  },
};
/** Values that may stand, into which a part is put to see whether it may stand too. */
const sound: Readonly<Partial<Record<KioskField, Readonly<Record<string, unknown>>>>> = {
  hours: { from: 0, to: hoursOfDay },
  ownGin: { farm: farmIds[0], stand: 'saw', lintCleaners: 1, greeting: { en: '', es: '' } },
};

const shown = (value: unknown): string =>
  value === undefined ? 'nothing' : typeof value === 'string' ? value || 'nothing' : JSON.stringify(value);

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is wrong with one field: its parts by name where that tells more than the whole. */
function problemsOf(field: KioskField, value: unknown): Problem[] {
  const parts = partRules[field];
  const base = sound[field];
  if (parts && base && isGroup(value)) {
    const named = [...new Set([...Object.keys(parts), ...Object.keys(value)])]
      .filter((part) => !mayStand(field, { ...base, [part]: value[part] }))
      .map((part) => ({ field: `${field}.${part}`, value: shown(value[part]), rule: parts[part] ?? unknown }));
    if (named.length > 0) return named;
  }
  return [{ field, value: shown(value), rule: rules[field] }];
}

/** What is said of a file that cannot be settings at all. */
export const noSettingsFile = (name: string, value: 'not JSON' | 'too large' | 'another kind of file'): Problem => ({
  field: name,
  value,
  rule: type(`the settings of a kiosk as JSON, at most ${mostSettingsBytes / 1000} kB`),
});

/** The settings as a file. */
export const settingsFileText = (settings: KioskSettings): string =>
  `${JSON.stringify({ ...head, ...settings }, null, 2)}\n`;

/**
 * Reads a settings file. A field that is missing takes its default; one that holds junk is named, and then nothing is taken.
 * @param name the file's name, for what is said of it
 */
export function readSettingsFile(text: string, name: string): Checked<KioskSettings> {
  const no = (value: Parameters<typeof noSettingsFile>[1]) => ({
    ok: false as const,
    problems: [noSettingsFile(name, value)],
  });
  if (text.length > mostSettingsBytes) return no('too large');
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return no('not JSON');
  }
  if (!isGroup(input) || !Object.hasOwn(input, 'kioskSettings')) return no('another kind of file');
  const { kioskSettings, ...fields } = input;
  const { settings, junk } = readSettings(fields);
  const problems = junk.flatMap((field): Problem[] => {
    const known = kioskFields.find((name) => name === field);
    return known ? problemsOf(known, fields[field]) : [{ field, value: shown(fields[field]), rule: unknown }];
  });
  if (kioskSettings !== version)
    problems.unshift({ field: 'kioskSettings', value: shown(kioskSettings), rule: choice([String(version)]) });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: settings };
}
