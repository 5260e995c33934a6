import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import type { Refusal } from './season-machine.ts';

/** A machine goes over the field once, so it waits until half the bolls are open, percent. Common practice; extension services apply harvest aids at 60 %. */
const fewestOpenForMachine = 50;
/** Seed cotton wetter than this, percent wet basis, may wait a day or two at most. Published storage limit 12 % (Cotton Incorporated 2021), with room for a damp morning. */
const wettestToStorePercent = 15;
const longestWetDays = 2;

/**
 * Why a season must not go on from a station, or null. Pure: the statechart asks, the page says it in words.
 */
export function judgeSeason(season: Season, station: StationId): Refusal | null {
  const refuse = (reason: Refusal['reason'], values: Refusal['values'] = {}): Refusal => ({ station, reason, values });
  const { field, harvest, module, spinning, weaving, scenario, stopped } = season;
  if (stopped && stopped.station === station && (station === 'planting' || station === 'bloom' || station === 'boll')) {
    return refuse('cropFailed', { dd60: stopped.dd60 ?? 0 });
  }
  const byMachine = scenario.decisions.harvest.method !== 'hand';
  if (station === 'boll' && byMachine && field.crop && field.crop.openPercentAtHarvest < fewestOpenForMachine) {
    return refuse('notEnoughBollsOpen', { open: field.crop.openPercentAtHarvest, needed: fewestOpenForMachine });
  }
  if (station === 'harvest' && harvest && scenario.decisions.module.storageDays > longestWetDays) {
    if (harvest.moisturePercent > wettestToStorePercent) {
      return refuse('tooWetToStore', { moisture: harvest.moisturePercent, limit: wettestToStorePercent });
    }
  }
  if (station === 'module' && module?.verdict === 'ginNow' && scenario.decisions.module.storageDays > longestWetDays) {
    return refuse('tooWetToStore', { moisture: module.moisturePercent, limit: wettestToStorePercent });
  }
  if (station === 'spinning' && spinning && spinning.yarn === null) {
    return refuse('yarnOutOfReach', {
      count: scenario.decisions.spinning.countNe,
      limit: spinning.verdict.nearestFeasibleNe,
    });
  }
  if (station === 'weaving' && weaving?.stopped) {
    return refuse('settTooHigh', {
      sett: scenario.decisions.weaving.endsPerInch,
      limit: weaving.stopped.highestEndsPerInch ?? weaving.stopped.maximumSettPerInch,
    });
  }
  return null;
}
