import { closingErrorRelative, unaccountedKg } from '../model/ledger.ts';
import { parts } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import { bookedKg, causeSteps, inColumnKg, type LedgerColumn } from './ledger-causes.ts';
import { baleShare } from './seed.ts';
import { above, inLedger, mass, procedure, step } from './steps.ts';
import type { Name, Printed, Working } from './working.ts';

/** A number as it stands in the ledger's table, in the reader's unit, and what it is called. */
export interface PrintedCell {
  readonly name: Name;
  readonly value: number;
}

/** Which number of a ledger is asked for. */
export type LedgerPlace =
  /** One account and one part: what the books hold, and what rounding so that the table adds made of it. */
  | {
      readonly kind: 'cell';
      readonly account: string;
      readonly side: 'in' | 'out';
      readonly column: LedgerColumn;
      readonly printed: number;
    }
  /** A sum of numbers that stand in the table. */
  | { readonly kind: 'sum'; readonly of: readonly PrintedCell[] }
  /** In less out, as the table shows it. */
  | { readonly kind: 'difference'; readonly came: number; readonly went: number }
  /** The same for everything together, with its unit. */
  | { readonly kind: 'leftOver'; readonly cameKg: number; readonly wentKg: number }
  | { readonly kind: 'closing' };

/**
 * The working of a number of a station's ledger.
 * @param oneBale shown for one bale's worth, or for the whole field
 * @param decimals that the table shows
 */
export function ledgerWorking(
  season: Season,
  station: StationId,
  oneBale: boolean,
  decimals: number,
  place: LedgerPlace,
): Working | null {
  const ledger = season.ledgers.find((each) => each.station === station);
  if (!ledger) return null;
  const number = (value: number): Printed => ({ as: 'number', value, decimals });
  switch (place.kind) {
    case 'cell': {
      const kg = bookedKg(ledger, place.side, place.account, place.column);
      const { share, steps } = baleShare(season);
      return procedure(
        [
          ...causeSteps(season, ledger, place.side, place.account, place.column),
          step('wholeField', mass(kg), inLedger(station)),
          ...(oneBale ? steps : []),
          step('beforeRounding', mass(kg * (oneBale ? share : 1), decimals + 2), above),
          step('roundedToAdd', number(place.printed), { at: 'rounding' }),
        ],
        number(place.printed),
      );
    }
    case 'sum':
      return procedure(
        place.of.map(({ name, value }) => step(name, number(value), inLedger(station))),
        number(place.of.reduce((sum, { value }) => sum + value, 0)),
      );
    case 'difference':
      return procedure(
        [step('cameIn', number(place.came), inLedger(station)), step('wentOut', number(place.went), inLedger(station))],
        number(place.came - place.went),
      );
    case 'leftOver':
      return procedure(
        [
          step('cameIn', mass(place.cameKg, decimals), inLedger(station)),
          step('wentOut', mass(place.wentKg, decimals), inLedger(station)),
        ],
        mass(place.cameKg - place.wentKg, decimals),
      );
    case 'closing': {
      const columns = [...parts, 'water' as const].flatMap((column) => {
        const came = ledger.in.reduce((sum, entry) => sum + inColumnKg(entry, column), 0);
        return came > 0 ? [{ column, error: Math.abs(unaccountedKg(ledger, column)) / came }] : [];
      });
      return procedure(
        columns.map(({ column, error }) =>
          step({ part: column }, { as: 'powerOfTen', value: error }, inLedger(station)),
        ),
        { as: 'powerOfTen', value: closingErrorRelative(ledger) },
      );
    }
  }
}
