import { compile, type EvalFunction } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { workingWords as english } from '../../src/language/messages/en/working-words.ts';
import { workingWords as spanish } from '../../src/language/messages/es/working-words.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { traceCases } from '../../src/model/trace/chain-averages.ts';
import { familiarFor } from '../../src/model/trace/familiar.ts';
import type { TraceRequest } from '../../src/model/trace/need.ts';
import { projectIds } from '../../src/model/trace/project-facts.ts';
import { seasonAverages, seasonClothOunces } from '../../src/model/trace/season-chain.ts';
import { traceInCases } from '../../src/model/trace/trace-cases.ts';
import { startIds, traceForward } from '../../src/model/trace/trace-forward.ts';
import type { Trace } from '../../src/model/trace/trace-project.ts';
import { formulaTexts } from '../../src/workings/formula-texts.ts';
import { type TraceKey, traceKeys, traceWorking } from '../../src/workings/trace-back.ts';
import type { TraceAccount } from '../../src/workings/trace-chain.ts';
import { forwardKeys, forwardWorking, piecesWorking } from '../../src/workings/trace-forward.ts';
import type { FormulaWorking, Working } from '../../src/workings/working.ts';

const seasons = farms.map((farm) => runSeason(farm, 1, null));
const requests: readonly TraceRequest[] = [
  ...projectIds.map((project) => ({ project, count: 2 })),
  { yards: 3, widthInches: 44, ouncesPerSquareYard: 4.3 },
];

function accounts(): TraceAccount[] {
  return [...seasons, null].flatMap((season) => {
    const averages = season ? seasonAverages(season) : {};
    return requests.map((request): TraceAccount => {
      const cases = traceInCases(request, averages);
      if (!cases.ok) throw new Error(JSON.stringify(request));
      return { request, season, averages, cases: cases.value };
    });
  });
}

const all = accounts();
const known = new Map<string, EvalFunction>();
/** A formula read by mathjs, once: reading takes longer than working out. */
function formulaOf(id: FormulaWorking['formula']) {
  const read = known.get(id) ?? compile(formulaTexts[id]);
  known.set(id, read);
  return read;
}

const numberOf: Readonly<Record<Exclude<TraceKey, 'familiar'>, (trace: Trace) => number>> = {
  cloth: (trace) => trace.clothKg,
  clothArea: (trace) => trace.clothSquareYards,
  batting: (trace) => trace.battingKg,
  yarn: (trace) => trace.yarnKg,
  yarnLength: (trace) => trace.yarnKilometres,
  lint: (trace) => trace.lintKg,
  bale: (trace) => 100 * trace.baleShare,
  fibres: (trace) => trace.fibres,
  seedCotton: (trace) => trace.seedCottonKg,
  bolls: (trace) => trace.bolls,
  plants: (trace) => trace.plants,
  field: (trace) => trace.squareMetres,
  row: (trace) => trace.rowFeet,
  rain: (trace) => trace.rainLitres,
  irrigation: (trace) => trace.irrigationLitres,
  seed: (trace) => trace.seedKg,
  oil: (trace) => trace.oilKg,
  meal: (trace) => trace.mealKg,
  hulls: (trace) => trace.hullsKg,
  linters: (trace) => trace.lintersKg,
  ginWaste: (trace) => trace.ginWasteKg,
  handDays: (trace) => trace.handPickingDays,
  machineMinutes: (trace) => trace.machinePickingMinutes,
};

const apart = (one: number, other: number) => Math.abs(one - other) / Math.max(1, Math.abs(other));
/** How far a formula, worked out by mathjs from the inputs it lists, lies from the number it is to explain. */
function worstOf({ formula, inputs, exact, first }: FormulaWorking): number {
  const values = Object.fromEntries([...inputs, ...first].map(({ symbol, value }) => [symbol, value.value]));
  const worked = (id: FormulaWorking['formula']): number => formulaOf(id).evaluate({ ...values });
  return Math.max(
    apart(worked(formula), exact.value),
    ...first.map((each) => apart(worked(each.formula), each.value.value)),
  );
}
const shown = (account: TraceAccount) =>
  traceKeys.filter((key) => key !== 'batting' || account.cases.middle.battingKg > 0);

describe('every number of the way back comes out of its formula and its inputs (worked out by mathjs)', () => {
  test('for every farm, project and case', () => {
    for (const account of all) {
      for (const at of traceCases) {
        const trace = account.cases[at];
        const { id } = familiarFor(account.cases.middle.squareMetres);
        for (const key of shown(account)) {
          const working = traceWorking(account, at, key, id, 'printed');
          expect(worstOf(working), `${key} ${at}`).toBeLessThan(1e-9);
          if (key !== 'familiar') expect(working.exact.value, key).toBe(numberOf[key](trace));
        }
      }
    }
  });
  test('an input that was not computed with is seen', () => {
    const [account] = all;
    const working = traceWorking(account!, 'middle', 'bolls', 'plywood', 'printed');
    const [first, ...rest] = working.inputs;
    const wrong = { ...first!, value: { ...first!.value, value: 1.01 * first!.value.value } };
    expect(worstOf({ ...working, inputs: [wrong, ...rest] })).toBeGreaterThan(1e-9);
  });
});

test.each(startIds)('every number of the way forward from %s comes out of its formula', (start) => {
  for (const season of [...seasons, null]) {
    const averages = season ? seasonAverages(season) : {};
    const ounces = (season && seasonClothOunces(season)) ?? 3.66;
    const forward = traceForward({ start, count: 3, ouncesPerSquareYard: ounces }, averages);
    if (!forward.ok) throw new Error(start);
    for (const key of forwardKeys) {
      const working = forwardWorking({ season, averages, forward: forward.value }, key, 'printed');
      if (working.kind === 'formula') expect(worstOf(working), key).toBeLessThan(1e-9);
      else expect(key).toBe('bolls');
    }
  }
});
test('a bale makes 215 jeans of 2.23 lb of lint each (National Cotton Council, one bale makes; by division)', () => {
  const working = piecesWorking(480, 480 / 215, 'printed');
  expect(working.exact.value).toBeCloseTo(215, 9);
});

test.each([
  ['English', english],
  ['Spanish', spanish],
])('%s has a name and a unit for everything in them', (_, words) => {
  const names: Readonly<Record<string, string>> = words.names;
  const workings: Working[] = all.flatMap((account) =>
    traceCases.flatMap((at) => shown(account).map((key) => traceWorking(account, at, key, 'plywood', 'printed'))),
  );
  const missing = new Set<string>();
  for (const working of workings) {
    if (working.kind !== 'formula') continue;
    for (const { name, value } of [...working.inputs, ...working.first]) {
      if ('word' in name && !names[name.word]) missing.add(name.word);
      if (words.units[value.unit] === undefined) missing.add(value.unit);
    }
  }
  expect([...missing]).toEqual([]);
});
