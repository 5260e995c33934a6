import type { CottonKind } from '../fibre.ts';
import { type Colour, colourOf } from './colour.ts';
import { type PaidWeight, paidWeight } from './damp.ts';
import type { MicronaireClass, StrengthWord, UniformityWord } from './descriptor-facts.ts';
import { micronaireClass, strengthWord, uniformityWord } from './descriptors.ts';
import { bandPoints, type Difference, extraneousPoints, gradePoints } from './differences.ts';
import type { ExtraneousCall } from './extraneous.ts';
import { leafGrade } from './leaf.ts';
import type { Fill, MarketId } from './market.ts';
import { markets } from './markets.ts';
import { presentMoney } from './money-facts.ts';
import { stapleCode32nds } from './staple.ts';

/** One bale's classing data, as printed on a class card or typed by a visitor. */
export interface ClassCard {
  readonly kind: CottonKind;
  /** Upper half mean length, in. */
  readonly lengthIn: number;
  readonly uniformityPercent: number;
  readonly strengthGPerTex: number;
  readonly micronaire: number;
  readonly reflectanceRd: number;
  readonly yellownessB: number;
  /** The leaf grade, or the trash area it is taken from. */
  readonly leaf: number | { readonly trashAreaPercent: number };
  readonly market: MarketId;
  readonly netLb: number;
  /** Moisture of the lint in the bale, percent wet basis; left out where it was not measured. */
  readonly moisturePercent?: number;
  readonly extraneous?: readonly ExtraneousCall[];
}

/** One line of the sum of points. */
export interface PointsLine extends Difference {
  readonly item: 'grade' | 'micronaire' | 'strength' | 'uniformity' | 'extraneous';
}

/** A price: base, differences and what they come to. */
export interface BalePrice extends PaidWeight {
  readonly points: readonly PointsLine[];
  /** Sum of the points; 100 points are one cent a pound. */
  readonly premiumPoints: number;
  readonly baseCentsPerLb: number;
  /** Never below zero. */
  readonly priceCentsPerLb: number;
  /** Whether the discounts together exceed the base price, so that the price was held at zero. */
  readonly heldAtZero: boolean;
  /** To the cent. */
  readonly valueUsd: number;
  /** Year of the price. */
  readonly priceYear: number;
  /** Whether the price is a market's, or Pima's loan rate, or a season average. */
  readonly basis: 'market' | 'loanRate' | 'seasonAverage';
  /** Every reason why some of the points are not the market's own quotation. */
  readonly filled: readonly Fill[];
}

/** What a bale is called and what it fetches. */
export interface GradedBale {
  readonly colour: Colour;
  readonly leaf: number;
  readonly staple32nds: number;
  readonly price: BalePrice;
}

/** A classed bale: grade, staple, words and price. */
export interface Classed extends Colour, BalePrice {
  readonly leaf: number;
  readonly staple32nds: number;
  readonly words: {
    readonly uniformity: UniformityWord;
    readonly strength: StrengthWord;
    readonly micronaire: MicronaireClass;
  };
}

/** Price of base and differences, cents a pound: nobody pays to be rid of a bale, so it ends at zero. */
const centsPerLb = (baseCentsPerLb: number, points: number): number =>
  // Points are hundredths of a cent, so the price ends there too.
  Math.max(0, Math.round(baseCentsPerLb * 100 + points) / 100);

/** Bale value, USD to the cent: weight paid times base and differences. */
export const baleValueUsd = (paidLb: number, baseCentsPerLb: number, points: number): number =>
  Math.round(paidLb * centsPerLb(baseCentsPerLb, points)) / 100;

const pointsLine = (item: PointsLine['item'], { points, filled }: Difference): PointsLine => ({ item, points, filled });

/** Prices an upland bale by a market's differences. */
function marketPrice(
  card: Omit<ClassCard, 'leaf' | 'kind'>,
  grade: { readonly color: string; readonly leaf: number; readonly staple32nds: number },
): BalePrice {
  const market = markets[card.market];
  const points: readonly PointsLine[] = [
    pointsLine('grade', gradePoints(market, grade.color, grade.leaf, grade.staple32nds)),
    pointsLine('micronaire', bandPoints(market.micronaire, card.micronaire)),
    pointsLine('strength', bandPoints(market.strength, card.strengthGPerTex)),
    pointsLine('uniformity', bandPoints(market.uniformity, card.uniformityPercent)),
    pointsLine('extraneous', extraneousPoints(market, card.extraneous ?? [])),
  ];
  let premiumPoints = 0;
  const filled: Fill[] = [];
  for (const line of points) {
    premiumPoints += line.points;
    for (const why of line.filled) if (!filled.includes(why)) filled.push(why);
  }
  const base = market.baseCentsPerLb.value;
  const weight = paidWeight(card.netLb, card.moisturePercent ?? null, false, market.year);
  return {
    paidLb: weight.paidLb,
    waterRule: weight.waterRule,
    points,
    premiumPoints,
    baseCentsPerLb: base,
    priceCentsPerLb: centsPerLb(base, premiumPoints),
    heldAtZero: base * 100 + premiumPoints < 0,
    valueUsd: baleValueUsd(weight.paidLb, base, premiumPoints),
    priceYear: market.year,
    basis: 'market',
    filled,
  };
}

/** A price without differences: Pima's loan rate, or a season's average for every grade. */
export function flatPrice(
  bale: Pick<ClassCard, 'netLb' | 'moisturePercent'>,
  flatCentsPerLb: number,
  year: number,
  basis: BalePrice['basis'],
): BalePrice {
  const weight = paidWeight(bale.netLb, bale.moisturePercent ?? null, basis === 'loanRate', year);
  return {
    paidLb: weight.paidLb,
    waterRule: weight.waterRule,
    points: [],
    premiumPoints: 0,
    baseCentsPerLb: flatCentsPerLb,
    priceCentsPerLb: flatCentsPerLb,
    heldAtZero: false,
    valueUsd: baleValueUsd(weight.paidLb, flatCentsPerLb, 0),
    priceYear: year,
    basis,
    filled: [],
  };
}

/**
 * Grades and prices one bale from its readings. Upland by the differences of a market; Pima at the published long-staple
 * loan rate, since no Pima differences were read.
 */
export function gradeOne(card: ClassCard): GradedBale {
  const colour = colourOf(card.kind, card.reflectanceRd, card.yellownessB);
  const leaf = typeof card.leaf === 'number' ? card.leaf : leafGrade(card.kind, card.leaf.trashAreaPercent);
  const staple32nds = stapleCode32nds(card.kind, card.lengthIn);
  const { pimaLoanCentsPerLb, pimaLoanYear } = presentMoney;
  const price =
    card.kind === 'pima'
      ? flatPrice(card, pimaLoanCentsPerLb.value, pimaLoanYear.value, 'loanRate')
      : marketPrice(card, { color: colour.color, leaf, staple32nds });
  return { colour, leaf, staple32nds, price };
}

/** Grades and prices one bale, and says its readings in words. */
export function classOne(card: ClassCard): Classed {
  const { colour, leaf, staple32nds, price } = gradeOne(card);
  return {
    ...colour,
    leaf,
    staple32nds,
    words: {
      uniformity: uniformityWord(card.uniformityPercent),
      strength: strengthWord(card.strengthGPerTex),
      micronaire: micronaireClass(card.micronaire),
    },
    ...price,
  };
}
