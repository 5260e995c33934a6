import type { Words } from '../../language/words.ts';
import { totalKg } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { cottonLeft } from '../../predict/harvest.ts';
import { count, counted, inLedger, mass, step } from '../../workings/steps.ts';
import type { Asked } from '../../workings/work-out.ts';
import type { Step } from '../../workings/working.ts';
import { predictWords } from './predict-words.ts';

/** The steps to an answer that is none of its station's figures. */
function stepsTo(season: Season, station: StationId, words: Words): Step[] {
  const { field, module, ginning } = season;
  if (station === 'planting') {
    const sown = field.counts.find((counts) => counts.station === 'planting');
    const plants = sown?.shares.find(({ name }) => name === 'plants');
    if (!sown || !plants) return [];
    return [
      step({ count: 'seedsSown' }, count(sown.whole.count), counted('planting')),
      step({ count: 'plants' }, count(plants.count), counted('planting')),
    ];
  }
  if (station === 'harvest') {
    const cotton = cottonLeft(season);
    const { steps } = predictWords(words.language);
    if (!cotton) return [];
    return [
      step({ label: steps.cottonHung }, mass(cotton.hungKg), inLedger('harvest')),
      step({ label: steps.cottonLeft }, mass(cotton.leftKg), inLedger('harvest')),
    ];
  }
  if (station === 'ginning' && module && ginning) {
    return [
      step('seedCottonToGin', mass(totalKg(module.lot)), inLedger('cleaning')),
      step('seedToHouse', mass(totalKg(ginning.seedHouse)), inLedger('ginning')),
    ];
  }
  return [];
}

/** What opens the working of an answer that is none of its station's figures. The days to the open boll follow its date. */
export const answerAsked = (season: Season, station: StationId, text: string, words: Words): Asked => ({
  topic: 'seen',
  at: `${station}/row/answer`,
  text,
  steps: stepsTo(season, station, words),
  ...(station === 'boll' ? { after: { topic: 'reading', station, key: 'firstOpenBoll' } as const } : {}),
});
