import { Fragment } from 'preact';
import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { LedgerColumn } from '../../ui/ledger-rows.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { JourneyPlace, JourneyTerm } from '../../workings/journey.ts';
import { followPart, journeyTerms } from './follow-part.ts';
import { followWords } from './follow-words.ts';
import { workingSource } from './working-source.ts';

export interface PartJourneyProps {
  readonly season: Season;
  readonly part: LedgerColumn;
  /** Share of the field that is shown, and its name. */
  readonly share: number;
  readonly shareName: string;
}

/** One row of the way: its words, its mass in one of two columns, and its share of all that came in. */
interface JourneyRow {
  readonly key: string;
  readonly station: StationId;
  readonly stationName: string;
  readonly name: string;
  readonly side: 'source' | 'destination';
  readonly terms: readonly JourneyTerm[];
}

/** One part through the whole chain: every source it came from and every place it ended, adding up. */
export function PartJourney({ season, part, share, shareName }: PartJourneyProps) {
  const words = useWords();
  const { messages, formats, language } = words;
  const own = followWords(language);
  const journey = useMemo(() => followPart(season.ledgers, part), [season, part]);
  const names: Readonly<Record<string, string>> = {
    ...messages.accounts.sources,
    ...messages.accounts.destinations,
    lot: messages.readings.on,
  };
  const name = part === 'water' ? messages.ledger.water : messages.parts[part];
  const rows = journeyTerms(journey).map((term, i, all): JourneyRow => {
    const { station, side, account } = term;
    return {
      key: `${side}/${account}`,
      station,
      stationName: all[i - 1]?.station === station ? '' : messages.stations[station].name,
      name: names[account] ?? account,
      side: side === 'in' ? 'source' : 'destination',
      terms: [term],
    };
  });
  const place = (row: Pick<JourneyRow, 'station' | 'terms'>, of: string, ofKg: number | null): JourneyPlace => ({
    part,
    station: row.station,
    of,
    terms: row.terms,
    oneBale: share !== 1,
    ofKg,
  });
  const cell = (row: JourneyRow, ofKg: number | null): { readonly text: string; readonly source: WorkingSource } => {
    const kg = row.terms.reduce((sum, term) => sum + term.kg, 0);
    return {
      text: ofKg === null ? formats.mass(kg * share).text : formats.percent((100 * kg) / ofKg, 1),
      source: workingSource(
        season,
        words,
        { topic: 'journey', ...place(row, `${row.key}/${ofKg === null ? 'mass' : 'share'}`, ofKg) },
        `${name}, ${row.name}`,
      ),
    };
  };
  const sides = (['in', 'out'] as const).map((side) => journeyTerms(journey).filter((term) => term.side === side));
  const last = journey.stops.at(-1);
  const total = (terms: readonly JourneyTerm[], side: JourneyRow['side']): JourneyRow => ({
    key: `sum/${side}`,
    station: last?.station ?? 'sewing',
    stationName: own.sum,
    name: own.sum,
    side,
    terms,
  });
  const came = cell(total(sides[0]!, 'source'), null);
  const went = cell(total(sides[1]!, 'destination'), null);
  const all = cell(total(sides[1]!, 'destination'), journey.sourcesKg);
  return (
    <div class="wide-table part-journey">
      <table>
        <caption>{fill(own.journey, { part: name, scale: shareName })}</caption>
        <thead>
          <tr>
            <th scope="col">{own.station}</th>
            <th scope="col">{own.account}</th>
            <th scope="col" class="number">
              {own.came}
            </th>
            <th scope="col" class="number">
              {own.went}
            </th>
            <th scope="col" class="number">
              {own.share}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const mass = cell(row, null);
            const percent = cell(row, journey.sourcesKg);
            return (
              <Fragment key={`${row.station} ${row.key}`}>
                <tr data-side={row.side}>
                  <th scope="row">{row.stationName}</th>
                  <td>{row.name}</td>
                  <td class="number">{row.side === 'source' ? <WorkingNumber {...mass} /> : ''}</td>
                  <td class="number">{row.side === 'destination' ? <WorkingNumber {...mass} /> : ''}</td>
                  <td class="number">
                    <WorkingNumber {...percent} />
                  </td>
                </tr>
                <WorkingRow sources={[mass.source, percent.source]} columns={5} />
              </Fragment>
            );
          })}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row">{own.sum}</th>
            <td />
            {[came, went, all].map((each) => (
              <td key={each.source.key} class="number">
                <WorkingNumber {...each} />
              </td>
            ))}
          </tr>
          <WorkingRow sources={[came.source, went.source, all.source]} columns={5} />
        </tfoot>
      </table>
    </div>
  );
}
