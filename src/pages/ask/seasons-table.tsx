import { Fragment } from 'preact';
import type { QuestionWords } from '../../language/messages/en/ask/question-words.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { seasonOutcomes } from '../../model/season-outcomes.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { differencePrinted, outcomePrinted } from '../../workings/outcome-style.ts';
import { printed } from '../season/printed.ts';
import { workingSource } from '../season/working-source.ts';
import type { AskWords } from './use-ask-words.ts';

const key = 'leftToFarmUsd';
const leftOf = (season: Season): number => seasonOutcomes(season)[key] ?? 0;

export interface SeasonsTableProps {
  /** All that were run: one for each season number, or two, one after the other. */
  readonly seasons: readonly Season[];
  readonly question: QuestionWords;
  readonly asked: AskWords;
}

/** What an answer over many seasons is the mean of: what the farm was paid in each, and the difference where each was run twice. */
export function SeasonsTable({ seasons, question, asked }: SeasonsTableProps) {
  const words = useWords();
  const { formats } = words;
  const isPaired = seasons[0]?.seed === seasons[1]?.seed;
  const rows = isPaired
    ? seasons.filter((_, at) => at % 2 === 0).map((first, at) => [first, seasons[2 * at + 1]!])
    : seasons.map((season) => [season]);
  const columns = isPaired ? [...question.sides, asked.every.difference] : [asked.lines.left];
  const gains = isPaired ? rows.map(([first, second]) => leftOf(second!) - leftOf(first!)) : [];
  const signed = (usd: number) => differencePrinted(key, usd);
  const meanText = printed(signed(gains.reduce((sum, gain) => sum + gain, 0) / gains.length), words);
  const nameOf = ({ seed }: Season) => `${asked.every.season} ${formats.count(seed)}`;
  const cellsOf = (row: readonly Season[]) => {
    const cells = row.map((season, side) => ({
      text: printed(outcomePrinted(key, leftOf(season)), words),
      source: workingSource(
        season,
        words,
        { topic: 'outcome', key },
        `${columns[side]}, ${nameOf(season)}`,
        `every/${season.seed}/${side}/`,
      ),
    }));
    const [before, after] = row;
    if (!before || !after) return cells;
    const names = [columns[0]!, columns[1]!] as const;
    return [
      ...cells,
      {
        text: printed(signed(leftOf(after) - leftOf(before)), words),
        source: workingSource(
          after,
          words,
          { topic: 'difference', key, before, names },
          `${asked.every.difference}, ${nameOf(after)}`,
          `every/${after.seed}/`,
        ),
      },
    ];
  };
  const meanSource = workingSource(
    seasons[0]!,
    words,
    {
      topic: 'seen',
      at: 'every/mean',
      text: meanText,
      steps: rows.map(([season], at) => ({
        name: { label: nameOf(season!) },
        value: signed(gains[at] ?? 0),
        from: { at: 'above' },
      })),
    },
    asked.every.mean,
  );
  return (
    <details class="twin-table ask-seasons">
      <summary>{asked.every.heading}</summary>
      <table>
        {isPaired ? <caption>{asked.lines.left}</caption> : null}
        <thead>
          <tr>
            <th scope="col">{asked.every.season}</th>
            {columns.map((name) => (
              <th key={name} scope="col" class="number">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const cells = cellsOf(row);
            return (
              <Fragment key={row[0]!.seed}>
                <tr>
                  <th scope="row">{formats.count(row[0]!.seed)}</th>
                  {cells.map((cell) => (
                    <td key={cell.source.key} class="number">
                      <WorkingNumber {...cell} />
                    </td>
                  ))}
                </tr>
                <WorkingRow sources={cells.map(({ source }) => source)} columns={1 + cells.length} />
              </Fragment>
            );
          })}
        </tbody>
        {isPaired ? (
          <tfoot>
            <tr class="sum">
              <th scope="row" colSpan={3}>
                {asked.every.mean}
              </th>
              <td class="number">
                <WorkingNumber text={meanText} source={meanSource} />
              </td>
            </tr>
            <WorkingRow sources={[meanSource]} columns={4} />
          </tfoot>
        ) : null}
      </table>
    </details>
  );
}
