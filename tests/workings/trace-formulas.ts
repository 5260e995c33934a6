import type { TraceCase } from '../../src/model/trace/chain-averages.ts';
import { statedAverages } from '../../src/model/trace/chain-averages.ts';
import { type FamiliarId, familiarOf } from '../../src/model/trace/familiar.ts';
import { familiarFacts } from '../../src/model/trace/familiar-facts.ts';
import { massAverages, type SeasonMasses } from '../../src/model/trace/season-chain.ts';
import {
  alongLintKg,
  baleShareOf,
  bollsFor,
  clothMassKg,
  fibresIn,
  fieldFor,
  lintForKg,
  machineMinutesFor,
  rowFeetOn,
  seedCottonForKg,
  squareSideInches,
  waterOnLitres,
  yarnForClothKg,
  yarnKilometres,
} from '../../src/model/trace/steps-back.ts';
import { movedToEnd } from '../../src/model/trace/trace-cases.ts';
import { bollsOf, clothOfKg, seedCottonOfKg, squareYardsOf } from '../../src/model/trace/trace-forward.ts';
import { quiltClothSquareYards, squareYards } from '../../src/model/trace/yardage.ts';
import { asNe, texFromNe } from '../../src/model/units.ts';
import type { TraceFormulaId } from '../../src/workings/trace-formula-texts.ts';
import { type FormulaModel, from, letters, oneOf, type Values, whole } from './formula-model.ts';

const kilograms = from(0.1, 5000);
const share = from(0.2, 1.2);
const stated = statedAverages('middle' satisfies TraceCase);

/** Averages of a season whose masses are those of the letters. */
function own({ N_1, G_1, S_1, L_1, Z_1, W_1, K_1, Y_1, C_1 }: Values) {
  const masses: SeasonMasses = {
    bolls: N_1 ?? 1,
    grownKg: G_1 ?? 1,
    deliveredKg: S_1 ?? 1,
    lintKg: L_1 ?? 1,
    seedKg: Z_1 ?? 1,
    ginWasteKg: W_1 ?? 1,
    cardedKg: K_1 ?? 1,
    yarnKg: Y_1 ?? 1,
    loomWasteKg: W_1 ?? 1,
    clothKg: C_1 ?? 1,
    clothSquareMetres: 1,
  };
  return massAverages(masses) as Record<string, number>;
}
const ofMasses = (name: string, inputs: FormulaModel['inputs']): FormulaModel => ({
  inputs,
  compute: (values) => own(values)[name]!,
});
const moved = (letter: string): FormulaModel => ({
  inputs: letters({ [`${letter}_1`]: share, [`${letter}_2`]: share, [`${letter}_3`]: share }),
  compute: (values) => movedToEnd(values[`${letter}_1`]!, values[`${letter}_2`]!, values[`${letter}_3`]!),
});
const two = (
  one: string,
  other: string,
  compute: (one: number, other: number) => number,
  inputs: readonly [ReturnType<typeof from>, ReturnType<typeof from>] = [kilograms, share],
): FormulaModel => ({
  inputs: letters({ [one]: inputs[0], [other]: inputs[1] }),
  compute: (values) => compute(values[one]!, values[other]!),
});
const familiar = oneOf(Object.keys(familiarFacts) as FamiliarId[]).chain((id) =>
  letters({ F: kilograms, w: from(1, 1), l: from(1, 1) }).map((values): Values => {
    const { widthFeet, lengthFeet } = familiarOf(id);
    return { ...values, w: widthFeet, l: lengthFeet };
  }),
);

/** The formulas of the way from a project back to the field, and forward again. */
export const traceFormulas = {
  quiltCloth: {
    inputs: letters({
      n: whole(1, 20),
      w: from(20, 120),
      l: from(20, 120),
      p: from(1, 2),
      b: from(0, 12),
      u: from(36, 60),
      y: from(0.1, 1),
    }),
    compute: ({ n, w, l, p, b, u, y }) =>
      n! * quiltClothSquareYards(w!, l!, { piecing: p!, overInches: b!, usableInches: u!, bindingYards: y! }),
  },
  pieceCloth: two('n', 'a', (n, a) => n * a, [whole(1, 50), from(0.1, 20)]),
  ownCloth: two('y', 'w', (y, w) => squareYards(w, y * 36), [from(0.1, 100), from(10, 130)]),
  clothMass: two('A', 'o', clothMassKg, [from(0.1, 100), from(0.5, 40)]),
  battingMass: {
    inputs: letters({ n: whole(1, 20), w: from(20, 120), l: from(20, 120), o: from(2, 6) }),
    compute: ({ n, w, l, o }) => n! * clothMassKg(squareYards(w!, l!), o!),
  },
  yarnForCloth: {
    inputs: letters({ C: kilograms, f: share, v: share }),
    compute: ({ C, f, v }) => yarnForClothKg(C!, f!, v!),
  },
  yarnLength: two('Y', 'N', (Y, N) => yarnKilometres(Y, texFromNe(asNe(N))), [kilograms, from(5, 80)]),
  lintForYarn: two('Y', 'r', (Y, r) => lintForKg(Y, r, 0, 1)),
  lintForProject: {
    inputs: letters({ Y: kilograms, r: share, B: kilograms, b: share }),
    compute: ({ Y, r, B, b }) => lintForKg(Y!, r!, B!, b!),
  },
  shareOfBale: { inputs: letters({ L: kilograms }), compute: ({ L }) => 100 * baleShareOf(L!) },
  fibresInLint: {
    inputs: letters({ L: from(0.1, 5), H: from(100, 220), m: from(15, 35) }),
    compute: ({ L, H, m }) => fibresIn(L!, H!, m!),
  },
  seedCottonForLint: two('L', 't', seedCottonForKg),
  bollsForSeedCotton: {
    inputs: letters({ S: kilograms, d: share, g: from(2, 6) }),
    compute: ({ S, d, g }) => bollsFor(S!, d!, g!),
  },
  plantsForBolls: two('n', 'b', (n, b) => n / b, [from(1, 9999), from(1, 20)]),
  fieldForPlants: two('P', 'p', fieldFor, [from(1, 9999), from(10_000, 60_000)]),
  familiarTimes: {
    inputs: familiar,
    compute: ({ F, w }) => {
      const ids = Object.keys(familiarFacts) as FamiliarId[];
      return F! / familiarOf(ids.find((id) => familiarOf(id).widthFeet === w)!).squareMetres;
    },
  },
  rowOnField: two('F', 'r', rowFeetOn, [kilograms, from(15, 40)]),
  waterOnField: two('F', 'h', waterOnLitres, [kilograms, from(0, 60)]),
  alongLint: two('L', 's', alongLintKg),
  machineMinutes: two('F', 'a', machineMinutesFor, [kilograms, from(1, 10)]),
  ownFinishing: ofMasses('finishingYield', letters({ C_1: kilograms, Y_1: from(10, 100), W_1: from(0.1, 5) })),
  ownWeaving: ofMasses('weavingYield', letters({ Y_1: from(10, 100), W_1: from(0.1, 5) })),
  ownRealisation: ofMasses('yarnRealisation', letters({ Y_1: kilograms, L_1: kilograms })),
  ownBatting: ofMasses('battingYield', letters({ K_1: kilograms, L_1: kilograms })),
  ownTurnout: ofMasses('ginTurnout', letters({ L_1: kilograms, S_1: kilograms })),
  ownDelivered: ofMasses('deliveredPerGrown', letters({ S_1: kilograms, G_1: kilograms })),
  ownBoll: ofMasses('bollGrams', letters({ G_1: kilograms, N_1: from(1, 9999) })),
  ownSeed: ofMasses('seedPerLint', letters({ Z_1: kilograms, L_1: kilograms })),
  ownGinWaste: ofMasses('ginWastePerLint', letters({ W_1: kilograms, L_1: kilograms })),
  movedFinishing: moved('f'),
  movedWeaving: moved('v'),
  movedRealisation: moved('r'),
  movedBatting: moved('b'),
  bollsOfPlants: two('c', 'b', (c, b) => c * bollsOf('plant', { ...stated, bollsPerPlant: b }), [
    whole(1, 50),
    from(1, 20),
  ]),
  bollsOfRow: {
    inputs: letters({ c: whole(1, 50), b: from(1, 20), p: from(10_000, 60_000), r: from(15, 40) }),
    compute: ({ c, b, p, r }) =>
      c! * bollsOf('rowFoot', { ...stated, bollsPerPlant: b!, plantsPerAcre: p!, rowInches: r! }),
  },
  bollsOfAcres: {
    inputs: letters({ c: whole(1, 50), b: from(1, 20), p: from(10_000, 60_000) }),
    compute: ({ c, b, p }) => c! * bollsOf('acre', { ...stated, bollsPerPlant: b!, plantsPerAcre: p! }),
  },
  bollsOfModules: {
    inputs: letters({ c: whole(1, 50), M: from(1000, 25_000), g: from(2, 6), d: share }),
    compute: ({ c, M, g, d }) =>
      c! * bollsOf('module', { ...stated, moduleLb: M!, bollGrams: g!, deliveredPerGrown: d! }),
  },
  bollsOfBales: {
    inputs: letters({ c: whole(1, 50), g: from(2, 6), d: share, t: from(0.2, 0.5) }),
    compute: ({ c, g, d, t }) =>
      c! * bollsOf('bale', { ...stated, bollGrams: g!, deliveredPerGrown: d!, ginTurnout: t! }),
  },
  seedCottonOfBolls: {
    inputs: letters({ n: from(1, 9999), g: from(2, 6), d: share }),
    compute: ({ n, g, d }) => seedCottonOfKg(n!, g!, d!),
  },
  lintOfSeedCotton: two('S', 't', (S, t) => S * t),
  yarnOfLint: two('L', 'r', (L, r) => L * r),
  clothOfLint: {
    inputs: letters({ L: kilograms, r: share, v: share, f: share }),
    compute: ({ L, r, v, f }) => clothOfKg(L!, r!, v!, f!),
  },
  clothArea: two('C', 'o', squareYardsOf, [kilograms, from(0.5, 40)]),
  squareSide: { inputs: letters({ A: kilograms }), compute: ({ A }) => squareSideInches(A!) },
  piecesOfLint: two('L', 'l', (L, l) => L / l, [kilograms, from(0.01, 5)]),
} satisfies Readonly<Record<TraceFormulaId, FormulaModel>>;
