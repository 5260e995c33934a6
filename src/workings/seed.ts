import { oilMillFacts } from '../model/gin/facts.ts';
import { crushSeed, type OilMillSplit } from '../model/gin/seed.ts';
import { totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { kilogramsFromPounds, POUNDS_PER_STATISTICAL_BALE } from '../model/units.ts';
import { above, constant, exact, formula, inLedger, input, mass, procedure, step } from './steps.ts';
import type { Step, Working } from './working.ts';

export type SeedKey = keyof OilMillSplit | 'seedKg';

/** Lint in all the bales, and the share of the field that makes one of 480 pounds; 1 where nothing was pressed. */
export function baleShare({ pressing }: Season): { readonly share: number; readonly steps: readonly Step[] } {
  const netKg = pressing?.bales.reduce((sum, bale) => sum + bale.netKg, 0) ?? 0;
  const share = netKg > 0 ? kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE) / netKg : 1;
  return {
    share,
    steps: [
      step('lintInBales', mass(netKg), inLedger('pressing')),
      step('statisticalBale', exact(POUNDS_PER_STATISTICAL_BALE, 'pounds'), { at: 'definition' }),
      step('shareOfBale', exact(share, 'fraction'), above),
    ],
  };
}

const shares = {
  oilKg: oilMillFacts.oil,
  mealKg: oilMillFacts.meal,
  hullsKg: oilMillFacts.hulls,
  lintersKg: oilMillFacts.linters,
} as const;

/** What an oil mill makes of the seed of one bale. */
export function seedWorking(season: Season, key: SeedKey): Working | null {
  if (!season.ginning) return null;
  const wholeKg = totalKg(season.ginning.seedHouse);
  const { share, steps } = baleShare(season);
  const seedKg = wholeKg * share;
  if (key === 'seedKg') {
    return procedure([step('seedToHouse', mass(wholeKg), inLedger('ginning')), ...steps], mass(seedKg));
  }
  const split = crushSeed(seedKg);
  const seed = input('M', 'seedOfBale', exact(seedKg, 'kilograms'), inLedger('ginning'));
  const value = exact(split[key], 'kilograms');
  if (key !== 'lossKg') {
    return formula('crushed', [seed, constant('f', 'crushShare', shares[key], 'fraction')], value, mass(split[key]));
  }
  return formula(
    'crushingLoss',
    [
      seed,
      constant('o', 'oilShare', oilMillFacts.oil, 'fraction'),
      constant('e', 'mealShare', oilMillFacts.meal, 'fraction'),
      constant('h', 'hullShare', oilMillFacts.hulls, 'fraction'),
      constant('l', 'linterShare', oilMillFacts.linters, 'fraction'),
    ],
    value,
    mass(split.lossKg),
  );
}
