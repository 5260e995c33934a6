import { momentWords as en } from '../../../language/messages/en/pictures/moment.ts';
import { momentWords as es } from '../../../language/messages/es/pictures/moment.ts';
import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { day, inLedger, mass, percent, step } from '../../../workings/steps.ts';
import { ledgerOf } from '../ledger-panel.tsx';
import type { PictureMoment, TwinRow } from './picture.ts';
import { accountSteps, drawnStep, type LedgerAccount } from './row-steps.ts';
import { stationPictures } from './station-pictures.ts';

/** What the sentences of any picture may say beside its table: the day, how much of the work is done, and the whole ledger. */
export function saidValues(season: Season, station: StationId, words: Words, shown: PictureMoment): TwinRow[] {
  const { dayOfYear, progress } = shown;
  const own = words.language === 'es' ? es : en;
  const { formats, unitSystem, messages } = words;
  const moment: TwinRow[] = [
    {
      key: 'said/day',
      label: own.day,
      text: formats.day(dayOfYear),
      steps: [step('plantedOn', day(season.field.plantedDay), { at: 'field' }), drawnStep(own.day, day(dayOfYear))],
    },
    {
      key: 'said/done',
      label: own.done,
      text: formats.percent(100 * progress, 0),
      steps: [drawnStep(own.done, percent(100 * progress, 0))],
    },
  ];
  const ofPicture = stationPictures[station].said?.(season, words, shown) ?? [];
  const ledger = ledgerOf(season, station, 'bale');
  if (!ledger) return [...moment, ...ofPicture];
  const rows = ledgerRows(ledger, unitSystem);
  const sign = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
  const unitKg = unitSystem === 'us' ? KG_PER_POUND : 1;
  const text = (value: number) => `${formats.number(value, rows.decimals)}\u00a0${sign}`;
  const names: Readonly<Record<string, string>> = { ...messages.accounts.sources, ...messages.accounts.destinations };
  const accounts = (['in', 'out'] as const).flatMap((side) =>
    rows[side].map(({ account, all }): TwinRow => {
      const lot = side === 'in' ? messages.readings.in : messages.readings.on;
      return {
        key: `said/${side}/${account}`,
        label: account === 'lot' ? lot : (names[account] ?? account),
        text: text(all),
        steps: accountSteps(season, station, side, account as LedgerAccount, 1, words),
      };
    }),
  );
  const all: TwinRow = {
    key: 'said/in',
    label: own.all,
    text: text(rows.inAll.all),
    steps: [
      ...rows.in.map(({ account, all }) =>
        step({ account: account as LedgerAccount, side: 'in' }, mass(all * unitKg, rows.decimals), inLedger(station)),
      ),
      step('cameIn', mass(rows.inAll.all * unitKg, rows.decimals), { at: 'above' }),
    ],
  };
  return [...ofPicture, ...moment, all, ...accounts];
}
