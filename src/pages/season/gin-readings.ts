import { summariseGin } from '../../model/gin/byproducts.ts';
import type { DestinationAccount, MassLedger } from '../../model/ledger.ts';
import { totalDryKg, totalKg } from '../../model/lot.ts';
import { kilogramsFromPounds, poundsFromKilograms } from '../../model/units.ts';
import type { Printed } from '../../workings/working.ts';
import { readingsIn, type StationReadings } from './reading.ts';

type Shown = Exclude<Printed, { as: 'exact' }>;
const mass = (kg: number): Shown => ({ as: 'mass', value: kg, decimals: 0 });
const percent = (value: number, decimals = 1): Shown => ({ as: 'percent', value, decimals });
const count = (value: number): Shown => ({ as: 'count', value });
const text = (shown: string | null): Shown | null => (shown === null ? null : { as: 'text', text: shown });
const dollars = (value: number): Shown => ({ as: 'money', value, decimals: 0 });

/** What a ledger sends to an account, kg with water. */
const sentKg = (ledger: MassLedger, account: DestinationAccount): number =>
  ledger.out
    .filter((entry) => entry.account === account)
    .reduce((sum, entry) => sum + totalDryKg(entry.dryKg) + entry.waterKg, 0);

export const harvestReadings: StationReadings = ({ harvest }, words) => {
  if (!harvest) return [];
  const { readings } = words.messages;
  const reading = readingsIn(words);
  const { personDays, machineHours } = harvest.labour;
  return [
    ...reading('seedCotton', readings.seedCotton, mass(totalKg(harvest.lot))),
    ...reading('foreignMatter', readings.foreignMatter, percent(harvest.foreignMatterPercent)),
    ...reading('moisture', readings.moisture, percent(harvest.moisturePercent)),
    ...reading('leftInField', readings.leftInField, mass(sentKg(harvest.ledger, 'leftInField'))),
    ...reading('weathered', readings.weathered, mass(sentKg(harvest.ledger, 'weathered'))),
    ...reading('personDays', readings.personDays, personDays === null ? null : count(personDays)),
    ...reading(
      'machineHours',
      readings.machineHours,
      machineHours === null ? null : { as: 'number', value: machineHours, decimals: 1 },
    ),
  ];
};

export const moduleReadings: StationReadings = ({ module, scenario }, words) => {
  if (!module) return [];
  const { readings } = words.messages;
  const reading = readingsIn(words);
  const wagon = scenario.decisions.module.kind === 'wagon';
  const hottest = Math.max(...module.coreTemperatureF.map(({ f }) => f));
  return [
    ...reading('modules', wagon ? readings.wagons : readings.modules, count(module.moduleCount)),
    ...reading('moisture', readings.moisture, percent(module.moisturePercent)),
    ...reading('hottestCore', readings.hottestCore, { as: 'temperature', value: hottest }),
    ...reading('storage', readings.storage, { as: 'word', list: 'moduleVerdicts', word: module.verdict }),
    ...reading('yellowing', readings.yellowing, percent(100 * module.yellowing, 0)),
  ];
};

export const cleaningReadings: StationReadings = ({ cleaning }, words) => {
  if (!cleaning) return [];
  const { readings } = words.messages;
  const reading = readingsIn(words);
  return [
    ...reading('trashTaken', readings.trashTaken, percent(100 * cleaning.trashRemovedFraction, 0)),
    ...reading('lintMoisture', readings.lintMoisture, percent(cleaning.lintMoisturePercent)),
    ...reading('wentRound', readings.wentRound, mass(cleaning.overflowKg)),
    ...reading('ginTrash', words.messages.accounts.destinations.ginTrash, mass(sentKg(cleaning.ledger, 'ginTrash'))),
  ];
};

export const ginningReadings: StationReadings = ({ cleaning, ginning, pressing }, words) => {
  if (!cleaning || !ginning || !pressing) return [];
  const { readings, cloth, accounts } = words.messages;
  const reading = readingsIn(words);
  const gin = summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger);
  const lintToMotes = ginning.ledger.out
    .filter((entry) => entry.account === 'lintCleanerWaste')
    .reduce((sum, entry) => sum + entry.dryKg.lint, 0);
  const pounds = (lb: number) => mass(kilogramsFromPounds(lb));
  return [
    ...reading('turnout', cloth.gin.turnout, percent(100 * gin.turnout)),
    ...reading('seedCottonPerBale', cloth.gin.seedCottonPerBale, pounds(gin.seedCottonLbPer480LbBale)),
    ...reading('seedPerBale', cloth.gin.seedPerBale, pounds(gin.seedLbPer480LbBale)),
    ...reading('lintMoisture', readings.lintMoisture, percent(ginning.standMoisturePercent)),
    ...reading(
      'lintCleanerWaste',
      accounts.destinations.lintCleanerWaste,
      mass(sentKg(ginning.ledger, 'lintCleanerWaste')),
    ),
    ...reading('lintLost', readings.lintLost, mass(lintToMotes)),
  ];
};

export const pressingReadings: StationReadings = ({ pressing }, words) => {
  if (!pressing) return [];
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const { bales } = pressing;
  const net = bales.reduce((sum, bale) => sum + poundsFromKilograms(bale.netKg), 0) / bales.length;
  const first = bales[0];
  return [
    ...reading('balesPressed', readings.balesPressed, count(bales.length)),
    ...reading('baleWeight', readings.baleWeight, { as: 'pounds', value: net }),
    ...reading('tare', cloth.bale.tare, first ? { as: 'pounds', value: poundsFromKilograms(first.tareKg) } : null),
    ...reading('baleMoisture', readings.baleMoisture, percent(pressing.moisturePercent)),
    ...reading('tag', first?.tag ? cloth.bale.tag : cloth.bale.gin, text(first?.tag ?? first?.mark ?? null)),
  ];
};

/** The value that turns up most among the bales. */
function usual<Value>(values: readonly Value[]): Value | null {
  const counts = new Map<Value, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

export const classingReadings: StationReadings = ({ classing, payments }, words) => {
  if (!classing || !payments) return [];
  const { readings, cloth, fibre } = words.messages;
  const reading = readingsIn(words);
  const { classed } = classing;
  const color = usual(classed.map((bale) => (bale.byEye ? bale.colorName : `${bale.color} ${bale.colorName}`)));
  const pounds = classed.reduce((sum, bale) => sum + bale.netLb, 0);
  const value = classed.reduce((sum, bale) => sum + bale.valueUsd, 0);
  const leaf = usual(classed.map((bale) => bale.leaf));
  const staple = usual(classed.map((bale) => bale.staple32nds));
  const assumedChart = { mark: 'assumption', source: words.messages.limits.colorChart } as const;
  return [
    ...reading('colorGrade', fibre.readings.colorGrade, text(color), assumedChart),
    ...reading('leafGrade', fibre.readings.leafGrade, leaf === null ? null : count(leaf), {
      mark: 'memory',
      source: words.messages.limits.couplings,
    }),
    ...reading('staple', fibre.readings.staple, text(staple === null ? null : `${staple}/32`)),
    ...reading('price', readings.price, pounds > 0 ? { as: 'centsPerPound', value: (100 * value) / pounds } : null),
    ...reading('value', readings.value, dollars(value)),
    ...reading('left', cloth.money.left, dollars(payments.netToFarmUsd)),
  ];
};
