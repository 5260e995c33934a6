import { useEffect, useState } from 'preact/hooks';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import { LedgerList } from './ledger-list.tsx';
import type { LedgerParts, LedgerTableProps } from './ledger-parts.tsx';
import { ledgerRows } from './ledger-rows.ts';
import { LedgerWide } from './ledger-wide.tsx';
import { useNarrow } from './use-narrow.ts';
import { useWidth } from './use-width.ts';

/** Room that one column of the wide table takes, rem: less, and its numbers would leave the table. */
const columnRem = 4;
/** Before the width is known: what a desk has. */
const firstWidthRem = 50;
const pxPerRem = () => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;

/** What came in and where it went. On a wide screen a table whose every row and column adds; on a phone a list. */
export function LedgerTable(props: LedgerTableProps) {
  const { messages, formats, unitSystem } = useWords();
  const onPhone = useNarrow();
  // Asked for once a page is styled: in the midst of drawing it, the browser would have to style it there and then.
  const [remPx, setRemPx] = useState(pxPerRem);
  useEffect(() => setRemPx(pxPerRem()));
  const [place, width] = useWidth<HTMLDivElement>(firstWidthRem * remPx);
  const { ledger: words, accounts } = messages;
  const rows = ledgerRows(props.ledger, unitSystem);
  // A column for every part, one for the names and one for the sums.
  const narrow = onPhone || width < (rows.columns.length + 2) * columnRem * remPx;
  const unit = unitSystem === 'us' ? 'pounds' : 'kilograms';
  const write = (value: number) => formats.number(value, rows.decimals);
  const names: Readonly<Record<string, string>> = { ...accounts.sources, ...accounts.destinations };
  const closes = rows.unaccounted.cells.every((cell) => cell === 0);
  const shared: LedgerParts = {
    ...props,
    rows,
    write,
    closes,
    nameOf: (row, side) => (row.account === 'lot' ? props.lotNames[side] : (names[row.account] ?? row.account)),
    heading:
      props.caption ??
      fill(words.caption, { unit: formats.plural(2, messages.units[unit].name).replace(/^\S+\s/, '') }),
  };
  return <div ref={place}>{narrow ? <LedgerList {...shared} /> : <LedgerWide {...shared} />}</div>;
}
