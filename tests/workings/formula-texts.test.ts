import fc from 'fast-check';
import { compile, parse, type SymbolNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type FormulaId, formulaTexts } from '../../src/workings/formula-texts.ts';
import { propertySeed, runs } from '../laws/runs.ts';
import { clothFormulas } from './cloth-formulas.ts';
import { fieldFormulas } from './field-formulas.ts';
import type { FormulaModel } from './formula-model.ts';
import { ginFormulas } from './gin-formulas.ts';
import { millFormulas } from './mill-formulas.ts';
import { moneyFormulas } from './money-formulas.ts';
import { traceFormulas } from './trace-formulas.ts';

const models: Readonly<Record<FormulaId, FormulaModel>> = {
  ...fieldFormulas,
  ...ginFormulas,
  ...moneyFormulas,
  ...millFormulas,
  ...clothFormulas,
  ...traceFormulas,
};

/** The model keeps about fifteen figures; a difference that loses some of them may still be told from a wrong formula. */
const tolerance = 1e-9;

/** Holds the text of a formula, worked out by mathjs, to the function of the model on random inputs. */
function holdToModel(text: string, { inputs, compute }: FormulaModel): void {
  const formula = compile(text);
  fc.assert(
    fc.property(inputs, (values) => {
      const ours = compute(values);
      const theirs: number = formula.evaluate({ ...values });
      expect(Number.isFinite(ours)).toBe(true);
      expect(Math.abs(theirs - ours)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(ours)));
    }),
    { seed: propertySeed, numRuns: runs(1000) },
  );
}

const texts = Object.entries(formulaTexts) as [FormulaId, string][];

describe('every formula that is shown is the one that is computed (worked out by mathjs)', () => {
  test.each(texts)('%s: %s', (id, text) => holdToModel(text, models[id]));
});

test.each(texts)('%s: every letter of the formula is drawn at random', (id, text) => {
  const names = parse(text)
    .filter((node, path) => node.type === 'SymbolNode' && path !== 'fn')
    .map((node) => (node as SymbolNode).name);
  const [drawn] = fc.sample(models[id].inputs, { seed: propertySeed, numRuns: 1 });
  for (const name of new Set(names)) expect(Object.keys(drawn!)).toContain(name);
});

describe('a wrong formula is seen', () => {
  test.each([
    ['a factor off by one part in ten thousand', 'lintYield', 'P * b * g / 453.6'],
    ['two letters changed about', 'turnout', '100 * S / L'],
    ['dry basis in the place of wet basis', 'moisture', '100 * w / d'],
    ['a rounding left out', 'modules', 'max(1, S / (0.45359237 * m))'],
    ['a limit left out', 'strengthUse', 'max(l, (u + a * (L - q) + b * (n - m)) * (1 + g * p))'],
    ['a power left out', 'knitWeight', 'c * w / (l / 10) * l * T / 100'],
  ] as const)('%s', (_, id, wrong) => {
    expect(() => holdToModel(wrong, models[id])).toThrow();
  });
});
