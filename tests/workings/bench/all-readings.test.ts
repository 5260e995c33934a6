import { compile } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { bench as english } from '../../../src/language/messages/en/bench.ts';
import { workingWords } from '../../../src/language/messages/en/working-words.ts';
import { benchOutcome, benchOutcomeKeys } from '../../../src/model/bench/outcomes.ts';
import { cardOf } from '../../../src/model/bench/set-up.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { plainSetUp } from '../../../src/statechart/saved-bench.ts';
import { allReadings, readingOfOutcome } from '../../../src/workings/bench/all-readings.ts';
import { threadReadings } from '../../../src/workings/bench/thread-readings.ts';
import { formulaTexts } from '../../../src/workings/formula-texts.ts';

const benches = {
  'quilting of middling upland': plainSetUp('uplandMedium', 'quilting'),
  'lawn of Pima, plied warp, twist of its own': { ...plainSetUp('pima', 'lawn'), warp: '80/2Ne', twist: 4 },
  'denim of rotor yarn, a mix of bales': {
    ...plainSetUp('uplandMedium', 'denim'),
    system: 'rotor' as const,
    bales: [
      { ...cardOf('uplandMedium'), netLb: 480 },
      { ...cardOf('pima'), netLb: 500 },
    ],
  },
  interlock: plainSetUp('pima', 'interlock'),
  jersey: plainSetUp('uplandShort', 'jersey'),
  'a yarn out of reach': { ...plainSetUp('desi', 'batiste'), warp: '120Ne', weft: '120Ne' },
};

describe.each(Object.entries(benches))('%s', (_, setUp) => {
  const bench = workBench(setUp);
  const readings = allReadings(bench);
  const all = [...readings.fibre, ...readings.yarn, ...readings.weft, ...readings.cloth];

  test('every formula gives its number from the inputs it lists (worked out by mathjs)', () => {
    for (const { key, working } of all) {
      if (working.kind !== 'formula') continue;
      const letters = Object.fromEntries(
        [...working.first, ...working.inputs].map((each) => [each.symbol, each.value.value]),
      );
      const worked = compile(formulaTexts[working.formula]).evaluate({ ...letters });
      expect(Math.abs(worked - working.exact.value) / Math.max(1, Math.abs(worked)), key).toBeLessThan(1e-9);
    }
  });
  test('every number that a formula gives is the one that is printed', () => {
    for (const { key, shown, working } of all)
      if (working.kind === 'formula' && 'value' in shown && shown.as !== 'fibreLength' && shown.as !== 'yarnCount')
        expect(shown.value, key).toBeCloseTo(working.exact.value, 9);
  });
  test('every step has a name, and every figure too', () => {
    const names = { ...workingWords.names, ...english.names };
    for (const { key, working } of all) {
      if (!key.startsWith('waste.')) expect(english.numbers[key], key).toBeTruthy();
      for (const { name } of working.kind === 'formula' ? [...working.first, ...working.inputs] : working.steps)
        if ('word' in name) expect(Object.keys(names)).toContain(name.word);
    }
  });
  test('what a bench is compared by is printed from the same number', () => {
    for (const outcome of benchOutcomeKeys) {
      const reading = readingOfOutcome(outcome, readings);
      expect(reading === undefined, outcome).toBe(benchOutcome(outcome, bench) === null);
    }
  });
});

test('a 50 on a spool: 11.8, 23.6, 35.4 or 20 tex (GNU units: 590.54 over the count, 1000 over the metric one)', () => {
  expect(threadReadings().map(({ shown }) => ('value' in shown ? Number(shown.value.toFixed(1)) : null))).toEqual([
    11.8, 23.6, 35.4, 20,
  ]);
});
