import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { Change } from '../../ui/what-changed.tsx';
import { sewingReadings, spinningReadings, weavingReadings } from './cloth-readings.ts';
import { bloomReadings, bollReadings, plantingReadings } from './field-readings.ts';
import {
  classingReadings,
  cleaningReadings,
  ginningReadings,
  harvestReadings,
  moduleReadings,
  pressingReadings,
} from './gin-readings.ts';
import type { StationReadings } from './reading.ts';

const readingsOf: Readonly<Record<StationId, StationReadings>> = {
  planting: plantingReadings,
  bloom: bloomReadings,
  boll: bollReadings,
  harvest: harvestReadings,
  module: moduleReadings,
  cleaning: cleaningReadings,
  ginning: ginningReadings,
  pressing: pressingReadings,
  classing: classingReadings,
  spinning: spinningReadings,
  weaving: weavingReadings,
  sewing: sewingReadings,
};

/**
 * What a station came to, beside what it came to before the last decision.
 * @param before the season before that decision, or null
 */
export function stationChanges(season: Season, before: Season | null, station: StationId, words: Words): Change[] {
  const then = before ? readingsOf[station](before, words) : [];
  return readingsOf[station](season, words).map(({ label, text, trust }) => {
    const was = then.find((each) => each.label === label)?.text;
    return {
      label,
      after: text,
      ...(was === undefined ? {} : { before: was }),
      ...(trust ? { trust } : {}),
    };
  });
}
