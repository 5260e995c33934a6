import { fill } from '../../../language/fill.ts';
import type { Messages } from '../../../language/messages/en.ts';
import type { Words } from '../../../language/words.ts';
import type { DestinationAccount } from '../../../model/ledger.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { ledgerOf } from '../ledger-panel.tsx';

/** What comes into a station, and where it goes, in one sentence; none past a stop. */
export function flowText(season: Season, station: StationId, words: Words): string[] {
  const { messages, formats } = words;
  const { scenes } = messages;
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
