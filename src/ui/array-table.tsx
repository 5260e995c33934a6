import { Fragment } from 'preact';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import type { FibreCardProps, FibreState, FibreWorkings } from './fibre-card.tsx';
import { WorkingNumber } from './working-number.tsx';
import { WorkingRow } from './working-place.tsx';

// At these shares of the fibers the table reads the array.
const shares = [0.01, 0.1, 0.25, 0.5, 0.75, 0.9];

export interface ArrayTableProps extends Pick<FibreCardProps, 'lengthsMm' | 'beforeMm'> {
  readonly workings?: Pick<FibreWorkings, 'array'>;
}

/** The array of a fiber card as a table: how long the fibers are, at a few shares of them. */
export function ArrayTable({ lengthsMm, beforeMm, workings }: ArrayTableProps) {
  const { messages, formats } = useWords();
  const { fibre: words, common } = messages;
  const at = (lengths: readonly number[], share: number): string =>
    formats.fibreLength(lengths[Math.min(lengths.length - 1, Math.floor(share * lengths.length))] ?? 0).text;
  const line = (share: number) => {
    const name = `${words.share}, ${formats.percent(share * 100, 0)}`;
    const source = (state: FibreState) =>
      workings?.array(share, state, state === 'before' ? `${name}, ${common.before}` : name);
    return (
      <Fragment key={share}>
        <tr>
          <th scope="row">{formats.percent(share * 100, 0)}</th>
          {beforeMm ? (
            <td class="number">
              <WorkingNumber text={at(beforeMm, share)} source={source('before')} />
            </td>
          ) : null}
          <td class="number">
            <WorkingNumber text={at(lengthsMm, share)} source={source('now')} />
          </td>
        </tr>
        <WorkingRow sources={[source('before'), source('now')]} columns={beforeMm ? 3 : 2} />
      </Fragment>
    );
  };
  return (
    <details class="twin-table">
      <summary>{common.table}</summary>
      <table>
        <caption>{fill(words.array, { n: formats.count(lengthsMm.length) })}</caption>
        <thead>
          <tr>
            <th scope="col">{words.share}</th>
            {beforeMm ? (
              <th scope="col" class="number">
                {common.before}
              </th>
            ) : null}
            <th scope="col" class="number">
              {beforeMm ? common.after : words.axis}
            </th>
          </tr>
        </thead>
        <tbody>{shares.map(line)}</tbody>
      </table>
    </details>
  );
}
