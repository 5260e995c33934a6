import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { dampFacts } from '../../src/model/classing/damp-facts.ts';
import type { Decisions } from '../../src/model/decisions.ts';
import { farmOf } from '../../src/model/farms.ts';
import { pressFacts } from '../../src/model/gin/press-facts.ts';
import type { Season } from '../../src/model/season.ts';
import { long } from '../laws/runs.ts';

const seeds = Array.from({ length: long ? 20 : 2 }, (_, index) => index + 1);
/** Bales at most 7.5 % — National Cotton Council policy, in Hughs et al. 2004. */
const limitPercent = 7.5;

/** Seasons of a farm whose cotton comes straight from the field at a moisture, dried as told; no water is put back before the press. */
function seasons(
  farmId: string,
  moisturePercent: number,
  dryers: Decisions['cleaning'],
  restoreToPercent: number,
  of: readonly number[] = seeds,
): Season[] {
  const farm = farmOf(farmId)!;
  const { harvest, module, ginning, pressing } = farm.decisions;
  const decisions: Decisions = {
    ...farm.decisions,
    harvest: { ...harvest, moisturePercent },
    module: { ...module, storageDays: 0 },
    cleaning: dryers,
    ginning: { ...ginning, moistureAddedPoints: 0 },
    pressing: { ...pressing, restoreToPercent },
  };
  return of.map((seed) => runSeason({ ...farm, decisions }, seed, null));
}
const paid = (all: readonly Season[]) => all.reduce((sum, { payments }) => sum + payments!.netToFarmUsd, 0);
const baleMoisture = (all: readonly Season[]) => Math.max(...all.map(({ pressing }) => pressing!.moisturePercent));

const cases = [
  'coastal-plain',
  'river-bottom',
  'high-plains-dryland',
  'irrigated-desert',
  'long-staple-valley',
].flatMap((farm) => (long ? [12, 15, 18] : [12, 18]).map((percent) => [farm, percent] as const));

describe('nobody is paid for water: bales at most 7.5 % — National Cotton Council policy, in Hughs et al. 2004', () => {
  test.each(cases)(
    '%s, picked at %d percent: any damper bale pays less than the same cotton dried to 7.5 %',
    (farmId, percent) => {
      const { cleaning } = farmOf(farmId)!.decisions;
      // The mildest air that brings the lint below the limit, two dryers in line, found by halving: hotter air dries more.
      const dryAt = (dryerAirF: number) =>
        baleMoisture(seasons(farmId, percent, { ...cleaning, dryers: 2, dryerAirF }, 4, [1])) <= limitPercent;
      let [tooMild, mildest] = dryAt(80) ? [80, 80] : [80, 350];
      while (mildest - tooMild > 10) {
        const between = Math.round((tooMild + mildest) / 20) * 10;
        if (dryAt(between)) mildest = between;
        else tooMild = between;
      }
      const dried = seasons(farmId, percent, { ...cleaning, dryers: 2, dryerAirF: mildest }, limitPercent);
      expect(baleMoisture(dried)).toBeLessThan(limitPercent + 0.3);
      let damper = 0;
      for (const [dryers, dryerAirF] of [
        [0, 80],
        [1, 100],
        [1, 180],
        [2, 150],
      ] as const) {
        const wet = seasons(farmId, percent, { ...cleaning, dryers, dryerAirF }, 4);
        if (Math.min(...wet.map(({ pressing }) => pressing!.moisturePercent)) <= limitPercent + 0.3) continue;
        damper++;
        expect(paid(wet), `${dryers} dryers at ${dryerAirF} F`).toBeLessThan(paid(dried));
      }
      expect(damper).toBeGreaterThan(0);
    },
  );
  test('the default farm, picked at 16 or 18 % and ginned undried, is paid less than as it stands', () => {
    const asItStands = paid(seeds.map((seed) => runSeason(farmOf('coastal-plain')!, seed, null)));
    const { cleaning } = farmOf('coastal-plain')!.decisions;
    for (const percent of [16, 18])
      expect(paid(seasons('coastal-plain', percent, { ...cleaning, dryers: 0 }, 4))).toBeLessThan(asItStands);
  });
  test('water put back at the press above 7.5 % earns nothing', () => {
    const { cleaning } = farmOf('coastal-plain')!.decisions;
    const to = (percent: number) => paid(seasons('coastal-plain', 9, cleaning, percent));
    expect(to(7.5)).toBeGreaterThan(to(6));
    expect(to(8)).toBeLessThanOrEqual(to(7.5) * (1 + 1e-9));
  });
  test('gin and classing office hold the same limit', () => {
    expect(pressFacts.dampestBalePercent.value).toBe(dampFacts.refusedAbovePercent.value);
    expect(pressFacts.dampestBalePercent.value).toBe(limitPercent);
  });
});

test('seed of wetter cotton is not paid for its water: picked at 18 % and dried earns no more than picked at 12 % — seed keeps its oil to 12 %, Cotton Inc.', () => {
  const { cleaning } = farmOf('coastal-plain')!.decisions;
  const dried = (percent: number, dryerAirF: number) =>
    paid(seasons('coastal-plain', percent, { ...cleaning, dryers: 2, dryerAirF }, limitPercent));
  expect(dried(18, 310) / dried(12, 170)).toBeLessThan(1.005);
});
