import type { Words } from '../../../language/words.ts';
import type { Fact } from '../../../model/fact.ts';
import type { DestinationAccount, SourceAccount } from '../../../model/ledger.ts';
import { totalDryKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { baleShare } from '../../../workings/seed.ts';
import { above, inLedger, mass, percent, read, step } from '../../../workings/steps.ts';
import type { Origin, Printed, Step } from '../../../workings/working.ts';
import { ledgerOf } from '../ledger-panel.tsx';

/** An account of a ledger, on either side. */
export type LedgerAccount = SourceAccount | DestinationAccount | 'lot';

/** A step under a name that the picture has already put in words. */
export const said = (label: string, value: Printed, from: Origin): Step => ({ name: { label }, value, from });

/** A constant of the model, and where it was read. */
export const factStep = (label: string, value: Printed, fact: Pick<Fact, 'source' | 'mark'>): Step =>
  said(label, value, read(fact));

/** A value that the drawing chose, such as what one piece stands for. */
export const drawnStep = (label: string, value: Printed): Step => said(label, value, { at: 'drawing' });

/** How much of an amount has come: none of these lines when all of it has. */
const soFarSteps = (share: number, sofar: Printed): Step[] =>
  share === 1 ? [] : [step('workDone', percent(100 * share, 2), { at: 'drawing' }), step('comeSoFar', sofar, above)];

/**
 * How a mass of a picture was come by: the account of the whole field, one bale's worth of it, as the ledger's table rounds it,
 * and as far as the work shown is done.
 * @param share of the station's work that is done, 0 to 1
 */
export function accountSteps(
  season: Season,
  station: StationId,
  side: 'in' | 'out',
  account: LedgerAccount,
  share: number,
  { unitSystem }: Words,
): Step[] {
  const ledger = season.ledgers.find((each) => each.station === station);
  const ofBale = ledgerOf(season, station, 'bale');
  if (!ledger || !ofBale) return [];
  const kg = ledger[side]
    .filter((entry) => entry.account === account)
    .reduce((sum, { dryKg, waterKg }) => sum + totalDryKg(dryKg) + waterKg, 0);
  const rows = ledgerRows(ofBale, unitSystem);
  const inTable = rows[side].find((row) => row.account === account)?.all ?? 0;
  const unitKg = unitSystem === 'us' ? KG_PER_POUND : 1;
  const { share: bale, steps } = baleShare(season);
  return [
    step({ account, side }, mass(kg), inLedger(station)),
    ...steps,
    step('beforeRounding', mass(kg * bale, rows.decimals + 2), above),
    step('roundedToAdd', mass(inTable * unitKg, rows.decimals), { at: 'rounding' }),
    ...soFarSteps(share, mass(inTable * unitKg * share, rows.decimals)),
  ];
}
