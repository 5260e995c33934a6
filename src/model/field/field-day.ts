import { inchesFromMillimetres } from '../units.ts';
import type { FieldDay } from './field-season.ts';
import { type Growing, openPercentOf } from './growing.ts';
import type { WaterDay } from './water.ts';

/** The record of a day, once everything that happens in it has happened. */
export function fieldDay(growing: Growing, i: number, water: WaterDay, aboveWhite: number | null): FieldDay {
  const { heat, weather, calendar, totals, soil } = growing;
  const { dayOfYear, maxF, minF, rainInches } = weather.days[heat.firstDay - 1 + i]!;
  let flowersToday = 0;
  for (const flowers of calendar.flowers) flowersToday += flowers[i]!;
  return {
    dayOfYear,
    dd60: heat.dd60[i]! - (i > 0 ? heat.dd60[i - 1]! : 0),
    dd60SincePlanting: heat.dd60[i]!,
    hu8655SincePlanting: heat.hu8655[i]!,
    maxF,
    minF,
    rainInches,
    irrigationInches: inchesFromMillimetres(water.irrigatedMm),
    waterStress: 1 - water.supply,
    soilWaterFraction: soil.waterMm / soil.capacityMm,
    nodes: calendar.nodes[i]!,
    nodesAboveWhiteFlower: aboveWhite,
    plantHeightInches: growing.heightInches,
    perPlant: {
      squares: Math.max(0, totals.squares - totals.squaresShed - totals.flowers),
      flowersToday,
      greenBolls: Math.max(0, totals.flowers - totals.bollsShed - totals.bollsOpen - flowersToday),
      openBolls: totals.bollsOpen,
      shed: totals.squaresShed + totals.bollsShed,
    },
    openPercent: openPercentOf(growing),
  };
}
