import { onOneLine, type Problem, type Rule } from '../model/problem.ts';
import { fill } from './fill.ts';
import type { Formats } from './formats.ts';
import type { Messages } from './messages/en.ts';
import { phrase } from './phrase.ts';

const decimalsOf = (value: number): number => [0, 1, 2].find((n) => Number.isInteger(value * 10 ** n)) ?? 3;

function allowed(rule: Rule, messages: Messages, formats: Formats): string {
  const { problems } = messages;
  switch (rule.kind) {
    case 'choice':
      return formats.either(rule.options);
    case 'type':
      return phrase(rule.expected, problems.phrases);
    case 'range': {
      const unit = problems.units[rule.unit] ?? rule.unit;
      const range = fill(unit ? problems.rangeUnit : problems.range, {
        low: formats.number(rule.low, decimalsOf(rule.low)),
        high: formats.number(rule.high, decimalsOf(rule.high)),
        unit,
      });
      return rule.step
        ? range + fill(problems.steps, { step: formats.number(rule.step, decimalsOf(rule.step)) })
        : range;
    }
  }
}

/** A problem as one line in the reader's language: the field, the value and what is allowed. */
export const problemText = (problem: Problem, messages: Messages, formats: Formats): string =>
  fill(messages.problems.line, {
    field: onOneLine(problem.field),
    value:
      problem.value === 'nothing'
        ? messages.problems.nothing
        : phrase(onOneLine(problem.value), messages.problems.phrases),
    allowed: allowed(problem.rule, messages, formats),
  });
