import type { Fraction } from 'mathjs';
import { all, create } from 'mathjs';

/** A general-purpose library for exact fractions: what a pupil works out on paper, without binary rounding. */
export const math = create(all!, { number: 'Fraction' });

/** The number in a printed amount such as '1,480 lb', '−1.10 ¢/lb' or '$12.50'. */
export function printedNumber(text: string): string {
  const found = /[−+]?\$?[\d,]*\d(?:\.\d+)?/.exec(text);
  if (!found) throw new Error(`no number in ${text}`);
  return found[0].replaceAll(',', '').replace('$', '').replace('−', '-').replace('+', '');
}

/** What stands in a printed text where its template has names in braces. */
export function readPrinted(text: string, template: string): Record<string, string> {
  const seen = new Set<string>();
  const pattern = template.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{(\w+)\}/g, (_whole, name: string) => {
    if (seen.has(name)) return `\\k<${name}>`;
    seen.add(name);
    return `(?<${name}>.+?)`;
  });
  const found = new RegExp(`^${pattern}$`).exec(text);
  if (!found) throw new Error(`${text} does not follow ${template}`);
  return { ...found.groups };
}

/** An exact sum from printed numbers. */
export const exactly = (expression: string, numbers: Readonly<Record<string, string>>): Fraction => {
  const scope = Object.fromEntries(Object.entries(numbers).map(([name, digits]) => [name, math.fraction(digits)]));
  return math.evaluate(expression, scope) as Fraction;
};

/** Rounds an exact fraction as taught: a half goes away from zero. */
export function roundedTo(value: Fraction, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const top = value.n * scale * 2n + value.d;
  const whole = top / (2n * value.d);
  const digits = whole.toString().padStart(decimals + 1, '0');
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return value.s < 0n && whole > 0n ? `-${text}` : text;
}
