import { KILO, poundsFromKilograms } from '../units.ts';
import { nodeFacts, positionFacts, retentionFacts, stageFacts } from './facts.ts';
import { positionCount } from './fruit-calendar.ts';
import type { Growing } from './growing.ts';
import { newHeightInches, newNodes } from './nodes.ts';
import { flowersKept, heatKept } from './retention.ts';
import { outwardNeed } from './stages.ts';

/** Steps out from the main stem, by position; vegetative branches run one step behind. */
const outwardSteps = [0, 1, 2, 1];
const squareNeeds = outwardSteps.map(outwardNeed);
const flowerNeeds = squareNeeds.map(({ dd60, days }) => ({
  dd60: dd60 + stageFacts.flowerDd60.value,
  days: days + stageFacts.flowerDays.value,
}));
/** Boll mass by position, against a first-position boll. */
export const positionMass = [
  positionFacts.first.value,
  positionFacts.second.value,
  positionFacts.third.value,
  positionFacts.vegetative.value,
];

/** Lint that the field can carry with the water it has had so far, lb/acre. */
function carryingCapacity({ climate, variety, soil }: Growing): number {
  const { capacityLintLbPerAcre, wholeFarmFactor, yieldResponse } = climate.levers;
  const met = soil.neededMm > 0 ? soil.usedMm / soil.neededMm : 1;
  // A field with no water at all still carries a trace, so that the load stays a number.
  const share = Math.max(retentionFacts.leastCapacityShare.value, 1 - yieldResponse.value * (1 - met));
  return capacityLintLbPerAcre.value * wholeFarmFactor.value * variety.capacityFactor * share;
}

/** Set lint over what the field can carry. */
export const fruitLoad = (growing: Growing): number => growing.setLintLbPerAcre / carryingCapacity(growing);

/** Grows the day's nodes and fruiting branches. */
export function stepNodes(growing: Growing, i: number, supply: number): void {
  const { calendar, stages, heat, closed } = growing;
  const before = i > 0 ? calendar.nodes[i - 1]! : 0;
  const branchesBefore = i > 0 ? calendar.branches[i - 1]! : 0;
  const growsNow = stages.emerged >= 0 && stages.emerged < i && closed < 0;
  const dd60 = heat.dd60[i]! - (i > 0 ? heat.dd60[i - 1]! : 0);
  const flowering = stages.firstFlower >= 0;
  const nodes = growsNow ? newNodes(dd60, flowering ? fruitLoad(growing) : 0, supply, flowering) : 0;
  // The first square is the first fruiting branch.
  const branches = stages.firstSquare === i ? 1 : stages.firstSquare >= 0 ? nodes : 0;
  calendar.nodes[i] = before + nodes;
  calendar.newBranches[i] = branches;
  calendar.branches[i] = branchesBefore + branches;
  growing.heightInches += newHeightInches(nodes, supply);
}

/** Moves a pointer over the branch cohorts that have reached a need, calling `reached` for each. */
function advance(
  { heat, stages }: Growing,
  pointers: Int16Array,
  position: number,
  need: { readonly dd60: number; readonly days: number },
  i: number,
  reached: (branchDay: number) => void,
): void {
  let branchDay = Math.max(pointers[position]!, stages.firstSquare);
  while (branchDay <= i && i - branchDay >= need.days && heat.dd60[i]! - heat.dd60[branchDay]! >= need.dd60) {
    reached(branchDay);
    branchDay++;
  }
  pointers[position] = branchDay;
}

/** New squares and flowers of the day, and what is kept of the flowers; then what falls today. */
export function stepFruit(growing: Growing, i: number, supply: number): void {
  const { calendar, stages, totals, positions, plantsPerAcre, variety, weather, heat } = growing;
  if (stages.firstSquare >= 0 && growing.closed < 0) {
    const { maxF, minF } = weather.days[heat.firstDay - 1 + i]!;
    const load = fruitLoad(growing);
    const warmth = heatKept(maxF, minF);
    const lintGramsPerBoll = (variety.lintPerSeedMg * variety.seedsPerBoll) / KILO;
    for (let p = 0; p < positionCount; p++) {
      const position = positions[p]!;
      const squares = calendar.squares[p]!;
      const flowers = calendar.flowers[p]!;
      // A loaded plant stops reaching outward as it stops reaching up.
      const sitesHere = position.sites * (p === 0 ? 1 : Math.max(0, 1 - load));
      const sites = calendar.sites[p]!;
      advance(growing, growing.nextSquare, p, squareNeeds[p]!, i, (branchDay) => {
        calendar.squareDay[p]![branchDay] = i;
        sites[branchDay] = sitesHere;
        squares[i] = squares[i]! + sitesHere * calendar.newBranches[branchDay]!;
      });
      advance(growing, growing.nextFlower, p, flowerNeeds[p]!, i, (branchDay) => {
        calendar.flowerDay[p]![branchDay] = i;
        flowers[i] = flowers[i]! + sites[branchDay]! * position.squaresKept * calendar.newBranches[branchDay]!;
      });
      const kept = flowersKept(position, load, supply, warmth);
      calendar.keptShare[p]![i] = kept;
      totals.squares += squares[i]!;
      totals.flowers += flowers[i]!;
      totals.bollsKept += flowers[i]! * kept;
      growing.setLintLbPerAcre += poundsFromKilograms(
        (plantsPerAcre * flowers[i]! * kept * positionMass[p]! * lintGramsPerBoll) / KILO,
      );
      if (p === 0 && flowers[i]! > 0 && stages.firstFlower < 0) stages.firstFlower = i;
    }
  }
  const squaresFall = i - retentionFacts.squareShedDays.value;
  const bollsFall = i - retentionFacts.bollShedDays.value;
  for (let p = 0; p < positionCount; p++) {
    if (squaresFall >= 0) totals.squaresShed += calendar.squares[p]![squaresFall]! * (1 - positions[p]!.squaresKept);
    if (bollsFall >= 0) totals.bollsShed += calendar.flowers[p]![bollsFall]! * (1 - calendar.keptShare[p]![bollsFall]!);
  }
}

/** Nodes above the highest white flower in the first position; null when none has opened lately. */
export function nodesAboveWhiteFlower(growing: Growing, i: number): number | null {
  const { calendar, stages, nextFlower } = growing;
  if (stages.firstFlower < 0 || growing.closed >= 0) return null;
  const topBranchDay = nextFlower[0]! - 1;
  const lastWhite = calendar.flowerDay[0]![topBranchDay]!;
  if (i - lastWhite > nodeFacts.whiteFlowerGapDays.value) return null;
  return calendar.branches[i]! - calendar.branches[topBranchDay]! + nodeFacts.nodesAboveNewSquare.value;
}
