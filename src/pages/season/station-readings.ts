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
import type { Reading, StationReadings } from './reading.ts';
import { workingSource } from './working-source.ts';

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

/** The figures of a station. */
export const stationReadings = (season: Season, station: StationId, words: Words): Reading[] =>
  readingsOf[station](season, words);

/**
 * What a station came to, beside what it came to before the last decision.
 * @param before the season before that decision, or null
 */
export function stationChanges(season: Season, before: Season | null, station: StationId, words: Words): Change[] {
  const then = before ? stationReadings(before, station, words) : [];
  return stationReadings(season, station, words).map(({ key, label, text, trust }) => {
    const was = then.find((each) => each.label === label)?.text;
    const asked = { topic: 'reading', station, key } as const;
    return {
      label,
      after: text,
      working: workingSource(season, words, asked, label),
      ...(before === null || was === undefined
        ? {}
        : {
            before: was,
            workingBefore: workingSource(before, words, asked, `${label}, ${words.messages.common.before}`, 'before/'),
          }),
      ...(trust ? { trust } : {}),
    };
  });
}
