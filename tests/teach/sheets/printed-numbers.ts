import type { EvalFunction, Fraction } from 'mathjs';
import { all, create } from 'mathjs';

/** A general-purpose library for exact fractions: what a pupil works out on paper, without binary rounding. */
export const math = create(all!, { number: 'Fraction' });

/** The number in a printed amount such as '1,480 lb', '−1.10 ¢/lb' or '$12.50'. */
export function printedNumber(text: string): string {
  const found = /[−+]?\$?[\d,]*\d(?:\.\d+)?/.exec(text);
  if (!found) throw new Error(`no number in ${text}`);
  return found[0].replaceAll(',', '').replace('$', '').replace('−', '-').replace('+', '');
}

const patterns = new Map<string, RegExp>();
function patternOf(template: string): RegExp {
  const known = patterns.get(template);
  if (known) return known;
  const seen = new Set<string>();
  const source = template.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{(\w+)\}/g, (_whole, name: string) => {
    if (seen.has(name)) return `\\k<${name}>`;
    seen.add(name);
    return `(?<${name}>.+?)`;
  });
  const pattern = new RegExp(`^${source}$`);
  patterns.set(template, pattern);
  return pattern;
}

/** What stands in a printed text where its template has names in braces. */
export function readPrinted(text: string, template: string): Record<string, string> {
  const found = patternOf(template).exec(text);
  if (!found) throw new Error(`${text} does not follow ${template}`);
  return { ...found.groups };
}

const compiled = new Map<string, EvalFunction>();
/** An exact sum from printed numbers. */
export function exactly(expression: string, numbers: Readonly<Record<string, string>>): Fraction {
  const code = compiled.get(expression) ?? math.compile(expression);
  compiled.set(expression, code);
  return code.evaluate(
    Object.fromEntries(Object.entries(numbers).map(([name, digits]) => [name, math.fraction(digits)])),
  ) as Fraction;
}

/** How a pupil is told to round, read from the words beside the question. */
interface PrintedRule {
  readonly way: 'exact' | 'nearest' | 'down' | 'up';
  /** To whole numbers of these. */
  readonly step: string;
}

const rules: readonly (readonly [RegExp, (found: RegExpExecArray) => PrintedRule])[] = [
  [/^$/, () => ({ way: 'exact', step: '1' })],
  [/^(to the nearest whole number|al número entero más cercano)$/, () => ({ way: 'nearest', step: '1' })],
  [
    /^(?:to|a) (\d) decimal(?:s|es)?$/,
    ([, decimals]) => ({ way: 'nearest', step: `0.${'0'.repeat(Number(decimals) - 1)}1` }),
  ],
  [/^(whole ones only|solo enteros)$/, () => ({ way: 'down', step: '1' })],
  [/^(up to the next whole number|hacia arriba, al entero siguiente)$/, () => ({ way: 'up', step: '1' })],
  [/^(?:up to the next|hacia arriba, al siguiente) ([\d.]+)$/, ([, step]) => ({ way: 'up', step: step! })],
];

/** @throws Error when the words say no rule that a pupil would know */
export function readRule(words: string): PrintedRule {
  for (const [pattern, ruleOf] of rules) {
    const found = pattern.exec(words);
    if (found) return ruleOf(found);
  }
  throw new Error(`no rule of rounding: ${words}`);
}

/** Rounds an exact fraction as taught: the nearest half goes away from zero. What is exact stays as it is. */
export function roundedAs({ way, step }: PrintedRule, value: Fraction): Fraction {
  if (way === 'exact') return value;
  const unit = math.fraction(step);
  const steps = value.abs().div(unit);
  const whole = way === 'down' ? steps.floor() : way === 'up' ? steps.ceil() : steps.add(math.fraction('0.5')).floor();
  return whole.mul(unit).mul(value.s < 0n ? -1 : 1);
}
