import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { LedgerColumn } from '../../ui/ledger-rows.ts';
import { followPart } from './follow-part.ts';
import { followWords } from './follow-words.ts';

export interface PartJourneyProps {
  readonly season: Season;
  readonly part: LedgerColumn;
  /** Share of the field that is shown, and its name. */
  readonly share: number;
  readonly shareName: string;
}

/** One part through the whole chain: every source it came from and every place it ended, adding up. */
export function PartJourney({ season, part, share, shareName }: PartJourneyProps) {
  const { messages, formats, language } = useWords();
  const words = followWords(language);
  const journey = useMemo(() => followPart(season.ledgers, part), [season, part]);
  const names: Readonly<Record<string, string>> = { ...messages.accounts.sources, ...messages.accounts.destinations };
  const mass = (kg: number) => formats.mass(kg * share).text;
  const name = part === 'water' ? messages.ledger.water : messages.parts[part];
  const last = journey.stops.at(-1);
  return (
    <div class="wide-table part-journey">
      <table>
        <caption>{fill(words.journey, { part: name, scale: shareName })}</caption>
        <thead>
          <tr>
            <th scope="col">{words.station}</th>
            <th scope="col">{words.account}</th>
            <th scope="col" class="number">
              {words.came}
            </th>
            <th scope="col" class="number">
              {words.went}
            </th>
            <th scope="col" class="number">
              {words.share}
            </th>
          </tr>
        </thead>
        <tbody>
          {journey.stops.flatMap(({ station, moves }) =>
            moves.map(({ side, account, kg }, i) => (
              <tr key={`${station} ${side} ${account}`} data-side={side}>
                <th scope="row">{i === 0 ? messages.stations[station].name : ''}</th>
                <td>{names[account] ?? account}</td>
                <td class="number">{side === 'source' ? mass(kg) : ''}</td>
                <td class="number">{side === 'destination' ? mass(kg) : ''}</td>
                <td class="number">{formats.percent((100 * kg) / journey.sourcesKg, 1)}</td>
              </tr>
            )),
          )}
          {last && last.onKg > 0 ? (
            <tr>
              <th scope="row">{messages.stations[last.station].name}</th>
              <td>{messages.readings.on}</td>
              <td />
              <td class="number">{mass(last.onKg)}</td>
              <td class="number">{formats.percent((100 * last.onKg) / journey.sourcesKg, 1)}</td>
            </tr>
          ) : null}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row">{words.sum}</th>
            <td />
            <td class="number">{mass(journey.sourcesKg)}</td>
            <td class="number">{mass(journey.destinationsKg)}</td>
            <td class="number">{formats.percent((100 * journey.destinationsKg) / journey.sourcesKg, 1)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}
