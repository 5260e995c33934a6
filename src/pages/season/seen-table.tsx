import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { TwinRow } from './pictures/picture.ts';
import { seenAsked } from './pictures/seen-asked.ts';
import { workingSource } from './working-source.ts';

export interface SeenTableProps {
  readonly season: Season;
  readonly station: StationId;
  readonly rows: readonly TwinRow[];
}

/** The values in a picture, as a table, folded so that what can be changed stands in sight. A value in words alone has nothing to work out. */
export function SeenTable({ season, station, rows }: SeenTableProps) {
  const words = useWords();
  const { table } = words.messages.common;
  if (rows.length === 0) return null;
  return (
    <details class="seen-fold">
      <summary>{table}</summary>
      <table class="seen-table">
        <tbody>
          {rows.map((row) => {
            const { key, label, text } = row;
            const asked = seenAsked(station, row);
            const source = asked ? workingSource(season, words, asked, label, 'seen/') : undefined;
            return (
              <Fragment key={key}>
                <tr data-key={key}>
                  <th scope="row">{label}</th>
                  <td class="number">
                    <WorkingNumber text={text} source={source} />
                  </td>
                </tr>
                <WorkingRow sources={[source]} columns={2} />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}
