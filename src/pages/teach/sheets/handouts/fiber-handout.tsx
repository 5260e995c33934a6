import { useWords } from '../../../../language/words.ts';
import { stapleChart } from '../../../../model/classing/staple-facts.ts';
import type { HandoutWords } from './handout-words.ts';
import { StapleRuler } from './staple-ruler.tsx';

const emptyRows = ['1', '2', '3', '4'];
const rowsInColumn = 6;

/** A ruler to measure fibers with, how to do it, room for what was found, and the chart that instruments are read by. */
export function FiberHandout({ words }: { readonly words: HandoutWords }) {
  const { fiber } = words.own;
  const { formats, messages } = useWords();
  const rows = stapleChart.upland.rows.slice(1);
  const columns = [
    rows.slice(0, rowsInColumn),
    rows.slice(rowsInColumn, 2 * rowsInColumn),
    rows.slice(2 * rowsInColumn),
  ];
  return (
    <>
      <p>
        <b>{fiber.lead}</b> {fiber.check}
      </p>
      <StapleRuler words={words} />
      <h3>{fiber.how}</h3>
      <ol>
        {fiber.steps.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <h3>{fiber.yours}</h3>
      <table class="handout-table handout-empty">
        <thead>
          <tr>
            {fiber.columns.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {emptyRows.map((row) => (
            <tr key={row}>
              {fiber.columns.map((head, i) => (
                <td key={head}>{i === 0 ? `${row}.` : ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{fiber.chart}</h3>
      <p>{fiber.chartLead}</p>
      <div class="sheet-tables">
        {columns.map((column) => (
          <table key={column[0]!.code32nds} aria-label={fiber.chart}>
            <thead>
              <tr>
                <th scope="col">{fiber.from}</th>
                <th scope="col">{fiber.code}</th>
              </tr>
            </thead>
            <tbody>
              {column.map(({ code32nds, fromHundredths }) => (
                <tr key={code32nds}>
                  <th scope="row">{`${formats.number(fromHundredths / 100, 2)}\u00a0${messages.units.inches.sign}`}</th>
                  <td>{formats.count(code32nds)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
    </>
  );
}
