import { fill } from './fill.ts';
import type { Messages } from './messages/en.ts';

/** The name of a machine of the model, whose id may end in a number: 'lintCleaner2' becomes 'Lint cleaner 2'. */
export function machineName(id: string, messages: Messages): string {
  const { machines, machineNumber } = messages.scenes;
  const [, base = id, number = ''] = /^(.*?)(\d*)$/.exec(id) ?? [];
  const name = (machines as Readonly<Record<string, string>>)[base] ?? base;
  return number ? fill(machineNumber, { name, number }) : name;
}
