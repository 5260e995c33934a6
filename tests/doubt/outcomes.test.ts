import { expect, test } from 'vitest';
import { outcomesOf } from '../../src/doubt/outcomes.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import { totalKg } from '../../src/model/lot.ts';
import { poundsFromKilograms } from '../../src/model/units.ts';

const farm = farmOf('coastal-plain')!;

test('the outcomes are those the ledgers, the bales and the settlement tell', () => {
  const season = runSeason(farm, 7, null);
  const outcomes = outcomesOf(season);
  const netLb = season.pressing!.bales.reduce((sum, { netKg }) => sum + poundsFromKilograms(netKg), 0);
  const lint = season.payments!.lines.find(({ item }) => item === 'lint')!.usd;
  expect(outcomes.lintLbPerAcre).toBeCloseTo(netLb / farm.acres, 6);
  expect(outcomes.turnoutPercent).toBeCloseTo((100 * netLb) / poundsFromKilograms(totalKg(season.module!.lot)), 1);
  expect(outcomes.usdPerAcre).toBeCloseTo(lint / farm.acres, 8);
  expect(outcomes.usdPerBale! * season.pressing!.bales.length).toBeCloseTo(lint, 4);
  const staples = season.classing!.classed.map(({ staple32nds }) => staple32nds);
  expect(outcomes.staple32nds).toBeGreaterThanOrEqual(Math.min(...staples));
  expect(outcomes.staple32nds).toBeLessThanOrEqual(Math.max(...staples));
});

test('a crop that fails has no yield, no value, and no staple to tell of', () => {
  const late = { ...farm.decisions, planting: { ...farm.decisions.planting, plantingDayOfYear: 300 } };
  const season = runSeason({ ...farm, decisions: late }, 7, null);
  expect(season.classing).toBeNull();
  expect(outcomesOf(season)).toEqual({
    lintLbPerAcre: 0,
    turnoutPercent: null,
    staple32nds: null,
    usdPerBale: null,
    usdPerAcre: 0,
  });
});
