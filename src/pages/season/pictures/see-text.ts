import { fill } from '../../../language/fill.ts';
import type { Messages } from '../../../language/messages/en.ts';
import type { Words } from '../../../language/words.ts';
import type { DestinationAccount } from '../../../model/ledger.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { ledgerOf } from '../ledger-panel.tsx';
import { fieldDayOn } from './field-plant.ts';

/**
 * What a scene shows, in words: the plant and its fruit on a day, or what comes in and where it goes.
 * @param dayOfYear the day shown, for the field's stations
 */
export function seeText(season: Season, station: StationId, dayOfYear: number, words: Words): string[] {
  const { messages, formats } = words;
  const { scenes } = messages;
  if (station === 'planting' || station === 'bloom' || station === 'boll') {
    const day = fieldDayOn(season.field, dayOfYear);
    const { emerged } = season.field.events;
    if (emerged === null || day.dayOfYear < emerged) return [furrowText(season, day.dayOfYear, words)];
    const { squares, flowersToday, greenBolls, openBolls, shed } = day.perPlant;
    const count = (value: number) => formats.number(value, 1);
    return [
      fill(scenes.plant, {
        height: formats.length(day.plantHeightInches).text,
        date: formats.day(day.dayOfYear),
        nodes: formats.number(day.nodes, 1),
      }),
      messages.readings.samplePlant,
      fill(scenes.fruit, {
        squares: count(squares),
        flowers: count(flowersToday),
        green: count(greenBolls),
        open: count(openBolls),
        shed: count(shed),
      }),
    ];
  }
  const ledger = ledgerOf(season, station, 'bale');
  if (!ledger) return [];
  const rows = ledgerRows(ledger, words.unitSystem);
  const sign = messages.units[words.unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
  const mass = (value: number) => `${formats.number(value, rows.decimals)}\u00a0${sign}`;
  const list = rows.out.filter(({ all }) => all > 0).map(({ account, all }) => partText(account, mass(all), messages));
  const water = rows.in.find(({ account }) => account === 'moistureTakenUp' || account === 'moistureAdded');
  return [
    fill(scenes.flow, {
      mass: mass(rows.inAll.all),
      name: messages.stations[station].name,
      water: water && water.all > 0 ? fill(scenes.flowWater, { mass: mass(water.all) }) : '',
      list: formats.list(list),
    }),
  ];
}

/** Accounts whose names say what became of the cotton, not where it went. */
const fates: readonly string[] = [
  'leftInField',
  'weathered',
  'moduleLoss',
  'evaporated',
  'invisibleLoss',
  'effluent',
] satisfies DestinationAccount[];

function partText(account: string, mass: string, { scenes, accounts }: Messages): string {
  const name = (accounts.destinations as Readonly<Record<string, string>>)[account] ?? account;
  if (account === 'lot') return fill(scenes.flowParts.lot, { mass });
  const lower = name.charAt(0).toLocaleLowerCase() + name.slice(1);
  return fill(fates.includes(account) ? scenes.flowParts.lost : scenes.flowParts.other, { mass, name: lower });
}

/** Seeds in the ground, before the crop is up. */
function furrowText({ field, scenario }: Season, dayOfYear: number, { messages, formats }: Words): string {
  const sown = field.counts.find(({ station }) => station === 'planting');
  const plants = sown?.shares.find(({ name }) => name === 'plants')?.count ?? 0;
  const share = sown && sown.whole.count > 0 ? plants / sown.whole.count : 0;
  return fill(messages.readings.furrow, {
    seeds: formats.seeds(scenario.decisions.planting.seedsPerFoot).spoken,
    date: formats.day(dayOfYear),
    share: formats.percent(100 * share, 0),
  });
}
