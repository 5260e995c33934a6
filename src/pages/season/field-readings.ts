import type { CountName } from '../../model/ledger.ts';
import type { Printed } from '../../workings/working.ts';
import { readingsIn, type StationReadings } from './reading.ts';

type Shown = Exclude<Printed, { as: 'exact' }>;
const day = (dayOfYear: number | null): Shown | null => (dayOfYear === null ? null : { as: 'day', value: dayOfYear });
const percent = (value: number): Shown => ({ as: 'percent', value, decimals: 0 });
const rain = (inches: number): Shown => ({ as: 'rain', value: inches });
const oneDecimal = (value: number): Shown => ({ as: 'number', value, decimals: 1 });

export const plantingReadings: StationReadings = ({ field }, words) => {
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  return [
    ...reading('stand', readings.stand, { as: 'count', value: field.plantsPerAcre }),
    ...reading('emerged', readings.emerged, day(field.events.emerged)),
    ...reading('firstSquare', readings.firstSquare, day(field.events.firstSquare)),
    ...reading(
      'bollWeight',
      cloth.field.bollWeight,
      field.bollGrams > 0 ? { as: 'smallMass', value: field.bollGrams } : null,
    ),
    ...reading('yield', cloth.field.yield, field.crop ? { as: 'fieldYield', value: field.crop.lintLbPerAcre } : null),
  ];
};

export const bloomReadings: StationReadings = ({ field }, words) => {
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const dropped = (station: 'bloom' | 'boll', name: CountName) => {
    const ledger = field.counts.find((counts) => counts.station === station);
    const share = ledger?.shares.find((each) => each.name === name);
    return ledger && share && ledger.whole.count > 0 ? percent((100 * share.count) / ledger.whole.count) : null;
  };
  const nodes = field.nodesAboveWhiteFlowerAtFirstFlower;
  return [
    ...reading('firstFlower', cloth.field.firstFlower, day(field.events.firstFlower)),
    ...reading('nodesAboveWhiteFlower', cloth.field.nodesAboveWhiteFlower, nodes === null ? null : oneDecimal(nodes)),
    ...reading('rain', cloth.field.rain, rain(field.seasonWaterInches.rain)),
    ...reading('irrigation', cloth.field.irrigation, rain(field.seasonWaterInches.irrigation)),
    ...reading('squaresDropped', readings.squaresDropped, dropped('bloom', 'squaresShed')),
    ...reading('bollsDropped', readings.bollsDropped, dropped('boll', 'bollsShed')),
    ...reading('bollsPerPlant', cloth.field.bollsPerPlant, field.crop ? oneDecimal(field.bollsPerPlant) : null),
  ];
};

export const bollReadings: StationReadings = ({ field }, words) => {
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const { crop } = field;
  return [
    ...reading('firstOpenBoll', cloth.field.firstOpenBoll, day(field.events.firstOpenBoll)),
    ...reading('harvestDay', readings.harvestDay, day(field.harvestDays.at(-1) ?? null)),
    ...reading('openAtHarvest', readings.openAtHarvest, crop ? percent(crop.openPercentAtHarvest) : null),
    ...reading('bollsPerPlant', cloth.field.bollsPerPlant, crop ? oneDecimal(field.bollsPerPlant) : null),
    ...reading(
      'lintPerBoll',
      readings.lintPerBoll,
      crop ? { as: 'smallMass', value: field.lintGramsPerBoll, decimals: 2 } : null,
    ),
    ...reading('rainOnOpenBolls', readings.rainOnOpenBolls, crop ? rain(crop.rainAfterOpeningInches) : null),
    ...reading('yield', cloth.field.yield, crop ? { as: 'fieldYield', value: crop.lintLbPerAcre } : null),
  ];
};
