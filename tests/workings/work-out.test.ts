import { compile } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { workingWords as english } from '../../src/language/messages/en/working-words.ts';
import { workingWords as spanish } from '../../src/language/messages/es/working-words.ts';
import type { Season } from '../../src/model/season.ts';
import type { StationId } from '../../src/model/station.ts';
import { KG_PER_POUND } from '../../src/model/units.ts';
import { formulaTexts } from '../../src/workings/formula-texts.ts';
import { workOut } from '../../src/workings/work-out.ts';
import type { FormulaWorking, Name, Working } from '../../src/workings/working.ts';
import { askedOf, farmSeasons } from './farm-seasons.ts';

const workingsOf = (season: Season) =>
  askedOf(season).flatMap((asked) => {
    const working = workOut(season, asked);
    return working ? [{ asked: JSON.stringify(asked), working }] : [];
  });

/** What each formula of a working gives with the inputs listed, and what the working says it gives. */
function sides({ formula, inputs, exact, first }: FormulaWorking): (readonly [worked: number, said: number])[] {
  const letters = Object.fromEntries([...inputs, ...first].map(({ symbol, value }) => [symbol, value.value]));
  const worked = (id: FormulaWorking['formula']): number => compile(formulaTexts[id]).evaluate({ ...letters });
  return [
    ...first.map((each) => [worked(each.formula), each.value.value] as const),
    [worked(formula), exact.value] as const,
  ];
}
const apart = (a: number, b: number) => Math.abs(a - b) / Math.max(1, Math.abs(b));

/** The number that a page prints of a working, in the unit of the formula. */
function printedNumber({ result, exact }: FormulaWorking): number {
  if (!('value' in result)) return Number.NaN;
  return result.as === 'mass' && exact.unit === 'pounds' ? result.value / KG_PER_POUND : result.value;
}

describe.each(farmSeasons)('%s', (_, season) => {
  const workings = workingsOf(season);
  const formulas = workings.flatMap(({ asked, working }) => (working.kind === 'formula' ? [{ asked, working }] : []));

  test('has a working for most of its numbers', () => {
    expect(workings.length).toBeGreaterThan(100);
    expect(formulas.length).toBeGreaterThan(20);
  });

  test('every formula gives its number from the inputs it lists (worked out by mathjs)', () => {
    for (const { asked, working } of formulas) {
      for (const [worked, said] of sides(working)) {
        expect(apart(worked, said), `${asked}: ${worked} and ${said}`).toBeLessThan(1e-9);
      }
    }
  });

  test('what is printed is what the formula gave; what is paid out carries a minus sign', () => {
    for (const { asked, working } of formulas) {
      const printed = printedNumber(working);
      const paid = asked.includes('"money"') ? Math.abs(printed) : printed;
      expect(apart(paid, working.exact.value), asked).toBeLessThan(1e-9);
    }
  });

  test('no step is without a name or a number', () => {
    for (const { asked, working } of workings) {
      const lines = working.kind === 'formula' ? working.inputs : working.steps;
      expect(lines.length, asked).toBeGreaterThan(0);
      for (const { value } of lines) {
        if ('value' in value) expect(Number.isFinite(value.value), asked).toBe(true);
      }
    }
  });
});

test.each(farmSeasons)('%s: a day is given because what it waited for came on that day and not before', (_, season) => {
  const asked = (station: StationId, key: string) => workOut(season, { topic: 'reading', station, key });
  const figureOf = (working: Working | null, word: string): number => {
    const found =
      working?.kind === 'procedure'
        ? working.steps.find(({ name }) => 'word' in name && name.word === word)
        : undefined;
    return found && 'value' in found.value ? found.value.value : Number.NaN;
  };
  const opened = asked('boll', 'firstOpenBoll');
  expect(figureOf(opened, 'ripeDayBefore')).toBeLessThan(100);
  expect(figureOf(opened, 'ripeThatDay')).toBeGreaterThan(100 - 1e-6);
  const stages: readonly (readonly [StationId, string])[] = [
    ['planting', 'emerged'],
    ['planting', 'firstSquare'],
    ['bloom', 'firstFlower'],
  ];
  for (const [station, key] of stages) {
    const working = asked(station, key);
    const shift = figureOf(working, 'varietyShift');
    const heat = figureOf(working, 'heatNeeded') + (Number.isNaN(shift) ? 0 : shift);
    const days = figureOf(working, 'daysNeeded');
    expect(figureOf(working, 'heatThatDay'), key).toBeGreaterThanOrEqual(heat - 1e-6);
    // The day before either the heat or the days still lacked.
    const lackedDays = figureOf(working, 'daysPassed') - 1 < days;
    expect(figureOf(working, 'heatDayBefore') < heat || lackedDays, key).toBe(true);
  }
});

test('a working whose input is not the one computed with is seen', () => {
  const [, season] = farmSeasons[0]!;
  const working = workOut(season, { topic: 'reading', station: 'ginning', key: 'turnout' });
  if (working?.kind !== 'formula') throw new Error('the turnout is a formula');
  const [input, ...rest] = working.inputs;
  const wrong = {
    ...working,
    inputs: [{ ...input!, value: { ...input!.value, value: input!.value.value * 1.001 } }, ...rest],
  };
  const [worked, said] = sides(wrong)[0]!;
  expect(apart(worked, said)).toBeGreaterThan(1e-9);
});

describe.each([
  ['English', english],
  ['Spanish', spanish],
])('in %s', (_, words) => {
  const wordsOf = (working: Working): Name[] =>
    (working.kind === 'formula' ? [...working.inputs, ...working.first] : working.steps).map(({ name }) => name);
  test('every step has a name', () => {
    const used = new Set(
      farmSeasons.flatMap(([, season]) =>
        workingsOf(season).flatMap(({ working }) =>
          wordsOf(working).flatMap((name) => ('word' in name ? [name.word] : [])),
        ),
      ),
    );
    expect(used.size).toBeGreaterThan(100);
    expect([...used].filter((word) => !(word in words.names))).toEqual([]);
  });
});
