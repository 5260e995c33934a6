import { parseArgs } from 'node:util';
import { badInput, InputError } from './input-error.ts';

/** The options of a command: a flag stands alone, a value takes one. */
export type OptionKinds = Readonly<Record<string, 'flag' | 'value'>>;
export type Options = Readonly<Record<string, string | true | undefined>>;

/** A negative number after an option is its value, which the standard parser takes for another option. */
function withNegatives(args: readonly string[]): string[] {
  const joined: string[] = [];
  for (const arg of args) {
    const before = joined.at(-1);
    if (/^-[\d.]/.test(arg) && before?.startsWith('--') && !before.includes('='))
      joined[joined.length - 1] = `${before}=${arg}`;
    else joined.push(arg);
  }
  return joined;
}

/**
 * Reads options.
 * @throws InputError for an option that is not known, given twice, or without its value, naming those that are
 */
export function readOptions(args: readonly string[], kinds: OptionKinds): Options {
  try {
    const { values, tokens } = parseArgs({
      args: withNegatives(args),
      options: Object.fromEntries(
        Object.entries(kinds).map(([name, kind]) => [name, { type: kind === 'flag' ? 'boolean' : 'string' }] as const),
      ),
      strict: true,
      allowPositionals: false,
      tokens: true,
    });
    const seen = new Set<string>();
    for (const token of tokens) {
      if (token.kind !== 'option') continue;
      if (seen.has(token.name)) throw badInput(`--${token.name}`, 'given twice', 'once');
      seen.add(token.name);
    }
    return values as Options;
  } catch (error) {
    if (error instanceof InputError) throw error;
    const first = (error as Error).message.split(/[.\n]/)[0]!;
    const known = Object.keys(kinds)
      .map((name) => `--${name}`)
      .join(' ');
    throw new InputError(`options: ${first}; allowed: ${known}`);
  }
}

/** The text of an option, or undefined. */
export const textOf = (options: Options, name: string): string | undefined => {
  const value = options[name];
  return typeof value === 'string' ? value : undefined;
};

/** One of a few words. */
export function readChoice<Choice extends string>(option: string, text: string, choices: readonly Choice[]): Choice {
  const found = choices.find((choice) => choice === text);
  if (found === undefined) throw badInput(`--${option}`, text, choices.join(', '));
  return found;
}
