import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { projectIds } from '../../../src/model/trace/project-facts.ts';
import { seasonAverages } from '../../../src/model/trace/season-chain.ts';
import { isMillYield, movedToEnd, ownAverages, traceInCases } from '../../../src/model/trace/trace-cases.ts';

const own = seasonAverages(runSeason(farms[0]!, 1, null));
const keys = ['clothKg', 'lintKg', 'bolls', 'squareMetres', 'rainLitres', 'seedKg', 'handPickingDays'] as const;

test.each(projectIds)('%s: low below middle below high, in every step', (project) => {
  for (const averages of [own, {}]) {
    const cases = traceInCases({ project }, averages);
    if (!cases.ok) throw new Error(project);
    for (const key of keys) {
      expect(cases.value.low[key], key).toBeLessThan(cases.value.middle[key]);
      expect(cases.value.high[key], key).toBeGreaterThan(cases.value.middle[key]);
    }
  }
});
test('what a season counted stays; its mill moves with the stated ranges', () => {
  const low = ownAverages(own, 'low');
  expect(low.bollGrams).toBe(own.bollGrams);
  expect(low.ginTurnout).toBe(own.ginTurnout);
  expect(low.yarnRealisation).toBe(movedToEnd(own.yarnRealisation!, 0.952, 0.9));
  expect(ownAverages({}, 'high')).toEqual({});
  expect([isMillYield('weavingYield'), isMillYield('bollGrams')]).toEqual([true, false]);
});
test('an unknown project is named', () => {
  expect(traceInCases({ project: 'tent' })).toMatchObject({ ok: false, problems: [{ value: 'tent' }] });
});
