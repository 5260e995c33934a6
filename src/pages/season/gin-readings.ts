import { summariseGin } from '../../model/gin/byproducts.ts';
import type { DestinationAccount, MassLedger } from '../../model/ledger.ts';
import { totalDryKg, totalKg } from '../../model/lot.ts';
import { kilogramsFromPounds, poundsFromKilograms } from '../../model/units.ts';
import { reading, type StationReadings } from './reading.ts';

/** What a ledger sends to an account, kg with water. */
const sentKg = (ledger: MassLedger, account: DestinationAccount): number =>
  ledger.out
    .filter((entry) => entry.account === account)
    .reduce((sum, entry) => sum + totalDryKg(entry.dryKg) + entry.waterKg, 0);

export const harvestReadings: StationReadings = ({ harvest }, { messages, formats }) => {
  if (!harvest) return [];
  const { readings } = messages;
  const { personDays, machineHours } = harvest.labour;
  return [
    ...reading(readings.seedCotton, formats.mass(totalKg(harvest.lot), 0).text),
    ...reading(readings.foreignMatter, formats.percent(harvest.foreignMatterPercent)),
    ...reading(readings.moisture, formats.percent(harvest.moisturePercent)),
    ...reading(readings.leftInField, formats.mass(sentKg(harvest.ledger, 'leftInField'), 0).text),
    ...reading(readings.weathered, formats.mass(sentKg(harvest.ledger, 'weathered'), 0).text),
    ...reading(readings.personDays, personDays === null ? null : formats.count(personDays)),
    ...reading(readings.machineHours, machineHours === null ? null : formats.number(machineHours, 1)),
  ];
};

export const moduleReadings: StationReadings = ({ module, scenario }, { messages, formats }) => {
  if (!module) return [];
  const { readings } = messages;
  const wagon = scenario.decisions.module.kind === 'wagon';
  const hottest = Math.max(...module.coreTemperatureF.map(({ f }) => f));
  return [
    ...reading(wagon ? readings.wagons : readings.modules, formats.count(module.moduleCount)),
    ...reading(readings.moisture, formats.percent(module.moisturePercent)),
    ...reading(readings.hottestCore, formats.temperature(hottest).text),
    ...reading(readings.storage, readings.moduleVerdicts[module.verdict]),
    ...reading(readings.yellowing, formats.percent(100 * module.yellowing, 0)),
  ];
};

export const cleaningReadings: StationReadings = ({ cleaning }, { messages, formats }) => {
  if (!cleaning) return [];
  const { readings } = messages;
  return [
    ...reading(readings.trashTaken, formats.percent(100 * cleaning.trashRemovedFraction, 0)),
    ...reading(readings.lintMoisture, formats.percent(cleaning.lintMoisturePercent)),
    ...reading(readings.wentRound, formats.mass(cleaning.overflowKg, 0).text),
    ...reading(messages.accounts.destinations.ginTrash, formats.mass(sentKg(cleaning.ledger, 'ginTrash'), 0).text),
  ];
};

export const ginningReadings: StationReadings = ({ cleaning, ginning, pressing }, { messages, formats }) => {
  if (!cleaning || !ginning || !pressing) return [];
  const { readings, cloth, accounts } = messages;
  const gin = summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger);
  const lintToMotes = ginning.ledger.out
    .filter((entry) => entry.account === 'lintCleanerWaste')
    .reduce((sum, entry) => sum + entry.dryKg.lint, 0);
  const pounds = (lb: number) => formats.mass(kilogramsFromPounds(lb), 0).text;
  return [
    ...reading(cloth.gin.turnout, formats.percent(100 * gin.turnout)),
    ...reading(cloth.gin.seedCottonPerBale, pounds(gin.seedCottonLbPer480LbBale)),
    ...reading(cloth.gin.seedPerBale, pounds(gin.seedLbPer480LbBale)),
    ...reading(readings.lintMoisture, formats.percent(ginning.standMoisturePercent)),
    ...reading(
      accounts.destinations.lintCleanerWaste,
      formats.mass(sentKg(ginning.ledger, 'lintCleanerWaste'), 0).text,
    ),
    ...reading(readings.lintLost, formats.mass(lintToMotes, 0).text),
  ];
};

export const pressingReadings: StationReadings = ({ pressing }, { messages, formats }) => {
  if (!pressing) return [];
  const { readings, cloth } = messages;
  const { bales } = pressing;
  const net = bales.reduce((sum, bale) => sum + poundsFromKilograms(bale.netKg), 0) / bales.length;
  const first = bales[0];
  return [
    ...reading(readings.balesPressed, formats.count(bales.length)),
    ...reading(readings.baleWeight, formats.pounds(net).text),
    ...reading(cloth.bale.tare, first ? formats.pounds(poundsFromKilograms(first.tareKg)).text : null),
    ...reading(readings.baleMoisture, formats.percent(pressing.moisturePercent)),
    ...reading(first?.tag ? cloth.bale.tag : cloth.bale.gin, first?.tag ?? first?.mark ?? null),
  ];
};

/** The value that turns up most among the bales. */
function usual<Value>(values: readonly Value[]): Value | null {
  const counts = new Map<Value, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

export const classingReadings: StationReadings = ({ classing, payments }, { messages, formats }) => {
  if (!classing || !payments) return [];
  const { readings, cloth, fibre } = messages;
  const { classed } = classing;
  const color = usual(classed.map((bale) => (bale.byEye ? bale.colorName : `${bale.color} ${bale.colorName}`)));
  const pounds = classed.reduce((sum, bale) => sum + bale.netLb, 0);
  const value = classed.reduce((sum, bale) => sum + bale.valueUsd, 0);
  const leaf = usual(classed.map((bale) => bale.leaf));
  const staple = usual(classed.map((bale) => bale.staple32nds));
  const assumedChart = { mark: 'assumption', source: messages.limits.colorChart } as const;
  return [
    ...reading(fibre.readings.colorGrade, color, assumedChart),
    ...reading(fibre.readings.leafGrade, leaf === null ? null : formats.count(leaf), {
      mark: 'memory',
      source: messages.limits.couplings,
    }),
    ...reading(fibre.readings.staple, staple === null ? null : `${staple}/32`),
    ...reading(readings.price, pounds > 0 ? formats.centsPerPound((100 * value) / pounds).text : null),
    ...reading(readings.value, formats.money(value, 0)),
    ...reading(cloth.money.left, formats.money(payments.netToFarmUsd, 0)),
  ];
};
