import { gradesOfGroup, isBelowGrade } from './colour.ts';
import type { ExtraneousCall } from './extraneous.ts';
import { gapFacts, neighbourColours } from './gap-facts.ts';
import { atPriceOf, type Band, type Fill, type Market, quotedAs } from './market.ts';
import { eastTexas } from './market-east-texas-facts.ts';
import { westTexas } from './market-west-texas-facts.ts';

/** A difference in points, with every reason why it is not a plain quotation. */
export interface Difference {
  readonly points: number;
  readonly filled: readonly Fill[];
}

const [lastReadOf54, baseStaple] = [gapFacts.lastReadOf54.value, gapFacts.baseStaple.value];
const [worstQuotedLeaf, shortestShared] = [gapFacts.worstQuotedLeaf.value, gapFacts.shortestShared.value];

const quotation = (points: number): Difference => ({ points, filled: [] });
const shifted = (by: Difference, points: number, why: Fill): Difference => ({
  points: by.points + points,
  filled: by.filled.includes(why) ? by.filled : [...by.filled, why],
});

/** What the market itself quotes; null where nothing was read. */
export function quotedPoints(market: Market, colour: string, leaf: number, staple: number): number | null {
  const column = market.staples.indexOf(staple);
  const row = market.grades.rows.find(
    ({ colours, leaf: [from, to] }) => colours.includes(colour) && leaf >= from && leaf <= to,
  );
  return row?.points[column] ?? null;
}

const quotes = (market: Market, colour: string): boolean =>
  market.grades.rows.some(({ colours }) => colours.includes(colour));

const standsIn = new Map(neighbourColours.rows.map(({ colour, standsIn: neighbour }) => [colour, neighbour]));

/** The West Texas surface with its few holes filled. */
function westTexasPoints(colour: string, staple: number): Difference {
  const own = quotedPoints(westTexas, colour, 1, staple);
  if (own !== null) return quotation(own);
  const other = standsIn.get(colour);
  if (other !== undefined) return shifted(westTexasPoints(other, staple), 0, 'colourStep');
  // Tinged 54 was read only up to staple 32: from there it keeps its distance to 44.
  const above = quotedPoints(westTexas, '44', 1, staple)! - quotedPoints(westTexas, '44', 1, lastReadOf54)!;
  return shifted(westTexasPoints('54', lastReadOf54), above, 'colourStep');
}

/** Every colour a market quotes. */
const coloursOf = (market: Market): string[] => market.grades.rows.flatMap(({ colours }) => colours);

/** The quoted colour whose West Texas price at base staple is nearest. */
function nearestQuoted(market: Market, colour: string): string {
  const at = (code: string) => westTexasPoints(code, baseStaple).points;
  const wanted = at(colour);
  return coloursOf(market).reduce((best, code) =>
    Math.abs(at(code) - wanted) < Math.abs(at(best) - wanted) ? code : best,
  );
}
/** Colours whose leaf steps stand in, in order. */
const leafReferences = ['22', '31', '41'];

/** Points inside the quoted staples, holes filled by leaf steps, then by the colour surface of West Texas. */
function insidePoints(market: Market, colour: string, leaf: number, staple: number): Difference {
  if (!market.leafAxis) {
    return shifted(westTexasPoints(colour, staple), 0, 'noLeafAxis');
  }
  const own = quotedPoints(market, colour, leaf, staple);
  if (own !== null) return quotation(own);
  if (quotes(market, colour) && leaf > 1) {
    for (const reference of leafReferences) {
      const here = quotedPoints(market, reference, leaf, staple);
      const cleaner = quotedPoints(market, reference, leaf - 1, staple);
      if (reference !== colour && here !== null && cleaner !== null) {
        return shifted(insidePoints(market, colour, leaf - 1, staple), here - cleaner, 'leafStep');
      }
    }
  }
  const anchor = nearestQuoted(market, colour);
  const step = westTexasPoints(colour, staple).points - westTexasPoints(anchor, staple).points;
  const scaled = atPriceOf(market.baseCentsPerLb, westTexas.baseCentsPerLb, step);
  return shifted(insidePoints(market, anchor, leaf, staple), scaled, 'colourStep');
}

/** Last official grade of a group, for what is below grade. */
const lowestOf = (colour: string): string => `${gradesOfGroup(Number(colour[1])).last}${colour[1]}`;

/**
 * Points of colour, leaf and staple against base quality in a market. Gaps of the source are filled and flagged.
 * @param colour official code, 11 to 85
 * @param leaf 1 to 8
 * @param staple staple code, thirty-seconds
 */
export function gradePoints(market: Market, colour: string, leaf: number, staple: number): Difference {
  if (isBelowGrade(colour)) return shifted(gradePoints(market, lowestOf(colour), leaf, staple), 0, 'belowGrade');
  if (leaf > worstQuotedLeaf) return shifted(gradePoints(market, colour, worstQuotedLeaf, staple), 0, 'belowGrade');
  const shortest = market.staples[0]!;
  const longest = market.staples.at(-1)!;
  if (staple >= shortest) return insidePoints(market, colour, leaf, Math.min(staple, longest));
  const at = insidePoints(market, colour, leaf, shortest);
  // East Texas quotes staples 26 to 31 in one column; shorter ones are nowhere quoted.
  const sharesColumn = market === eastTexas && staple >= shortestShared;
  if (sharesColumn) return at;
  const steps = eastTexas.staples;
  if (!steps.includes(shortest) || market === eastTexas) return shifted(at, 0, 'heldShortest');
  const below = Math.max(staple, steps[0]!);
  const step =
    insidePoints(eastTexas, colour, leaf, below).points - insidePoints(eastTexas, colour, leaf, shortest).points;
  const filled = shifted(at, atPriceOf(market.baseCentsPerLb, eastTexas.baseCentsPerLb, step), 'shortStaple');
  return staple < shortestShared ? shifted(filled, 0, 'heldShortest') : filled;
}

/** Points of a reading on a scale of bands. The reading is rounded to tenths, as it is recorded. */
export function bandPoints(table: { readonly rows: readonly Band[] }, reading: number): Difference {
  const tenths = Math.round(reading * 10) / 10;
  let band = table.rows[0]!;
  for (const row of table.rows) if (tenths >= row.from) band = row;
  return { points: band.points, filled: band.filled === undefined ? [] : [band.filled] };
}

/**
 * Points for extraneous matter. The record has room for one call, so the costliest counts.
 * @returns zero where nothing was called
 */
export function extraneousPoints(market: Market, calls: readonly ExtraneousCall[]): Difference {
  let worst: Difference = quotation(0);
  for (const { kind, level } of calls) {
    const row = market.extraneous.rows.find((each) => each.kind === quotedAs(kind) && each.level === level);
    if (row && row.points < worst.points) {
      worst = { points: row.points, filled: row.filled === undefined ? [] : [row.filled] };
    }
  }
  return worst;
}
