import { farmOf } from '../../model/farms.ts';
import type { Checked } from '../../model/problem.ts';
import { checkScenario, type Scenario } from '../../model/scenario.ts';

/** The largest farm file that is read, bytes: some fifty times what the longest texts and every decision take. */
export const mostFarmBytes = 200_000;
const bytesPerKilobyte = 1000;

/** What is wrong with a file that cannot be a farm at all. */
export const noFarmFile = (name: string, value: 'not JSON' | 'too large') => ({
  field: name,
  value,
  rule: { kind: 'type', expected: `a farm as JSON, at most ${mostFarmBytes / bytesPerKilobyte} kB` } as const,
});

/**
 * Reads a farm file as the command line does, and checks every field.
 * @param name the file's name, for what is said of it
 */
export function readFarmFile(text: string, name: string): Checked<Scenario> {
  if (text.length > mostFarmBytes) return { ok: false, problems: [noFarmFile(name, 'too large')] };
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { ok: false, problems: [noFarmFile(name, 'not JSON')] };
  }
  return checkScenario(input);
}

/** The file of a farm: laid out as the six farms' own files are. */
export const farmFileText = (scenario: Scenario): string => `${JSON.stringify(scenario, null, 2)}\n`;

const idLetters = '0123456789abcdefghijklmnopqrstuvwxyz';
const idLength = 8;

/** An id that no farm on another device has: links tell whose name they may show by it. */
export function newFarmId(): string {
  const chance = crypto.getRandomValues(new Uint32Array(idLength));
  return `own-${[...chance].map((value) => idLetters[value % idLetters.length]).join('')}`;
}

/** Whether a farm may go by its own id here: the six and other farms of this device keep theirs. */
export const isFreeId = (id: string, taken: (id: string) => Scenario | undefined): boolean =>
  farmOf(id) === undefined && taken(id) === undefined;
