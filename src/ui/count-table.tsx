import { Fragment } from 'preact';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import type { CountLedger, CountName } from '../model/ledger.ts';
import type { StationId } from '../model/station.ts';
import { WorkingNumber } from './working-number.tsx';
import { WorkingRow } from './working-place.tsx';
import type { WorkingSource } from './working-source.ts';

/** Where a number stands among the counts. */
export interface CountSpot {
  readonly station: StationId;
  readonly whole: CountName;
  readonly of: CountName | 'unaccounted';
  /** As it stands in the table: shares are rounded so that they add. */
  readonly printed: number;
}

export interface CountTableProps {
  /** One or more counts, each of whose shares add up to the whole. */
  readonly ledgers: readonly CountLedger[];
  /** Replaces the usual caption. */
  readonly caption?: string;
  /** How a number was come by. */
  readonly workingOf?: (spot: CountSpot, name: string) => WorkingSource;
}

/** Things counted instead of weighed: each whole and the shares that make it up. */
export function CountTable({ ledgers, caption, workingOf }: CountTableProps) {
  const { messages, formats } = useWords();
  const { ledger: words } = messages;
  return (
    <table class="count-table">
      <caption>{caption ?? words.countCaption}</caption>
      {ledgers.map(({ station, whole, shares }) => {
        const rounded = sharesThatAdd(
          shares.map((share) => share.count),
          Math.round(whole.count),
        );
        const together = rounded.reduce((sum, count) => sum + count, 0);
        const line = (of: CountSpot['of'], name: string, printed: number, kind?: string) => {
          const source = workingOf?.({ station, whole: whole.name, of, printed }, name);
          return (
            <Fragment key={of}>
              <tr class={kind}>
                <th scope="row" class={kind === undefined ? 'share' : undefined}>
                  {name}
                </th>
                <td class="number">
                  <WorkingNumber text={formats.count(printed)} source={source} />
                  {of === 'unaccounted' ? (
                    <span class="unseen"> {fill(words.countSum, { n: formats.count(together) })}</span>
                  ) : null}
                </td>
              </tr>
              <WorkingRow sources={[source]} columns={2} />
            </Fragment>
          );
        };
        return (
          <tbody key={`${station} ${whole.name}`}>
            {line(whole.name, words.counts[whole.name], Math.round(whole.count), 'sum')}
            {shares.map((share, at) => line(share.name, words.counts[share.name], rounded[at]!))}
            {line('unaccounted', words.unaccounted, Math.round(whole.count) - together, 'unaccounted')}
          </tbody>
        );
      })}
    </table>
  );
}

/** Whole counts that add to the whole, where the exact shares do. */
function sharesThatAdd(shares: readonly number[], whole: number): number[] {
  const sum = shares.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - whole) > 1) return shares.map(Math.round);
  let carried = 0;
  return shares.map((share) => {
    const rounded = Math.round(share + carried);
    carried += share - rounded;
    return rounded;
  });
}
