import { roundingFacts } from '../rounding-facts.ts';
import { bollPace } from './boll-clock.ts';
import { bollFacts, stageFacts } from './facts.ts';
import { positionCount } from './fruit-calendar.ts';
import type { Growing } from './growing.ts';

/** Age of a boll cohort on its own clock, days: 45 when it opens. */
function bollAge({ heat, variety }: Growing, flowerDay: number, i: number): number {
  return bollPace(variety) * (heat.bollAge[i]! - heat.bollAge[flowerDay]!);
}

/** Ends growth: bolls old enough will open within a week, younger ones never. */
export function closeSeason(growing: Growing, i: number, gainAfterClosing: number): void {
  growing.closed = i;
  growing.gainAfterClosing = gainAfterClosing;
  let flowerDay = growing.nextOpen;
  while (flowerDay < i && bollAge(growing, flowerDay, i) >= bollFacts.safeAgeDays.value) flowerDay++;
  growing.lostFrom = flowerDay;
}

/** Opens the bolls whose time has come. */
export function stepOpening(growing: Growing, i: number): void {
  const { calendar, totals, closed, stages } = growing;
  const mature = stageFacts.matureAgeDays.value;
  const last = closed >= 0 ? growing.lostFrom : i;
  const forced = closed >= 0 && i >= closed + bollFacts.openAfterAidDays.value;
  while (growing.nextOpen < last) {
    const flowerDay = growing.nextOpen;
    const age = bollAge(growing, flowerDay, i);
    // Sums of tiny days may fall short by a rounding.
    if (age < mature - roundingFacts.hair.value && !forced) break;
    calendar.openDay[flowerDay] = i;
    calendar.openAge[flowerDay] = Math.min(
      mature,
      closed >= 0 ? bollAge(growing, flowerDay, closed) + growing.gainAfterClosing : age,
    );
    for (let p = 0; p < positionCount; p++) {
      totals.bollsOpen += calendar.flowers[p]![flowerDay]! * calendar.keptShare[p]![flowerDay]!;
    }
    growing.nextOpen++;
  }
  if (stages.firstOpenBoll < 0 && totals.bollsOpen > 0) stages.firstOpenBoll = i;
}
