import { type Practice, practices } from '../../checks/practice.ts';
import { fill } from '../../language/fill.ts';
import { useWords, type Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';

/** A figure, or a band of two, with its unit in words; dates as dates. */
function bandText(
  [low, high]: readonly [number, number],
  unit: Practice['unit'],
  { messages, formats }: Words,
): string {
  const { practice } = messages;
  if (unit === 'none') return '';
  if (unit === 'dayOfYear')
    return low === high ? formats.day(low) : fill(practice.before, { low: formats.day(low), high: formats.day(high) });
  const number = (value: number) => formats.number(value, Number.isInteger(value) ? 0 : 2);
  const n = low === high ? number(low) : fill(practice.band, { low: number(low), high: number(high) });
  return fill(practice.units[unit], { n });
}

/** What people in the trade say about a station, what is in print, and what this season gives; nothing where nothing is told. */
export function PracticePanel({ season, station }: { readonly season: Season; readonly station: StationId }) {
  const words = useWords();
  const { practice } = words.messages;
  const rows = practices.filter((row) => row.station === station);
  if (rows.length === 0) return null;
  const told = (row: Practice) => (row.told ? bandText(row.told, row.unit, words) : practice.words.seedBought);
  const printed = ({ printed: found, unit }: Practice) => {
    if (!found?.range) return practice.notPrinted;
    const range = bandText([found.range[0], found.range[1]], unit, words);
    return found.mark === 'memory' ? fill(practice.fromMemory, { range }) : range;
  };
  return (
    <section class="practice-panel" aria-label={practice.heading}>
      <h3>{practice.heading}</h3>
      <dl>
        {rows.map((row) => {
          const ours = row.ours(season);
          return (
            <div key={row.id}>
              <dt>
                {practice.items[row.id]}
                <TrustMark trust={{ mark: 'common practice', source: practice.told }} label={practice.items[row.id]} />
              </dt>
              <dd>{told(row)}</dd>
              <dd class="caption">
                {practice.printed}: {printed(row)}
                {row.printed ? <span lang="en"> ({row.printed.source})</span> : null}
              </dd>
              {ours === null ? null : (
                <dd class="caption">
                  {practice.ours}: {bandText([round(ours), round(ours)], row.unit, words)}
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

/** To a tenth: what is told is rounder than that. */
const round = (value: number) => Math.round(value * 10) / 10;
