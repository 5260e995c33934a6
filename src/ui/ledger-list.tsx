import { useWords } from '../language/words.ts';
import { LedgerClosing, type LedgerParts, type LedgerSpot } from './ledger-parts.tsx';
import type { LedgerColumn, LedgerRow } from './ledger-rows.ts';
import { Picture } from './picture.tsx';
import { WorkingNumber } from './working-number.tsx';
import { WorkingDefinition, WorkingPlace } from './working-place.tsx';

/** The ledger as a list for a phone: each account unfolds into its parts. */
export function LedgerList(parts: LedgerParts) {
  const { rows, nameOf, heading, closes } = parts;
  const { messages } = useWords();
  const { ledger: words } = messages;
  const items = (side: 'in' | 'out') =>
    rows[side].map((row) => (
      <AccountItem key={row.account} parts={parts} row={row} side={side} name={nameOf(row, side)} />
    ));
  const total = (side: LedgerSpot['side'], row: LedgerRow, name: string) => (
    <Total parts={parts} row={row} side={side} name={name} open={side === 'difference' && !closes} />
  );
  return (
    <figure class="ledger ledger-list">
      <figcaption class="caption">{heading}</figcaption>
      <h3>{words.in}</h3>
      <ul>{items('in')}</ul>
      {rows.in.length > 1 ? total('in', rows.inAll, words.inAll) : null}
      <h3>{words.out}</h3>
      <ul>{items('out')}</ul>
      {total('out', rows.outAll, words.outAll)}
      {total('difference', rows.unaccounted, words.unaccounted)}
      <div class="closing" data-open={closes ? undefined : ''}>
        <LedgerClosing {...parts} />
      </div>
    </figure>
  );
}

interface LineProps {
  readonly parts: LedgerParts;
  readonly row: LedgerRow;
  readonly side: LedgerSpot['side'];
  readonly name: string;
}

/** An account; its sum stands beside what unfolds, since a button may not lie in another. */
function AccountItem({ parts: { rows, write, signs, workingOf }, row, side, name }: LineProps) {
  const { messages } = useWords();
  const { ledger: words } = messages;
  const columnName = (column: LedgerColumn) => (column === 'water' ? words.water : messages.parts[column]);
  const all = workingOf?.({ rows, row, side, at: 'all', name: `${name}, ${words.all}` });
  const sources = rows.columns.map((column, at) =>
    workingOf?.({ rows, row, side, at, name: `${name}, ${columnName(column)}` }),
  );
  return (
    <li>
      <details>
        <summary>
          <span>{name}</span>
        </summary>
        <dl aria-label={`${name}: ${words.byPart}`}>
          {rows.columns.map((column, at) => (
            <div key={column} class={column === 'water' ? 'water' : undefined}>
              <dt>
                {signs?.[column] ? <Picture svg={signs[column]} alt="" class="part-sign" /> : null}
                {columnName(column)}
              </dt>
              <dd class="number">
                <WorkingNumber text={write(row.cells[at]!)} source={sources[at]} />
              </dd>
              <WorkingDefinition source={sources[at]} />
            </div>
          ))}
        </dl>
      </details>
      <b class="number">
        <WorkingNumber text={write(row.all)} source={all} />
      </b>
      <WorkingPlace sources={[all]} />
    </li>
  );
}

function Total({ parts: { rows, write, workingOf }, row, side, name, open }: LineProps & { readonly open: boolean }) {
  const { messages } = useWords();
  const source = workingOf?.({ rows, row, side, at: 'all', name: `${name}, ${messages.ledger.all}` });
  return (
    <>
      <p class={`ledger-total ${side === 'difference' ? 'unaccounted' : 'sum'}`} data-open={open ? '' : undefined}>
        <span>{name}</span>
        <b class="number">
          <WorkingNumber text={write(row.all)} source={source} />
        </b>
      </p>
      <WorkingPlace sources={[source]} />
    </>
  );
}
