import type { CottonKind } from '../fibre.ts';
import type { Era } from '../scenario.ts';
import { pickingFacts } from './facts.ts';
import { positionTable, thirtiesFacts, type VarietyId, varietyFacts } from './variety-facts.ts';

/** Fruit at one position of a branch: 0, 1, 2 outward from the main stem, 3 on vegetative branches. */
export interface FruitingPosition {
  /** Sites for each fruiting branch (or main-stem node, for vegetative branches). */
  readonly sites: number;
  /** Share of squares that reach their flower. */
  readonly squaresKept: number;
  /** Share of flowers that make a boll when nothing is wrong. */
  readonly flowersKept: number;
}

/** A class of varieties as one era grew it. Masses per boll and seed are air-dry. */
export interface Variety {
  readonly id: VarietyId;
  readonly kind: CottonKind;
  /** Lint / (lint + seed), dry: set here once for the whole chain. */
  readonly lintShare: number;
  /** Seed cotton of a full first-position boll, g. */
  readonly bollGrams: number;
  readonly seedsPerBoll: number;
  /** Mass of 100 seeds, g. */
  readonly seedIndexGrams: number;
  /** Lint on one full seed, mg. */
  readonly lintPerSeedMg: number;
  readonly fibresPerSeed: number;
  readonly peakMm: number;
  readonly relativeSpread: number;
  readonly brokenPerMm: number;
  readonly strengthGPerTex: number;
  readonly breakTendency: number;
  readonly standardFinenessMtex: number;
  readonly firstFruitingNode: number;
  readonly squareHeatShiftDd60: number;
  readonly openHeatShiftDd60: number;
  /** Yield potential against the present. */
  readonly capacityFactor: number;
  readonly positions: readonly FruitingPosition[];
}

/**
 * Seeds in a boll from its mass: lint per boll over lint per seed.
 * @param bollGrams seed cotton in the boll, g
 * @param lintShare lint as a fraction of the seed cotton
 * @param lintIndexGrams lint on 100 seeds, g
 * Source: Texas A&M Lubbock, Glossary of table headings, 2000.
 */
export const seedsPerBoll = (bollGrams: number, lintShare: number, lintIndexGrams: number): number =>
  (bollGrams * lintShare) / (lintIndexGrams / 100);

/** A variety class in an era. */
export function varietyOf(id: VarietyId, era: Era): Variety {
  const facts = varietyFacts[id];
  const old = era === 'thirties';
  const kind = id === 'pima' ? 'pima' : 'upland';
  const lintShare = facts.lintShare.value * (old ? thirtiesFacts.lintShareFactor.value : 1);
  const bollGrams = facts.bollGrams.value * (old ? thirtiesFacts.bollFactor.value : 1);
  const seedIndexGrams = facts.seedIndexGrams.value;
  // Air-dry lint for each air-dry gram of seed: the share is of dry mass, and lint and seed hold different water.
  const lintToSeed =
    ((lintShare / (1 - lintShare)) * (1 - pickingFacts.seedMoisturePercent.value / 100)) /
    (1 - pickingFacts.lintMoisturePercent.value / 100);
  const lintIndexGrams = seedIndexGrams * lintToSeed;
  return {
    id,
    kind,
    lintShare,
    bollGrams,
    seedsPerBoll: seedsPerBoll(bollGrams, lintToSeed / (1 + lintToSeed), lintIndexGrams),
    seedIndexGrams,
    lintPerSeedMg: lintIndexGrams * 10,
    // A lower lint share is fewer fibres on the seed, not thinner ones.
    fibresPerSeed: facts.fibresPerSeed.value * (lintIndexGrams / fullLintIndex(id)),
    peakMm: facts.peakMm.value,
    relativeSpread: facts.relativeSpread.value,
    brokenPerMm: facts.brokenPerMm.value,
    strengthGPerTex: facts.strengthGPerTex.value * (old ? thirtiesFacts.strengthFactor.value : 1),
    breakTendency: facts.breakTendency.value,
    standardFinenessMtex: facts.standardFinenessMtex.value,
    firstFruitingNode: facts.firstFruitingNode.value,
    squareHeatShiftDd60: facts.squareHeatShiftDd60.value,
    openHeatShiftDd60: facts.openHeatShiftDd60.value,
    capacityFactor: old ? thirtiesFacts.capacityFactor.value : 1,
    positions: positionTable[kind].map(({ kept, sites, squaresKept }) => ({
      sites: sites.value,
      squaresKept: squaresKept.value,
      flowersKept: kept.value / (sites.value * squaresKept.value),
    })),
  };
}

/** Lint index of the present-day variety, g, for which its fibre count is quoted. */
function fullLintIndex(id: VarietyId): number {
  const { lintShare, seedIndexGrams } = varietyFacts[id];
  return (
    (seedIndexGrams.value *
      (lintShare.value / (1 - lintShare.value)) *
      (1 - pickingFacts.seedMoisturePercent.value / 100)) /
    (1 - pickingFacts.lintMoisturePercent.value / 100)
  );
}
