import type { ClassingContext, PressedBale } from '../../../src/model/classing/class-bales.ts';
import type { DecisionsOf } from '../../../src/model/decisions.ts';
import type { CottonKind, Fibre } from '../../../src/model/fibre.ts';
import { lengthsFromClassCard } from '../../../src/model/length/class-card.ts';
import { type Lot, type PartMasses, partMasses } from '../../../src/model/lot.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

/** Trash left in 480 lb of lint, lb: picked cotton after 1, 2 and 3 saw lint cleaners, and field-cleaned stripped cotton after 2. */
export const trashLb = {
  picked1: { leaf: 10.3, dirt: 0.4, motes: 2, sticks: 0.5, burs: 0.7 },
  picked2: { leaf: 7.2, dirt: 0.2, motes: 1.3, sticks: 0.4, burs: 0.4 },
  picked3: { leaf: 5.7, dirt: 0.2, motes: 1, sticks: 0.3, burs: 0.3 },
  stripped2: { leaf: 4.7, dirt: 0.5, motes: 2, sticks: 1.23, burs: 1.1 },
  pimaRoller: { leaf: 15.9, dirt: 0.6, motes: 3.9, sticks: 1, burs: 1.6 },
} as const;

export interface Cotton {
  readonly kind?: CottonKind;
  readonly lengthIn?: number;
  readonly uniformityPercent?: number;
  readonly strengthGPerTex?: number;
  readonly micronaire?: number;
  readonly reflectanceRd?: number;
  readonly yellownessB?: number;
}

/** Standard fineness H / MR of the test cotton, mtex. */
const standardFineness = { upland: 195, pima: 165 } as const;

/** Fibre that reads as asked; micronaire by Lord's relation turned round at a fixed standard fineness. */
export function fibreOf(cotton: Cotton = {}): Fibre {
  const kind = cotton.kind ?? 'upland';
  const x = cotton.micronaire ?? 4.4;
  const maturityRatio = Math.sqrt((3.86 * x * x + 18.16 * x + 13) / standardFineness[kind]);
  const card = {
    upperHalfMeanMm: (cotton.lengthIn ?? 1.11) * 25.4,
    uniformityPercent: cotton.uniformityPercent ?? 81.5,
  };
  return {
    kind,
    lengths: lengthsFromClassCard(card, kind).lengths,
    linearDensityMtex: standardFineness[kind] * maturityRatio,
    maturityRatio,
    strengthGPerTex: cotton.strengthGPerTex ?? 29,
    breakTendency: 1,
    reflectanceRd: cotton.reflectanceRd ?? 77,
    yellownessB: cotton.yellownessB ?? 8.4,
    nepsRatio: 2,
  };
}

/** Lint of some bales of 480 lb, trash as given, 6 % moisture. */
export function lintLot(fibre: Fibre, baleCount: number, trash: Partial<PartMasses> = trashLb.picked2): Lot {
  const trashTotal = Object.values(trash).reduce((sum, lb) => sum + lb, 0);
  const damp = partMasses({ ...trash, lint: 480 - trashTotal });
  const scale = kilogramsFromPounds(baleCount);
  const dryKg = Object.fromEntries(Object.entries(damp).map(([part, lb]) => [part, 0.94 * lb * scale])) as PartMasses;
  const water = (lb: number) => 0.06 * lb * scale;
  return { dryKg, waterKg: { lint: water(damp.lint), seed: 0, trash: water(trashTotal) }, fibre };
}

export const pressedBales = (count: number, netLb = 480): PressedBale[] =>
  Array.from({ length: count }, (_, i) => ({
    number: i + 1,
    netKg: kilogramsFromPounds(netLb),
    grossKg: kilogramsFromPounds(netLb + 4),
    tag: `00000${String(i + 1).padStart(7, '0')}`,
    mark: null,
  }));

export const southeast: DecisionsOf<'classing'> = { market: 'southeast', moduleAveraging: false };
export const present = (seed: number, balesPerModule = 4): ClassingContext => ({
  era: 'present',
  seed,
  balesPerModule,
  stripped: false,
});
