import type { CountLedger } from '../ledger.ts';
import { retentionFacts } from './facts.ts';
import { positionCount } from './fruit-calendar.ts';
import type { Growing } from './growing.ts';
import { rowFeetPerAcre } from './stand.ts';

/** What became of the squares and flowers of one plant by the end of a day. */
interface FruitCount {
  squares: number;
  squaresShed: number;
  squaresUnopened: number;
  flowersToday: number;
  flowersBefore: number;
  bolls: number;
  bollsShed: number;
}

/** Follows every branch cohort's squares: shed, still closed, or gone to flower. */
function countSquares(growing: Growing, p: number, lastDay: number, count: FruitCount): void {
  const { calendar, positions } = growing;
  const { squaresKept } = positions[p]!;
  for (let branchDay = 0; branchDay <= lastDay; branchDay++) {
    const squareDay = calendar.squareDay[p]![branchDay]!;
    if (squareDay < 0 || squareDay > lastDay) continue;
    const flowerDay = calendar.flowerDay[p]![branchDay]!;
    const squares = calendar.sites[p]![branchDay]! * calendar.newBranches[branchDay]!;
    count.squares += squares;
    if (squareDay + retentionFacts.squareShedDays.value <= lastDay) count.squaresShed += squares * (1 - squaresKept);
    else count.squaresUnopened += squares * (1 - squaresKept);
    if (flowerDay < 0 || flowerDay > lastDay) count.squaresUnopened += squares * squaresKept;
  }
}

/** Follows every day's flowers: shed, or a boll (one about to be shed still hangs). */
function countFlowers({ calendar }: Growing, p: number, lastDay: number, count: FruitCount): void {
  count.flowersToday += calendar.flowers[p]![lastDay]!;
  for (let day = 0; day < lastDay; day++) {
    const flowers = calendar.flowers[p]![day]!;
    const kept = calendar.keptShare[p]![day]!;
    const fallen = day + retentionFacts.bollShedDays.value <= lastDay ? flowers * (1 - kept) : 0;
    count.flowersBefore += flowers;
    count.bollsShed += fallen;
    count.bolls += fallen > 0 ? flowers * kept : flowers;
  }
}

/**
 * The count ledgers of the three field stations, whole field, by the evening of a day. The two sides are added up from
 * different records: squares by branch, flowers by day.
 */
export function fieldCounts(growing: Growing, lastDay: number): CountLedger[] {
  const { plan, plantsPerAcre } = growing;
  const seeds = rowFeetPerAcre(plan.rowInches) * plan.seedsPerFoot * plan.acres;
  const plants = plantsPerAcre * plan.acres;
  const one: FruitCount = {
    squares: 0,
    squaresShed: 0,
    squaresUnopened: 0,
    flowersToday: 0,
    flowersBefore: 0,
    bolls: 0,
    bollsShed: 0,
  };
  for (let p = 0; p < positionCount; p++) {
    countSquares(growing, p, lastDay, one);
    countFlowers(growing, p, lastDay, one);
  }
  const flowers = (one.flowersBefore + one.flowersToday) * plants;
  return [
    {
      station: 'planting',
      whole: { name: 'seedsSown', count: seeds },
      shares: [
        { name: 'plants', count: plants },
        { name: 'notEmerged', count: seeds - plants },
      ],
    },
    {
      station: 'bloom',
      whole: { name: 'squares', count: one.squares * plants },
      shares: [
        { name: 'flowers', count: flowers },
        { name: 'squaresShed', count: one.squaresShed * plants },
        { name: 'squaresUnopened', count: one.squaresUnopened * plants },
      ],
    },
    {
      station: 'boll',
      whole: { name: 'flowers', count: flowers },
      shares: [
        { name: 'bolls', count: one.bolls * plants },
        { name: 'bollsShed', count: one.bollsShed * plants },
        { name: 'flowersToday', count: one.flowersToday * plants },
      ],
    },
  ];
}
