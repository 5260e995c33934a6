import { expect, test } from 'vitest';
import type { Check } from '../../src/checks/check.ts';
import { ChecksFailed, checksCommand } from '../../src/cli/checks-command.ts';
import { run } from '../../src/cli/main.ts';
import { runChecks } from '../../src/cli/run-checks.ts';

const row = {
  link: 'gin',
  what: 'an invented row',
  source: 'an invented source',
  unit: 'kg',
  expected: { kind: 'near', value: 10, tolerance: 0.5 },
} as const;
const holds: Check = { ...row, id: 'holds', kind: 'exact', ours: () => 10.4 };
const sum: Check = { ...row, id: 'sum', kind: 'plainSum', ours: () => 10 };
const fails: Check = { ...row, id: 'fails', kind: 'notTuned', ours: () => 12 };
const asks: Check = { ...holds, id: 'asks', tool: { name: 'units', from: 'x', to: 'y' } };
const misses: Check = {
  ...row,
  id: 'misses',
  kind: 'knownMiss',
  recorded: { value: 14, tolerance: 0.1 },
  reason: 'the bolls are invented',
  ours: () => 14,
};

function command(args: readonly string[], checks: readonly Check[]) {
  let out = '';
  const io = {
    out: (text: string) => {
      out += text;
    },
    say: () => {},
    readFile: () => '',
  };
  const work = () => checksCommand(args, io, () => runChecks(checks, () => null));
  return { work, said: () => out };
}

test('--json holds the six counts and nothing else', () => {
  const { work, said } = command(['--json'], [holds, sum, misses, asks]);
  work();
  expect(JSON.parse(said())).toStrictEqual({
    counted: 1,
    definition: 0,
    plainSum: 1,
    knownMiss: 1,
    failed: 0,
    notRun: 1,
  });
});

test('a failed check is told after the result, and by name', () => {
  const { work, said } = command(['--json'], [holds, fails]);
  expect(work).toThrow(new ChecksFailed('checks failed: fails'));
  expect(JSON.parse(said())).toMatchObject({ counted: 1, failed: 1 });
});

test('in words: the counts, each known miss with both figures and its reason, what failed and what was not run', () => {
  const { work, said } = command([], [holds, sum, misses, fails, asks]);
  expect(work).toThrow(ChecksFailed);
  expect(said()).toContain('1 outside checks hold: 1 exact, 0 calibrated, 0 not tuned');
  expect(said()).toContain('1 known misses, 1 failed, 1 not run');
  expect(said()).toContain(
    'misses: an invented row\n  published 10 ± 0.5 kg, ours 14 (an invented source)\n  the bolls are invented',
  );
  expect(said()).toContain('Failed\nfails: an invented row\n  published 10 ± 0.5 kg, ours 12');
  expect(said()).toContain('asks: asks units');
});

test('an unknown option is one line with the option and what is allowed, and code 2', () => {
  const said: string[] = [];
  const code = run(['checks', '--jason'], { out: () => {}, say: (line) => said.push(line), readFile: () => '' });
  expect(code).toBe(2);
  expect(said).toHaveLength(1);
  expect(said[0]).toMatch(/^seamfield: .*--jason.*allowed: --json$/);
});
