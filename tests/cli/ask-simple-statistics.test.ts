import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.ts';
import { meets } from '../../src/checks/judge-check.ts';
import { askSimpleStatistics } from '../../src/cli/ask-simple-statistics.ts';

const asked = allChecks.flatMap((check) =>
  check.tool?.name === 'simple-statistics' ? [{ id: check.id, call: check.tool.call, expected: check.expected }] : [],
);

test('the table asks for means, spreads and quantiles of more than ten samples', () => {
  expect(asked.length).toBeGreaterThan(10);
});

test.each(asked)('$id: the tool still says what the table expects', async ({ call, expected }) => {
  const answer = await askSimpleStatistics(call);
  expect(answer === null ? Number.NaN : meets(expected, answer), `${call} is ${answer}`).toBe(true);
});

test.each(['mean(nothing)', 'median(medium)', 'medium', ''])('a call of another form is refused: %s', async (call) => {
  await expect(askSimpleStatistics(call)).rejects.toThrow(RangeError);
});
