import { readFileSync } from 'node:fs';
import { baleCommand } from './bale-command.ts';
import { ChecksFailed, checksCommand } from './checks-command.ts';
import { clothCommand } from './cloth-command.ts';
import { helpOf, helpText } from './help.ts';
import { InputError } from './input-error.ts';
import { seasonCommand } from './season-command.ts';
import { traceCommand } from './trace-command.ts';

/** What a command may touch of the outside. Results go to out, everything else to say. */
export interface Io {
  readonly out: (text: string) => void;
  readonly say: (text: string) => void;
  /** Reads a text file; throws as node:fs does. */
  readonly readFile: (path: string) => string;
}

const processIo: Io = {
  out: (text) => process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
  say: (text) => process.stderr.write(`${text}\n`),
  readFile: (path) => readFileSync(path, 'utf8'),
};

const commands: Readonly<Record<string, (args: readonly string[], io: Io) => void>> = {
  season: seasonCommand,
  bale: baleCommand,
  cloth: clothCommand,
  trace: traceCommand,
  checks: checksCommand,
};

/**
 * Runs one command.
 * @param argv the words after the program's name
 * @returns the exit code: 0 for a result (a failed crop is one), 1 when a check failed, 2 for bad input
 */
export function run(argv: readonly string[], io: Io = processIo): number {
  const [name, ...args] = argv;
  try {
    if (name === undefined || name === '--help' || name === 'help') {
      io.out(helpText());
      return 0;
    }
    const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
    if (!command) throw new InputError(`command: ${name} is not known; allowed: ${Object.keys(commands).join(', ')}`);
    if (args.includes('--help')) io.out(helpOf(name));
    else command(args, io);
    return 0;
  } catch (error) {
    if (!(error instanceof InputError || error instanceof ChecksFailed)) throw error;
    io.say(`seamfield: ${error.message}`);
    return error instanceof InputError ? 2 : 1;
  }
}
