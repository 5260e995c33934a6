import { bollFacts, pickingFacts, stageFacts } from './facts.ts';
import { type Growing, openPercentOf } from './growing.ts';
import { closeSeason } from './step-opening.ts';

/** The day from which the wait for picking is counted, or -1. */
function readyDay(growing: Growing, i: number): number {
  const { plan, heat, aidDay, frostDay } = growing;
  if (aidDay >= 0) return aidDay;
  const afterFrost = frostDay >= 0 ? frostDay + pickingFacts.frostToReadyDays.value : -1;
  if (plan.harvestAid) return afterFrost;
  const open = openPercentOf(growing) >= plan.openPercent || heat.firstDay + i >= pickingFacts.latestReadyDay.value;
  if (open) return i;
  return afterFrost >= 0 && afterFrost <= i ? afterFrost : -1;
}

/** Frost ends the season, or kills a seedling. */
function meetFrost(growing: Growing, i: number): void {
  const { weather, heat, stages, closed } = growing;
  const dayOfYear = heat.firstDay + i;
  if (stages.emerged < 0 || closed >= 0) return;
  if (weather.days[dayOfYear - 1]!.minF > stageFacts.killingFrostF.value) return;
  growing.frostDay = i;
  growing.killedYoung = dayOfYear < stageFacts.frostSeasonDay.value;
  closeSeason(growing, i, 0);
}

/**
 * The end-of-season decisions of a day: frost, harvest aid, picking.
 * @returns whether the season is over
 */
export function stepHarvest(growing: Growing, state: { waitFrom: number }, i: number): boolean {
  const { plan, weather, heat, totals, pickDays, lastDay } = growing;
  const dayOfYear = heat.firstDay + i;
  meetFrost(growing, i);
  if (growing.killedYoung) return true;
  if (plan.harvestAid && growing.closed < 0 && totals.bollsKept > 0) {
    // Late aid is worth its price only where something is open already.
    const late = dayOfYear >= pickingFacts.latestAidDay.value && totals.bollsOpen > 0;
    if (late || openPercentOf(growing) >= plan.openPercent) {
      growing.aidDay = i;
      closeSeason(growing, i, bollFacts.gainAfterAidDays.value);
    }
  }
  if (state.waitFrom < 0) state.waitFrom = readyDay(growing, i);
  const pickings = plan.method === 'hand' ? plan.pickings : 1;
  const wait =
    pickDays.length > 0
      ? pickDays.at(-1)! + pickingFacts.daysBetweenPickings.value
      : state.waitFrom >= 0
        ? state.waitFrom + plan.daysToHarvest
        : lastDay;
  const dry = weather.days[dayOfYear - 1]!.rainInches < pickingFacts.dryDayInches.value;
  if (worthPicking(growing) && ((i >= wait && dry) || i === lastDay)) {
    pickDays.push(i);
    growing.bollsPicked = totals.bollsOpen;
  }
  if (pickDays.length >= pickings || i === lastDay) return true;
  // After frost or harvest aid nothing more will open once the old bolls have.
  const allOpen = growing.closed >= 0 && i > growing.closed + bollFacts.openAfterAidDays.value;
  return allOpen && !worthPicking(growing);
}

/** Whether a picking would find bolls: any the first time, enough to send the hands in again later. */
function worthPicking({ totals, bollsPicked, pickDays }: Growing): boolean {
  const left = totals.bollsOpen - bollsPicked;
  return pickDays.length === 0 ? left > 0 : left > pickingFacts.leastPickingShare.value * totals.bollsKept;
}
