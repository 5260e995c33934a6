import type { CountName } from '../../model/ledger.ts';
import { type Reading, reading, type StationReadings } from './reading.ts';

const day = (dayOfYear: number | null, write: (day: number) => string) =>
  dayOfYear === null ? null : write(dayOfYear);

export const plantingReadings: StationReadings = ({ field }, { messages, formats }) => {
  const { readings, cloth } = messages;
  return [
    ...reading(readings.stand, formats.count(field.plantsPerAcre)),
    ...reading(readings.emerged, day(field.events.emerged, formats.day)),
    ...reading(readings.firstSquare, day(field.events.firstSquare, formats.day)),
    ...reading(cloth.field.bollWeight, field.bollGrams > 0 ? formats.smallMass(field.bollGrams).text : null),
    ...reading(cloth.field.yield, field.crop ? formats.fieldYield(field.crop.lintLbPerAcre).text : null),
  ];
};

export const bloomReadings: StationReadings = ({ field }, { messages, formats }) => {
  const { readings, cloth } = messages;
  const dropped = (station: 'bloom' | 'boll', name: CountName) => {
    const ledger = field.counts.find((counts) => counts.station === station);
    const share = ledger?.shares.find((each) => each.name === name);
    return ledger && share && ledger.whole.count > 0
      ? formats.percent((100 * share.count) / ledger.whole.count, 0)
      : null;
  };
  const nodes = field.nodesAboveWhiteFlowerAtFirstFlower;
  return [
    ...reading(cloth.field.firstFlower, day(field.events.firstFlower, formats.day)),
    ...reading(cloth.field.nodesAboveWhiteFlower, nodes === null ? null : formats.number(nodes, 1)),
    ...reading(cloth.field.rain, formats.rain(field.seasonWaterInches.rain).text),
    ...reading(cloth.field.irrigation, formats.rain(field.seasonWaterInches.irrigation).text),
    ...reading(readings.squaresDropped, dropped('bloom', 'squaresShed')),
    ...reading(readings.bollsDropped, dropped('boll', 'bollsShed')),
    ...reading(cloth.field.bollsPerPlant, field.crop ? formats.number(field.bollsPerPlant, 1) : null),
  ];
};

export const bollReadings: StationReadings = ({ field }, { messages, formats }): Reading[] => {
  const { readings, cloth } = messages;
  return [
    ...reading(cloth.field.firstOpenBoll, day(field.events.firstOpenBoll, formats.day)),
    ...reading(readings.harvestDay, day(field.harvestDays.at(-1) ?? null, formats.day)),
    ...reading(readings.openAtHarvest, field.crop ? formats.percent(field.crop.openPercentAtHarvest, 0) : null),
    ...reading(cloth.field.bollsPerPlant, field.crop ? formats.number(field.bollsPerPlant, 1) : null),
    ...reading(readings.lintPerBoll, field.crop ? formats.smallMass(field.lintGramsPerBoll, 2).text : null),
    ...reading(readings.rainOnOpenBolls, field.crop ? formats.rain(field.crop.rainAfterOpeningInches).text : null),
    ...reading(cloth.field.yield, field.crop ? formats.fieldYield(field.crop.lintLbPerAcre).text : null),
  ];
};
