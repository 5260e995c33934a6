import type { MassEntry, MassLedger } from '../model/ledger.ts';
import { type Part, parts } from '../model/lot.ts';
import { KG_PER_POUND } from '../model/units.ts';
import { roundToAdd } from './round-to-add.ts';

/** A column of the ledger. */
export type LedgerColumn = Part | 'water';

export interface LedgerRow {
  readonly account: string;
  /** One number a column, in the unit shown, rounded so that the table adds. */
  readonly cells: readonly number[];
  readonly all: number;
}

/** A ledger ready to be written: only the columns that hold anything, every number as it will stand. */
export interface LedgerRows {
  readonly columns: readonly LedgerColumn[];
  readonly decimals: number;
  readonly in: readonly LedgerRow[];
  readonly out: readonly LedgerRow[];
  readonly inAll: LedgerRow;
  readonly outAll: LedgerRow;
  /** In less out as shown; all zero when the ledger closes to the decimals shown. */
  readonly unaccounted: LedgerRow;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const inColumn = (entry: MassEntry, column: LedgerColumn): number =>
  column === 'water' ? entry.waterKg : entry.dryKg[column];

/** Entries of one account become one row, in the order they first come. */
function gathered(entries: readonly MassEntry[], columns: readonly LedgerColumn[], perKg: number) {
  const rows = new Map<string, number[]>();
  for (const entry of entries) {
    const row = rows.get(entry.account) ?? columns.map(() => 0);
    columns.forEach((column, at) => {
      row[at]! += inColumn(entry, column) * perKg;
    });
    rows.set(entry.account, row);
  }
  return [...rows].map(([account, cells]) => ({ account, cells }));
}

type Sides = Pick<MassLedger, 'in' | 'out'>;

/** Ledgers as they were set out: one is asked for by every number that stands in it. */
const kept = { us: new WeakMap<Sides, LedgerRows>(), metric: new WeakMap<Sides, LedgerRows>() };

/**
 * Sets out a ledger in the reader's unit.
 * @param ledger masses in kg
 * @param unitSystem pounds or kilograms
 */
export function ledgerRows(ledger: Sides, unitSystem: 'us' | 'metric'): LedgerRows {
  const rows = kept[unitSystem].get(ledger) ?? setOut(ledger, unitSystem);
  kept[unitSystem].set(ledger, rows);
  return rows;
}

function setOut(ledger: Sides, unitSystem: 'us' | 'metric'): LedgerRows {
  const perKg = unitSystem === 'us' ? 1 / KG_PER_POUND : 1;
  const entries: readonly MassEntry[] = [...ledger.in, ...ledger.out];
  const columns = [...parts, 'water' as const].filter((column) => entries.some((entry) => inColumn(entry, column) > 0));
  const sides = { in: gathered(ledger.in, columns, perKg), out: gathered(ledger.out, columns, perKg) };
  const totals = (side: 'in' | 'out') => columns.map((_, at) => sum(sides[side].map((row) => row.cells[at]!)));
  const exactIn = totals('in');
  const exactOut = totals('out');
  const decimals = sum(exactIn) >= 100_000 ? 0 : 1;
  const scale = 10 ** decimals;
  const round = (value: number): number => Math.round(value * scale) / scale;

  const shownIn = roundToAdd(
    exactIn.map((total) => [total]),
    [round(sum(exactIn))],
    decimals,
  ).map(([total]) => total!);
  // A side that closes to the decimals shown shares its totals; one that does not shows its own.
  const shownOut = exactOut.map((total, at) =>
    Math.abs(total - exactIn[at]!) * scale < 0.5 ? shownIn[at]! : round(total),
  );

  const side = (name: 'in' | 'out', shown: readonly number[]): LedgerRow[] => {
    const cells = roundToAdd(
      sides[name].map((row) => row.cells),
      shown,
      decimals,
    );
    return sides[name].map(({ account }, at) => ({ account, cells: cells[at]!, all: round(sum(cells[at]!)) }));
  };
  const totalRow = (account: string, cells: readonly number[]): LedgerRow => ({
    account,
    cells,
    all: round(sum(cells)),
  });
  return {
    columns,
    decimals,
    in: side('in', shownIn),
    out: side('out', shownOut),
    inAll: totalRow('inAll', shownIn),
    outAll: totalRow('outAll', shownOut),
    unaccounted: totalRow(
      'unaccounted',
      shownIn.map((total, at) => round(total - shownOut[at]!)),
    ),
  };
}
