import { summariseGin } from '../../src/model/gin/byproducts.ts';
import { oilMillFacts } from '../../src/model/gin/facts.ts';
import { trashRemovedFraction } from '../../src/model/gin/machine-step.ts';
import { lintMoisturePercent } from '../../src/model/gin/moisten.ts';
import { crushSeed } from '../../src/model/gin/seed.ts';
import { massEntry } from '../../src/model/ledger.ts';
import { type PartMasses, partMasses } from '../../src/model/lot.ts';
import { moduleFacts } from '../../src/model/module/facts.ts';
import { moduleCountFor } from '../../src/model/module/geometry.ts';
import { always, type FormulaModel, from, letters, oneOf, type Values } from './formula-model.ts';

const dry = (some: Partial<PartMasses>) => ({
  dryKg: partMasses(some),
  waterKg: { lint: 0, seed: 0, trash: 0 },
});

/** A gin run of so much seed cotton in, seed out and lint pressed. */
const ginRun = ({ S = 0, Z = 0, L = 1 }: Values) =>
  summariseGin(
    { in: [massEntry('lot', dry({ lint: S }))], out: [] },
    { in: [], out: [massEntry('seedHouse', dry({ seed: Z }))] },
    { in: [], out: [massEntry('lot', dry({ lint: L }))] },
  );

const moduleKinds = Object.keys(moduleFacts) as (keyof typeof moduleFacts)[];
const { oil, meal, hulls, linters } = oilMillFacts;

/** The formulas of the module, the gin and the oil mill. */
export const ginFormulas = {
  turnout: {
    inputs: letters({ L: from(1, 9e5), S: from(1, 9e5) }),
    compute: (values) => 100 * ginRun(values).turnout,
  },
  seedCottonPerBale: {
    inputs: letters({ L: from(1, 9e5), S: from(1, 9e5) }),
    compute: (values) => ginRun(values).seedCottonLbPer480LbBale,
  },
  seedPerBale: {
    inputs: letters({ L: from(1, 9e5), Z: from(1, 9e5) }),
    compute: (values) => ginRun(values).seedLbPer480LbBale,
  },
  moisture: {
    inputs: letters({ w: from(0, 5000), d: from(1, 90_000) }),
    compute: ({ w, d }) =>
      lintMoisturePercent({ dryKg: partMasses({ lint: d! }), waterKg: { lint: w!, seed: 0, trash: 0 } }),
  },
  trashTaken: {
    inputs: letters({ F_1: from(1, 9000), F_2: from(0, 9000) }),
    compute: ({ F_1, F_2 }) => 100 * trashRemovedFraction(dry({ leaf: F_1! }), dry({ leaf: F_2! })),
  },
  modules: {
    inputs: letters({ S: from(1, 2e6), m: oneOf(moduleKinds.map((kind) => moduleFacts[kind].seedCottonLb.value)) }),
    compute: ({ S, m }) => {
      const kind = moduleKinds.find((each) => moduleFacts[each].seedCottonLb.value === m)!;
      return moduleCountFor(S!, kind);
    },
  },
  crushed: {
    inputs: letters({ M: from(0, 5000), f: oneOf([oil.value, meal.value, hulls.value, linters.value]) }),
    compute: ({ M, f }) => {
      const split = crushSeed(M!);
      if (f === oil.value) return split.oilKg;
      if (f === meal.value) return split.mealKg;
      return f === hulls.value ? split.hullsKg : split.lintersKg;
    },
  },
  crushingLoss: {
    inputs: letters({ M: from(1, 5000), o: always(oil), e: always(meal), h: always(hulls), l: always(linters) }),
    compute: ({ M }) => crushSeed(M!).lossKg,
  },
} satisfies Readonly<Record<string, FormulaModel>>;
