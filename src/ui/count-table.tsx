import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import type { CountLedger } from '../model/ledger.ts';

export interface CountTableProps {
  /** One or more counts, each of whose shares add up to the whole. */
  readonly ledgers: readonly CountLedger[];
  /** Replaces the usual caption. */
  readonly caption?: string;
}

/** Things counted instead of weighed: each whole and the shares that make it up. */
export function CountTable({ ledgers, caption }: CountTableProps) {
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
        return (
          <tbody key={`${station} ${whole.name}`}>
            <tr class="sum">
              <th scope="row">{words.counts[whole.name]}</th>
              <td class="number">{formats.count(whole.count)}</td>
            </tr>
            {shares.map((share, at) => (
              <tr key={share.name}>
                <th scope="row" class="share">
                  {words.counts[share.name]}
                </th>
                <td class="number">{formats.count(rounded[at]!)}</td>
              </tr>
            ))}
            <tr class="unaccounted">
              <th scope="row">{words.unaccounted}</th>
              <td class="number">
                {formats.count(Math.round(whole.count) - rounded.reduce((sum, count) => sum + count, 0))}
                <span class="unseen">
                  {' '}
                  {fill(words.countSum, { n: formats.count(rounded.reduce((sum, count) => sum + count, 0)) })}
                </span>
              </td>
            </tr>
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
