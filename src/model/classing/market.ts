import type { DecisionsOf } from '../decisions.ts';
import type { Fact, FactTable } from '../fact.ts';
import type { ExtraneousCall, ExtraneousKind } from './extraneous.ts';

export type MarketId = DecisionsOf<'classing'>['market'];

/** Why a difference is not a quotation of its market. The words are made elsewhere. */
export type Fill =
  | 'shortStaple' // steps of East and South Texas put under the shortest quoted staple
  | 'heldShortest' // shorter than any quotation: held at the shortest
  | 'leafStep' // leaf step of another colour of the same market
  | 'colourStep' // West Texas step from the nearest quoted colour
  | 'belowGrade' // below grade: held at the lowest official grade of its group
  | 'otherMarket' // quotation of another market
  | 'step' // step of another market, or of a neighbouring band, put on the last quotation
  | 'noLeafAxis'; // the market's table has no leaf axis

/** Points for some colours and a span of leaf grades, one for each quoted staple; null where the source was not read. */
interface GradeRow {
  readonly colours: readonly string[];
  readonly leaf: readonly [from: number, to: number];
  readonly points: readonly (number | null)[];
}

/** Points from a reading upward, until the next band. */
export interface Band {
  readonly from: number;
  readonly points: number;
  readonly filled?: Fill;
}

/** Points for a call. Bark and grass are quoted under other. */
export interface ExtraneousRow {
  readonly kind: 'prep' | 'plastic' | 'other';
  readonly level: ExtraneousCall['level'];
  readonly points: number;
  readonly filled?: Fill;
}

/** Differences of one market on one day; a point is 0.01 cent a pound. */
export interface Market {
  readonly id: MarketId;
  /** Day or season quoted, as the source gives it. */
  readonly quoted: string;
  /** Year of the prices. */
  readonly year: number;
  /** Price of base quality, colour 41, leaf 4, staple 34. */
  readonly baseCentsPerLb: Fact;
  /** Quoted staples; the first stands for itself and what shares its column. */
  readonly staples: readonly number[];
  readonly leafAxis: boolean;
  readonly grades: FactTable<GradeRow>;
  readonly micronaire: FactTable<Band>;
  readonly strength: FactTable<Band>;
  readonly uniformity: FactTable<Band>;
  readonly extraneous: FactTable<ExtraneousRow>;
}

/**
 * Points of one market at the prices of another, whole points: a discount is taken as a share of the price, so that 40 cents
 * off at a base of 82 cents are 22 cents off at a base of 45.
 */
export const atPriceOf = (borrower: Fact, lender: Fact, points: number): number =>
  // Adding nothing turns a rounded minus nought into nought.
  Math.round((points * borrower.value) / lender.value) + 0;

/** Rows lent by another market in the proportion of the two base prices, each flagged. */
export const lentRows = <Row extends Band | ExtraneousRow>(borrower: Fact, lender: Fact, rows: readonly Row[]): Row[] =>
  rows.map((row) => ({ ...row, points: atPriceOf(borrower, lender, row.points), filled: 'otherMarket' as const }));

/** A table lent by another market in the proportion of the two base prices, every row flagged as such. */
export const lent = <Row extends Band | ExtraneousRow>(
  borrower: Fact,
  lender: Fact,
  table: FactTable<Row>,
): FactTable<Row> => ({
  ...table,
  rows: lentRows(borrower, lender, table.rows),
  mark: 'assumption',
  note: 'not quoted in this market: another market stands in, its points in the proportion of the two base prices',
});

/** The quotation a kind of extraneous matter falls under. */
export const quotedAs = (kind: ExtraneousKind): ExtraneousRow['kind'] =>
  kind === 'prep' || kind === 'plastic' ? kind : 'other';
