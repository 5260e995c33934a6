import { Fragment } from 'preact';
import { useWords } from '../language/words.ts';
import { LedgerClosing, type LedgerParts, type LedgerSpot } from './ledger-parts.tsx';
import type { LedgerColumn, LedgerRow } from './ledger-rows.ts';
import { Picture } from './picture.tsx';
import { WorkingNumber } from './working-number.tsx';
import { WorkingRow } from './working-place.tsx';

function ColumnHead({ column, signs }: { column: LedgerColumn; signs: LedgerParts['signs'] }) {
  const { messages } = useWords();
  const sign = signs?.[column];
  return (
    <th scope="col" class={column === 'water' ? 'number water' : 'number'}>
      {sign ? <Picture svg={sign} alt="" class="part-sign" /> : null}
      {column === 'water' ? messages.ledger.water : messages.parts[column]}
    </th>
  );
}

/** The ledger as a table whose every row and column adds. */
export function LedgerWide(parts: LedgerParts) {
  const { rows, nameOf, write, heading, closes, signs, workingOf } = parts;
  const { messages } = useWords();
  const { ledger: words } = messages;
  const columnName = (column: LedgerColumn) => (column === 'water' ? words.water : messages.parts[column]);
  const line = (row: LedgerRow, side: LedgerSpot['side'], name: string, kind = '') => {
    const source = (at: number | 'all') =>
      workingOf?.({
        rows,
        row,
        side,
        at,
        name: `${name}, ${at === 'all' ? words.all : columnName(rows.columns[at]!)}`,
      });
    const sources = [...rows.columns.map((_, at) => source(at)), source('all')];
    return (
      <Fragment key={`${row.account} ${kind}`}>
        <tr class={kind} data-open={kind === 'unaccounted' && !closes ? '' : undefined}>
          <th scope="row">{name}</th>
          {row.cells.map((cell, at) => (
            <td key={rows.columns[at]} class={rows.columns[at] === 'water' ? 'number water' : 'number'}>
              <WorkingNumber text={write(cell)} source={sources[at]} />
            </td>
          ))}
          <td class="number all">
            <WorkingNumber text={write(row.all)} source={sources.at(-1)} />
          </td>
        </tr>
        <WorkingRow sources={sources} columns={rows.columns.length + 2} />
      </Fragment>
    );
  };
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
          {rows.in.map((row) => line(row, 'in', nameOf(row, 'in'), rows.in.length === 1 ? 'sum' : ''))}
          {rows.in.length > 1 ? line(rows.inAll, 'in', words.inAll, 'sum') : null}
        </tbody>
        <tbody class="went-out">
          {rows.out.map((row) => line(row, 'out', nameOf(row, 'out')))}
          {rows.out.length > 1 ? line(rows.outAll, 'out', words.outAll, 'sum') : null}
        </tbody>
        <tfoot>{line(rows.unaccounted, 'difference', words.unaccounted, 'unaccounted')}</tfoot>
      </table>
      <figcaption class="closing" data-open={closes ? undefined : ''}>
        <LedgerClosing {...parts} />
      </figcaption>
    </figure>
  );
}
