import fc from 'fast-check';
import type { Cloth } from '../../src/model/cloth/cloth.ts';
import { clothCover } from '../../src/model/cloth/cover.ts';
import { relax } from '../../src/model/cloth/crimp.ts';
import { describeCloth } from '../../src/model/cloth/describe-cloth.ts';
import { describeJersey } from '../../src/model/cloth/describe-jersey.ts';
import { geometryFacts, jerseyFacts } from '../../src/model/cloth/facts.ts';
import { sewingTable } from '../../src/model/cloth/sew.ts';
import { stripNewtons } from '../../src/model/cloth/strip.ts';
import { stripFacts } from '../../src/model/cloth/wash-facts.ts';
import { weave } from '../../src/model/cloth/weave.ts';
import { single, yarnLot, yarnOf } from '../model/cloth/yarn-lot.ts';
import { always, type FormulaModel, from, letters, oneOf, type Values } from './formula-model.ts';

const { lot, cloth: madeCloth } = weave(yarnLot, yarnOf(30), {
  structure: 'plain',
  endsPerInch: 68,
  picksPerInch: 68,
  finish: 'printed',
});

/** The sewing table's own figures for so much cloth. */
const sewn = (
  size: Partial<Pick<Cloth, 'squareMetres' | 'runningYards'>>,
  origin: Partial<Parameters<typeof sewingTable>[3]>,
) =>
  sewingTable(
    lot,
    { ...madeCloth!, ...size },
    { prewash: false, seamInches: 0.25 },
    { bolls: 1, baleNetKg: 1, ...origin },
  );

const described = (values: Values) =>
  describeCloth({
    warp: { singleTex: values.T_1 ?? single(30).singleTex, singles: 1 },
    weft: { singleTex: values.T_2 ?? single(30).singleTex, singles: 1 },
    endsPerInch: values.e!,
    picksPerInch: values.p!,
    weave: 'plain',
    warpCrimpPercent: values.c_1 ?? null,
    weftCrimpPercent: values.c_2 ?? null,
  });

/** A quilting base before its wash. */
const square = { e: 68, p: 68 };

const knitStates = [
  { state: 'dry', courses: jerseyFacts.coursesDry.value, wales: jerseyFacts.walesDry.value },
  { state: 'wet', courses: jerseyFacts.coursesWet.value, wales: jerseyFacts.walesWet.value },
  { state: 'full', courses: jerseyFacts.coursesFull.value, wales: jerseyFacts.walesFull.value },
] as const;

/** The formulas of the cloth and the sewing table. */
export const clothFormulas = {
  clothWeight: {
    inputs: letters({
      e: from(20, 220),
      p: from(20, 200),
      T_1: from(4, 150),
      T_2: from(4, 150),
      c_1: from(0, 14),
      c_2: from(0, 14),
    }),
    compute: (values) => described(values).gramsPerSquareMetre,
  },
  knitWeight: {
    inputs: fc
      .record({ knit: oneOf(knitStates), l: from(1, 8), T: from(4, 150) })
      .map(({ knit, l, T }) => ({ c: knit.courses, w: knit.wales, l, T })),
    compute: ({ c, l, T }) =>
      describeJersey(T!, l!, knitStates.find(({ courses }) => courses === c)!.state).gramsPerSquareMetre,
  },
  threadCount: {
    inputs: letters({ e: from(20, 220), p: from(20, 200) }),
    compute: (values) => described(values).threadCount,
  },
  clothCover: {
    inputs: letters({ K_1: from(1, 28), K_2: from(1, 28), f: always(geometryFacts.peirceThreads) }),
    compute: ({ K_1, K_2 }) => clothCover(K_1!, K_2!),
  },
  washedWeight: {
    inputs: letters({ W: always({ value: described(square).gramsPerSquareMetre }), l: from(0, 15), w: from(0, 10) }),
    compute: ({ l, w }) => {
      const drawnIn = relax(described(square).construction, l!, w!);
      return described({
        e: drawnIn.endsPerInch,
        p: drawnIn.picksPerInch,
        c_1: drawnIn.warpCrimpPercent,
        c_2: drawnIn.weftCrimpPercent,
      }).gramsPerSquareMetre;
    },
  },
  stripStrength: {
    inputs: letters({
      e: from(20, 220),
      b: always(stripFacts.widthMm),
      T: from(4, 300),
      z: from(8, 30),
      r: always(stripFacts.threadsTogether),
    }),
    compute: ({ e, T, z }) => stripNewtons(e!, T!, z!),
  },
  patch: {
    inputs: letters({ A: from(1, 9e5), n: from(1, 9e6) }),
    compute: ({ A, n }) => sewn({ squareMetres: A! }, { bolls: n! }).patchInchesPerBoll!,
  },
  yardsPerBale: {
    inputs: letters({ Y: from(1, 9e5), W: from(1, 9e5) }),
    compute: ({ Y, W }) => sewn({ runningYards: Y! }, { baleNetKg: W! }).yardsPerBale!,
  },
} satisfies Readonly<Record<string, FormulaModel>>;
