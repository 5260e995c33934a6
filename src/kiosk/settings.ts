import * as v from 'valibot';
import { type Language, languages } from '../language/language.ts';
import { decisionTable } from '../model/decisions.ts';
import { farms } from '../model/farms.ts';

/** Limits of what an installer may set. */
export const kioskLimits = {
  /** From a phone held close to a wall of screens, millimetres a CSS pixel. */
  mmPerPx: { low: 0.05, high: 1.5 },
  /** Loudness of what is read aloud, percent. */
  volume: { low: 0, high: 100 },
  /** Letters of a greeting: it stands in large type on one screen. */
  greetingLetters: 60,
  /** Letters of an address: it goes into a code that a phone reads across a room. */
  addressLetters: 120,
} as const;

const { stand, lintCleaners } = decisionTable.ginning;
const farmIds = farms.map(({ id }) => id);

const letters = v.pipe(v.string(), v.maxLength(kioskLimits.greetingLetters));
const hour = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(24));
const within = ({ low, high }: { readonly low: number; readonly high: number }) =>
  v.pipe(v.number(), v.minValue(low), v.maxValue(high));
const alike = (list: readonly string[]) => new Set(list).size === list.length;

/** A page's address without query or hash; a season's own is put behind it. '' where phones cannot reach one. */
const addressForm = /^https?:\/\/[^\s?#]+$/;
const isAddress = (text: string) => text === '' || (addressForm.test(text) && URL.canParse(text));

/** The site's own gin: ginned as it gins, with the cotton of one of the six farms. */
const ownGin = v.strictObject({
  farm: v.picklist(farmIds),
  stand: v.picklist(stand.options),
  lintCleaners: v.pipe(within(lintCleaners), v.integer()),
  greeting: v.strictObject({ en: letters, es: letters }),
});

/** What each field may be. */
const fields = {
  mmPerPx: within(kioskLimits.mmPerPx),
  languages: v.pipe(
    v.array(v.picklist(languages)),
    v.minLength(1),
    v.check((list) => alike(list)),
  ),
  volume: v.pipe(within(kioskLimits.volume), v.integer()),
  scenarios: v.pipe(
    v.array(v.picklist(farmIds)),
    v.minLength(1),
    v.check((list) => alike(list)),
  ),
  ownGin: v.nullable(ownGin),
  phoneAddress: v.pipe(v.string(), v.maxLength(kioskLimits.addressLetters), v.check(isAddress)),
  hours: v.pipe(
    v.strictObject({ from: hour, to: hour }),
    v.check(({ from, to }) => from < to),
  ),
  highContrast: v.boolean(),
} as const;
export type KioskField = keyof typeof fields;
export const kioskFields = Object.keys(fields) as readonly KioskField[];

export type OwnGin = v.InferOutput<typeof ownGin>;

/** What an installer sets once, on the device it stands in. */
export interface KioskSettings {
  /** Size of a CSS pixel on the glass, mm: every size on the page follows from it. */
  readonly mmPerPx: number;
  /** Languages offered, the site's own first. */
  readonly languages: readonly Language[];
  /** Loudness of what is read aloud at the start of each visit, 0 to 100. */
  readonly volume: number;
  /** Farms shown by turns, by id. */
  readonly scenarios: readonly string[];
  /** The gin that the kiosk stands in; it takes its turn among the farms. Null where it stands in none. */
  readonly ownGin: OwnGin | null;
  /** Where a visitor's phone finds this product; '' where it cannot, and then no code is shown. */
  readonly phoneAddress: string;
  /** Opening hours, whole hours of the day, from before to. */
  readonly hours: { readonly from: number; readonly to: number };
  readonly highContrast: boolean;
}

/** A new kiosk: a 21.5 inch screen of 1920 x 1080, both languages, all six farms, open round the clock. */
export const newKiosk: KioskSettings = {
  mmPerPx: 0.248,
  languages: ['en', 'es'],
  volume: 50,
  scenarios: farmIds,
  ownGin: null,
  phoneAddress: '',
  hours: { from: 0, to: 24 },
  highContrast: false,
};

/** Whether a value may stand in a field. */
export const mayStand = (field: KioskField, value: unknown): boolean => v.safeParse(fields[field], value).success;

/**
 * Settings from a value of unknown origin: a field that is missing or junk takes its default, an unknown one is left out.
 * @returns the settings, and the fields whose value could not stand
 */
export function readSettings(input: unknown): { readonly settings: KioskSettings; readonly junk: readonly string[] } {
  const given = typeof input === 'object' && input !== null ? (input as Readonly<Record<string, unknown>>) : {};
  const own = (field: string) => Object.hasOwn(given, field);
  const settings = Object.fromEntries(
    kioskFields.map((field) => [
      field,
      own(field) && mayStand(field, given[field]) ? structuredClone(given[field]) : newKiosk[field],
    ]),
  );
  const junk = [
    ...kioskFields.filter((field) => own(field) && !mayStand(field, given[field])),
    ...Object.keys(given).filter((field) => !kioskFields.some((known) => known === field)),
  ];
  return { settings: settings as unknown as KioskSettings, junk };
}

/** Where the device keeps them. */
export const settingsPlace = 'seamfield.kiosk.1';

/** The settings of this device; the defaults where storage is shut, empty or holds junk. */
export function keptSettings(): KioskSettings {
  try {
    return readSettings(JSON.parse(localStorage.getItem(settingsPlace) ?? '{}')).settings;
  } catch {
    return newKiosk;
  }
}

/**
 * Keeps the settings on this device.
 * @returns whether it could: storage may be shut or full
 */
export function keepSettings(settings: KioskSettings): boolean {
  try {
    localStorage.setItem(settingsPlace, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
}
