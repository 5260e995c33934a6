import type { PluralForms } from './fill.ts';
import { type Language, localeOf } from './language.ts';

/** Plain numbers, counts, money, lists and plurals, written as the reader's locale writes them. */
export interface NumberFormats {
  /** A number with a fixed number of decimals; a minus sign, never a hyphen; no minus zero. */
  number(value: number, decimals: number): string;
  /** A whole count, grouped by threes. */
  count(value: number): string;
  /** Per cent of a hundred: 34.5 gives '34.5%'. */
  percent(value: number, decimals?: number): string;
  /** US dollars. */
  money(dollars: number, decimals?: number): string;
  /** A very small or very large number as 3.1 × 10⁻¹⁶. */
  powerOfTen(value: number): string;
  /** Words joined with 'and', as the language does it. */
  list(words: readonly string[]): string;
  /** Words joined with 'or'. */
  either(words: readonly string[]): string;
  /** The form of a word that goes with a count as written, with {n} filled in; 1.0 counts as many, as speech has it. */
  plural(count: number, forms: PluralForms, decimals?: number): string;
}

const raised: Record<string, string> = {
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
  '-': '⁻',
};

/** Number formats of a language. Both locales use the decimal point and the comma between thousands. */
export function makeNumberFormats(language: Language): NumberFormats {
  const locale = localeOf(language);
  const byDecimals = new Map<number, Intl.NumberFormat>();
  const number = (value: number, decimals: number): string => {
    let format = byDecimals.get(decimals);
    if (!format) {
      format = new Intl.NumberFormat(locale, {
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
      });
      byDecimals.set(decimals, format);
    }
    // A number that rounds to nothing carries no sign.
    return format
      .format(value)
      .replace(/^-(?=[0.]*$)/, '')
      .replace('-', '−');
  };
  const and = new Intl.ListFormat(locale, { type: 'conjunction' });
  const or = new Intl.ListFormat(locale, { type: 'disjunction' });
  const rulesByDecimals = new Map<number, Intl.PluralRules>();
  const rulesFor = (decimals: number): Intl.PluralRules => {
    let rules = rulesByDecimals.get(decimals);
    if (!rules) {
      rules = new Intl.PluralRules(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
      rulesByDecimals.set(decimals, rules);
    }
    return rules;
  };
  return {
    number,
    count: (value) => number(value, 0),
    percent: (value, decimals = 1) => `${number(value, decimals)}%`,
    money: (dollars, decimals = 2) => `${dollars < 0 ? '−' : ''}$${number(Math.abs(dollars), decimals)}`,
    powerOfTen: (value) => {
      if (value === 0) return '0';
      const exponent = Math.floor(Math.log10(Math.abs(value)));
      const superscript = [...String(exponent)].map((sign) => raised[sign] ?? sign).join('');
      return `${number(value / 10 ** exponent, 1)} × 10${superscript}`;
    },
    list: (words) => and.format(words),
    either: (words) => or.format(words),
    plural: (count, forms, decimals = Number.isInteger(count) ? 0 : 1) => {
      const rule = rulesFor(decimals).select(count);
      const form = rule === 'one' ? forms.one : rule === 'many' ? (forms.many ?? forms.other) : forms.other;
      return form.replace('{n}', number(count, decimals));
    },
  };
}
