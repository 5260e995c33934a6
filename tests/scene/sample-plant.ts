import type { DrawnNode, DrawnPlant, DrawnSite } from '../../src/scene/stations/plant/plant-sample.ts';

/** A plant made by hand for looking and testing: planted day 120, first fruiting branch at node 6, three days up, six days out. */
export function handMadePlant(): DrawnPlant {
  const nodes: DrawnNode[] = [];
  for (let number = 1; number <= 20; number++) {
    const appearsDay = 128 + Math.round(number * 3.2);
    const fruiting = number >= 6;
    const sites: DrawnSite[] = [];
    for (const position of [1, 2, 3] as const) {
      if (!fruiting || (position === 3 && number > 13) || (position === 2 && number > 17)) continue;
      const squareDay = appearsDay + 6 + (position - 1) * 6;
      const flowerDay = squareDay + 22;
      // Which fruit is shed follows a fixed pattern: about half.
      const shed = (number * 7 + position * 5) % 9 < 2 + position;
      sites.push({
        position,
        squareDay,
        flowerDay: shed && number % 2 ? null : flowerDay,
        shedDay: shed ? (number % 2 ? squareDay + 12 : flowerDay + 6) : null,
        openDay: shed ? null : flowerDay + 50,
        locks: (number + position) % 3 === 0 ? 5 : 4,
        seeds: 26 + ((number * position) % 9),
      });
    }
    nodes.push({ number, appearsDay, branch: fruiting ? 'fruiting' : 'none', side: number % 2 ? 1 : -1, sites });
  }
  return { nodes };
}
