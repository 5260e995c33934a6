import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import type { Refusal } from './season-machine.ts';

/** Fewer open bolls than this, percent, and no harvester goes in. A rule of this tool, far below the 60 % that extension services advise. */
const fewestOpenPercent = 20;
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
  if (station === 'boll' && field.crop && field.crop.openPercentAtHarvest < fewestOpenPercent) {
    return refuse('notEnoughBollsOpen', { open: field.crop.openPercentAtHarvest, needed: fewestOpenPercent });
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
