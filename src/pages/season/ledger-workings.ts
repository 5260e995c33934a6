import type { UnitSystem } from '../../language/unit-system.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { KG_PER_POUND } from '../../model/units.ts';
import type { LedgerSpot } from '../../ui/ledger-parts.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { LedgerPlace, PrintedCell } from '../../workings/ledger.ts';
import { workingSource } from './working-source.ts';

/** Leaves out what is nothing, unless all is. */
function somethingOf(cells: readonly PrintedCell[]): readonly PrintedCell[] {
  const something = cells.filter(({ value }) => value !== 0);
  return something.length > 0 ? something : cells;
}

/** What the workings call a place of the ledger's table. */
function placeOf({ rows, row, side, at }: LedgerSpot, unitSystem: UnitSystem): LedgerPlace {
  const { columns, inAll, outAll } = rows;
  if (at === 'closing') return { kind: 'closing' };
  if (at === 'leftOver') {
    const kg = unitSystem === 'us' ? KG_PER_POUND : 1;
    return { kind: 'leftOver', cameKg: inAll.all * kg, wentKg: outAll.all * kg };
  }
  const numberOf = (each: typeof row) => (at === 'all' ? each.all : each.cells[at]!);
  if (side === 'difference') return { kind: 'difference', came: numberOf(inAll), went: numberOf(outAll) };
  if (row === inAll || row === outAll) {
    const of = rows[side].map(
      (each) => ({ name: { account: each.account, side }, value: numberOf(each) }) as PrintedCell,
    );
    return { kind: 'sum', of: somethingOf(of) };
  }
  if (at === 'all') {
    const of = columns.map((part, index) => ({ name: { part }, value: row.cells[index]! }));
    return { kind: 'sum', of: somethingOf(of) };
  }
  return { kind: 'cell', account: row.account, side, column: columns[at]!, printed: row.cells[at]! };
}

/**
 * The working of each number of a station's ledger.
 * @param oneBale the table is scaled to one bale
 */
export const ledgerWorkings =
  (season: Season, words: Words, station: StationId, oneBale: boolean) =>
  (spot: LedgerSpot): WorkingSource => {
    const { rows, row, side, at, name } = spot;
    const column = typeof at === 'number' ? rows.columns[at] : at;
    return workingSource(
      season,
      words,
      {
        topic: 'ledger',
        station,
        oneBale,
        decimals: rows.decimals,
        at: `${oneBale ? 'bale' : 'field'}/${side}/${row.account}/${column}`,
        place: placeOf(spot, words.unitSystem),
      },
      name,
    );
  };
