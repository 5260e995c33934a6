import type { ComponentChildren } from 'preact';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import type { MassLedger } from '../model/ledger.ts';
import { type LedgerColumn, type LedgerRow, type LedgerRows, ledgerRows } from './ledger-rows.ts';
import { Picture } from './picture.tsx';
import { useNarrow } from './use-narrow.ts';
import { useWidth } from './use-width.ts';

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
}

interface Shared extends LedgerTableProps {
  readonly rows: LedgerRows;
  readonly nameOf: (row: LedgerRow, side: 'in' | 'out') => string;
  readonly write: (value: number) => string;
  readonly heading: string;
  readonly closing: string;
  readonly closes: boolean;
}

/** Narrower than this the eight columns do not fit beside each other, rem. */
const widestTableRem = 34;
const pxPerRem = () => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;

/** What came in and where it went. On a wide screen a table whose every row and column adds; on a phone a list. */
export function LedgerTable(props: LedgerTableProps) {
  const { messages, formats, unitSystem } = useWords();
  const onPhone = useNarrow();
  const [place, width] = useWidth<HTMLDivElement>(widestTableRem * pxPerRem());
  const narrow = onPhone || width < widestTableRem * pxPerRem();
  const { ledger: words, accounts } = messages;
  const rows = ledgerRows(props.ledger, unitSystem);
  const unit = unitSystem === 'us' ? 'pounds' : 'kilograms';
  const write = (value: number) => formats.number(value, rows.decimals);
  const names: Readonly<Record<string, string>> = { ...accounts.sources, ...accounts.destinations };
  const amount = `${write(rows.unaccounted.all)}\u00a0${messages.units[unit].sign}`;
  const closes = rows.unaccounted.cells.every((cell) => cell === 0);
  const template = !closes ? words.open : props.closingErrorRelative === 0 ? words.closesExactly : words.closes;
  const shared: Shared = {
    ...props,
    rows,
    write,
    closes,
    nameOf: (row, side) => (row.account === 'lot' ? props.lotNames[side] : (names[row.account] ?? row.account)),
    heading:
      props.caption ??
      fill(words.caption, { unit: formats.plural(2, messages.units[unit].name).replace(/^\S+\s/, '') }),
    closing: fill(template, { amount, error: formats.powerOfTen(props.closingErrorRelative) }),
  };
  return <div ref={place}>{narrow ? <LedgerList {...shared} /> : <LedgerWide {...shared} />}</div>;
}

function ColumnHead({ column, signs }: { column: LedgerColumn; signs: LedgerTableProps['signs'] }) {
  const { messages } = useWords();
  const sign = signs?.[column];
  return (
    <th scope="col" class={column === 'water' ? 'number water' : 'number'}>
      {sign ? <Picture svg={sign} alt="" class="part-sign" /> : null}
      {column === 'water' ? messages.ledger.water : messages.parts[column]}
    </th>
  );
}

function LedgerWide({ rows, nameOf, write, heading, closing, closes, signs }: Shared) {
  const { messages } = useWords();
  const { ledger: words } = messages;
  const line = (row: LedgerRow, name: ComponentChildren, kind = '') => (
    <tr class={kind} key={`${row.account} ${kind}`} data-open={kind === 'unaccounted' && !closes ? '' : undefined}>
      <th scope="row">{name}</th>
      {row.cells.map((cell, at) => (
        <td key={rows.columns[at]} class={rows.columns[at] === 'water' ? 'number water' : 'number'}>
          {write(cell)}
        </td>
      ))}
      <td class="number all">{write(row.all)}</td>
    </tr>
  );
  return (
    <figure class="ledger">
      <table>
        <caption>{heading}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{words.account}</span>
            </th>
            {rows.columns.map((column) => (
              <ColumnHead key={column} column={column} signs={signs} />
            ))}
            <th scope="col" class="number all">
              {words.all}
            </th>
          </tr>
        </thead>
        <tbody class="came-in">
          {rows.in.map((row) => line(row, nameOf(row, 'in'), rows.in.length === 1 ? 'sum' : ''))}
          {rows.in.length > 1 ? line(rows.inAll, words.inAll, 'sum') : null}
        </tbody>
        <tbody class="went-out">
          {rows.out.map((row) => line(row, nameOf(row, 'out')))}
          {rows.out.length > 1 ? line(rows.outAll, words.outAll, 'sum') : null}
        </tbody>
        <tfoot>{line(rows.unaccounted, words.unaccounted, 'unaccounted')}</tfoot>
      </table>
      <figcaption class="closing" data-open={closes ? undefined : ''}>
        <b>{closing}</b> <span class="caption">{words.rounding}</span>
      </figcaption>
    </figure>
  );
}

function LedgerList({ rows, nameOf, write, heading, closing, closes, signs }: Shared) {
  const { messages } = useWords();
  const { ledger: words } = messages;
  const item = (row: LedgerRow, name: string) => (
    <li key={row.account}>
      <details>
        <summary>
          <span>{name}</span>
          <b class="number">{write(row.all)}</b>
        </summary>
        <dl aria-label={`${name}: ${words.byPart}`}>
          {rows.columns.map((column, at) => (
            <div key={column} class={column === 'water' ? 'water' : undefined}>
              <dt>
                {signs?.[column] ? <Picture svg={signs[column]} alt="" class="part-sign" /> : null}
                {column === 'water' ? words.water : messages.parts[column]}
              </dt>
              <dd class="number">{write(row.cells[at]!)}</dd>
            </div>
          ))}
        </dl>
      </details>
    </li>
  );
  const total = (name: string, row: LedgerRow, kind: string) => (
    <p class={`ledger-total ${kind}`} data-open={kind === 'unaccounted' && !closes ? '' : undefined}>
      <span>{name}</span>
      <b class="number">{write(row.all)}</b>
    </p>
  );
  return (
    <figure class="ledger ledger-list">
      <figcaption class="caption">{heading}</figcaption>
      <h3>{words.in}</h3>
      <ul>{rows.in.map((row) => item(row, nameOf(row, 'in')))}</ul>
      {rows.in.length > 1 ? total(words.inAll, rows.inAll, 'sum') : null}
      <h3>{words.out}</h3>
      <ul>{rows.out.map((row) => item(row, nameOf(row, 'out')))}</ul>
      {total(words.outAll, rows.outAll, 'sum')}
      {total(words.unaccounted, rows.unaccounted, 'unaccounted')}
      <p class="closing" data-open={closes ? undefined : ''}>
        <b>{closing}</b> <span class="caption">{words.rounding}</span>
      </p>
    </figure>
  );
}
