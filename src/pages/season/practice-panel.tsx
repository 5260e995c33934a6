import { type Practice, practices, toldTenth } from '../../checks/practice.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { printed } from './printed.ts';
import { toldText } from './told-text.ts';
import { workingSource } from './working-source.ts';

/** What people in the trade say about a station, what is in print, and what this season gives; nothing where nothing is told. */
export function PracticePanel({ season, station }: { readonly season: Season; readonly station: StationId }) {
  const words = useWords();
  const { practice } = words.messages;
  const rows = practices.filter((row) => row.station === station);
  if (rows.length === 0) return null;
  const told = (row: Practice) => (row.told ? toldText(row.told, row.unit, words) : practice.words.seedBought);
  const inPrint = ({ printed: found, unit }: Practice) => {
    if (!found?.range) return practice.notPrinted;
    const range = toldText([found.range[0], found.range[1]], unit, words);
    return found.mark === 'memory' ? fill(practice.fromMemory, { range }) : range;
  };
  return (
    <section class="practice-panel" aria-label={practice.heading}>
      <h3>{practice.heading}</h3>
      <dl>
        {rows.map((row) => {
          const ours = row.ours(season);
          const source = workingSource(season, words, { topic: 'practice', id: row.id }, practice.items[row.id]);
          return (
            <div key={row.id}>
              <dt>
                {practice.items[row.id]}
                <TrustMark trust={{ mark: 'common practice', source: practice.told }} label={practice.items[row.id]} />
              </dt>
              <dd>{told(row)}</dd>
              <dd class="caption">
                {practice.printed}: {inPrint(row)}
                {row.printed ? <span lang="en"> ({row.printed.source})</span> : null}
              </dd>
              {ours === null ? null : (
                <dd class="caption ours">
                  {practice.ours}:{' '}
                  <WorkingNumber
                    text={printed({ as: 'told', unit: row.unit, value: toldTenth(ours) }, words)}
                    source={source}
                  />
                  <WorkingPlace sources={[source]} />
                </dd>
              )}
            </div>
          );
        })}
      </dl>
      <p class="caption">{practice.explain}</p>
    </section>
  );
}
