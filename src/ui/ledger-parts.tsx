import { Fragment } from 'preact';
import { useWords } from '../language/words.ts';
import type { MassLedger } from '../model/ledger.ts';
import type { LedgerColumn, LedgerRow, LedgerRows } from './ledger-rows.ts';
import { WorkingNumber } from './working-number.tsx';
import { WorkingPlace } from './working-place.tsx';
import type { WorkingSource } from './working-source.ts';

/** Where a number stands in the ledger. */
export interface LedgerSpot {
  readonly rows: LedgerRows;
  readonly row: LedgerRow;
  /** In less out stands on neither side. */
  readonly side: 'in' | 'out' | 'difference';
  /** The number of a column, the sum of the row, or for the ledger as a whole what is left over and how well it closes. */
  readonly at: number | 'all' | 'leftOver' | 'closing';
  /** What the number is called. */
  readonly name: string;
}

export interface LedgerTableProps {
  readonly ledger: Pick<MassLedger, 'in' | 'out'>;
  /** The worst closing error over parts and water, relative: the model's own figure. */
  readonly closingErrorRelative: number;
  /** What the lot is called where it comes in and where it goes on: 'From Cleaning', 'On to Pressing'. */
  readonly lotNames: { readonly in: string; readonly out: string };
  /** Replaces the usual caption. */
  readonly caption?: string;
  /** Small drawings of the parts, as SVG text, for the heads of columns. */
  readonly signs?: Partial<Record<LedgerColumn, string>>;
  /** How a number was come by. */
  readonly workingOf?: (spot: LedgerSpot) => WorkingSource;
}

/** What the table and the list share. */
export interface LedgerParts extends LedgerTableProps {
  readonly rows: LedgerRows;
  readonly nameOf: (row: LedgerRow, side: 'in' | 'out') => string;
  readonly write: (value: number) => string;
  readonly heading: string;
  readonly closes: boolean;
}

/** A ledger closes when it is off by less than this share of what came in. */
export const closesBelow = 1e-9;

/** The sentence under a ledger: what is left over, and how well it closes. */
export function LedgerClosing({ rows, closes, closingErrorRelative, write, workingOf }: LedgerParts) {
  const { messages, formats, unitSystem } = useWords();
  const { ledger: words, units } = messages;
  const template = !closes ? words.open : closingErrorRelative === 0 ? words.closesExactly : words.closes;
  const sign = units[unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
  const spot = { rows, row: rows.unaccounted, side: 'difference' } as const;
  const sources = {
    amount: workingOf?.({ ...spot, at: 'leftOver', name: words.unaccounted }),
    error: workingOf?.({ ...spot, at: 'closing', name: words.closingError }),
  };
  const texts = {
    amount: `${write(rows.unaccounted.all)}\u00a0${sign}`,
    error: formats.powerOfTen(closingErrorRelative),
  };
  return (
    <>
      <b>
        {template
          .split(/\{(amount|error)\}/)
          .map((piece, at) =>
            piece === 'amount' || piece === 'error' ? (
              <WorkingNumber key={piece} text={texts[piece]} source={sources[piece]} />
            ) : (
              <Fragment key={`words ${at}`}>{piece}</Fragment>
            ),
          )}
      </b>{' '}
      <span class="caption">
        {closes && closingErrorRelative > 0 && closingErrorRelative < closesBelow ? `${words.closesMeans} ` : ''}
        {words.rounding}
      </span>
      <WorkingPlace sources={[sources.amount, sources.error]} />
    </>
  );
}
