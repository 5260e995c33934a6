import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import { judgeCheck } from '../../src/checks/judge-check.ts';
import { agreesWith, askTool } from '../../src/cli/outside-tools.ts';

// The check table keeps what a general tool answered. Here the tools are asked again.
const asked = allChecks.flatMap(({ id, expected, tool }) =>
  tool ? [{ id, expected, tool, answer: askTool(tool) }] : [],
);
const absent = (name: string) => asked.some(({ tool, answer }) => tool.name === name && answer === null);

test.each([
  ['units', 15],
  ['psychrolib', 10],
  ['simple-statistics', 15],
] as const)('%s is asked for %i figures or more', (name, atLeast) => {
  expect(asked.filter(({ tool }) => tool.name === name).length).toBeGreaterThanOrEqual(atLeast);
});

// The packages come with the development ones; only the program may be missing.
test.each(['psychrolib', 'simple-statistics'])('%s is here to be asked', (name) => {
  expect(absent(name)).toBe(false);
});

test.each(
  asked.map(
    (row) =>
      [`${row.id} — ${row.tool.name}${row.answer === null ? ', NOT RUN: not installed here' : ''}`, row] as const,
  ),
)('%s', (_name, { id, expected, answer }) => {
  // Without the tool the table's own figure is still held.
  if (answer === null) expect(judgeCheck(allChecks.find((check) => check.id === id)!).passed).toBe(true);
  else expect(agreesWith(expected, answer), `the tool says ${answer}`).toBe(true);
});

test('a figure in the table that is off by more than the tool’s digits would be noticed', () => {
  for (const { id, expected, answer } of asked) {
    if (answer === null || expected.kind !== 'near') continue;
    const off = { kind: 'near', value: expected.value * 1.002, tolerance: Math.abs(expected.value) } as const;
    expect(agreesWith(off, answer), id).toBe(false);
  }
});
