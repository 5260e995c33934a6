import { trashCover } from '../classing/facts.ts';
import { meanLinearDensity } from '../cloth/weight.ts';
import type { Fibre } from '../fibre.ts';
import { micronaireFacts } from '../fibre-facts.ts';
import { varietyFacts } from '../field/variety-facts.ts';
import { lengthsFromClassCard } from '../length/class-card.ts';
import { blend, type LengthDistribution } from '../length/length-distribution.ts';
import { type Lot, partMasses } from '../lot.ts';
import { benchFacts } from '../mill/bench-limit-facts.ts';
import { millRegain } from '../mill/facts.ts';
import { KG_PER_POUND, MM_PER_INCH, nominalMtexFromMicronaire } from '../units.ts';
import type { FibreCard, LaidBale } from './set-up.ts';

/** Maturity at which a fibre of the nominal linear density would read the card's micronaire: Lord's relation, solved. */
function maturityOf(micronaire: number, linearDensityMtex: number): number {
  const { square, slope, constant } = micronaireFacts;
  return (square.value * micronaire ** 2 + slope.value * micronaire + constant.value) / linearDensityMtex;
}

const fitted = new Map<string, LengthDistribution>();
const mostFitted = 2 * benchFacts.mostBales.value;

/**
 * The lengths behind a card, kept for the last few cards: to find them takes longer than all the rest of a bench, and a change of
 * yarn, cloth or one bale of many leaves them as they were.
 */
function lengthsOf({ kind, lengthIn, uniformityPercent }: FibreCard): LengthDistribution {
  const key = `${kind} ${lengthIn} ${uniformityPercent}`;
  const known = fitted.get(key);
  if (known) return known;
  const { lengths } = lengthsFromClassCard({ upperHalfMeanMm: lengthIn * MM_PER_INCH, uniformityPercent }, kind);
  if (fitted.size >= mostFitted) fitted.delete(fitted.keys().next().value!);
  fitted.set(key, lengths);
  return lengths;
}

/** The fibre behind a class card: lengths that read so, and micronaire at its nominal linear density. */
export function fibreOfCard(card: FibreCard): Fibre {
  const { kind, strengthGPerTex, micronaire, reflectanceRd, yellownessB } = card;
  const linearDensityMtex = nominalMtexFromMicronaire(micronaire);
  const reference = varietyFacts.uplandMedium.strengthGPerTex.value;
  return {
    kind,
    lengths: lengthsOf(card),
    linearDensityMtex,
    maturityRatio: maturityOf(micronaire, linearDensityMtex),
    strengthGPerTex,
    // Stronger cotton breaks less, as Pima does beside upland of 30 g/tex.
    breakTendency: reference / strengthGPerTex,
    reflectanceRd,
    yellownessB,
    nepsRatio: 1,
  };
}

/**
 * The fibre of several bales opened and laid together: lengths add by number of fibres, linear density is the harmonic mean,
 * what is read on a bundle or a surface the mean by mass.
 * @throws RangeError when there is no bale
 */
export function fibreOfBales(bales: readonly LaidBale[]): Fibre {
  const laid = bales.map((bale) => ({ fibre: fibreOfCard(bale), mass: bale.netLb }));
  const first = laid[0]?.fibre;
  if (!first) throw new RangeError('a lay-down needs at least one bale');
  const totalMass = laid.reduce((sum, { mass }) => sum + mass, 0);
  const byMass = (pick: (fibre: Fibre) => number) =>
    laid.reduce((sum, { fibre, mass }) => sum + pick(fibre) * mass, 0) / totalMass;
  return {
    ...first,
    // So much mass of so fine a fibre is that much fibre length.
    lengths: blend(laid.map(({ fibre, mass }) => ({ lengths: fibre.lengths, share: mass / fibre.linearDensityMtex }))),
    linearDensityMtex: meanLinearDensity(laid.map(({ fibre, mass }) => ({ density: fibre.linearDensityMtex, mass }))),
    maturityRatio: byMass(({ maturityRatio }) => maturityRatio),
    strengthGPerTex: byMass(({ strengthGPerTex }) => strengthGPerTex),
    breakTendency: byMass(({ breakTendency }) => breakTendency),
    reflectanceRd: byMass(({ reflectanceRd }) => reflectanceRd),
    yellownessB: byMass(({ yellownessB }) => yellownessB),
  };
}

/** Trash area of several bales as one surface, percent. */
export function trashOfBales(bales: readonly LaidBale[]): number {
  const mass = bales.reduce((sum, { netLb }) => sum + netLb, 0);
  return bales.reduce((sum, { netLb, trashAreaPercent }) => sum + netLb * trashAreaPercent, 0) / mass;
}

/** One pound of lint as it lies in the bale, at the regain of the trade; all its trash is counted as leaf. */
export function poundOfLint(fibre: Fibre, trashAreaPercent: number): Lot {
  const dryKg = KG_PER_POUND / (1 + millRegain.value);
  const leafKg = (dryKg * trashAreaPercent) / (100 * trashCover.areaPerMass.value);
  const lintKg = dryKg - leafKg;
  return {
    dryKg: partMasses({ lint: lintKg, leaf: leafKg }),
    waterKg: { lint: lintKg * millRegain.value, seed: 0, trash: leafKg * millRegain.value },
    fibre,
  };
}
