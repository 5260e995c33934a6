import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords, type Words } from '../../language/words.ts';
import { closingErrorRelative, type MassEntry, type MassLedger } from '../../model/ledger.ts';
import { type Part, parts } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { kilogramsFromPounds, POUNDS_PER_STATISTICAL_BALE } from '../../model/units.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { CountTable } from '../../ui/count-table.tsx';
import type { LedgerColumn } from '../../ui/ledger-rows.ts';
import { LedgerTable } from '../../ui/ledger-table.tsx';
import type { Theme } from '../preferences.ts';
import { followPart } from './follow-part.ts';
import { followWords } from './follow-words.ts';
import { LedgerFollow } from './ledger-follow.tsx';
import { ledgerWorkings } from './ledger-workings.ts';
import { PartJourney } from './part-journey.tsx';
import { workingSource } from './working-source.ts';

export type LedgerScale = 'bale' | 'field';

function scaled<Entry extends MassEntry>(entry: Entry, factor: number): Entry {
  const dryKg = {} as Record<Part, number>;
  for (const part of parts) dryKg[part] = entry.dryKg[part] * factor;
  return { ...entry, dryKg, waterKg: entry.waterKg * factor };
}

/** The share of the field that makes one 480-pound bale; 1 where nothing was pressed. */
export function oneBaleShare(season: Season): number {
  const netKg = season.pressing?.bales.reduce((sum, bale) => sum + bale.netKg, 0) ?? 0;
  return netKg > 0 ? kilogramsFromPounds(POUNDS_PER_STATISTICAL_BALE) / netKg : 1;
}

/** A station's ledgers as they were asked for: one moment of its picture asks many times. */
const kept = new WeakMap<Season, Map<string, MassLedger | null>>();

/** A station's mass ledger scaled to one bale's worth or left whole; null in the field, where things are counted. */
export function ledgerOf(season: Season, station: StationId, scale: LedgerScale): MassLedger | null {
  const ofSeason = kept.get(season) ?? new Map<string, MassLedger | null>();
  kept.set(season, ofSeason);
  const key = `${station} ${scale}`;
  const known = ofSeason.get(key);
  if (known !== undefined) return known;
  const ledger = scaledLedger(season, station, scale);
  ofSeason.set(key, ledger);
  return ledger;
}

function scaledLedger(season: Season, station: StationId, scale: LedgerScale): MassLedger | null {
  const ledger = season.ledgers.find((each) => each.station === station);
  if (!ledger) return null;
  const factor = scale === 'bale' ? oneBaleShare(season) : 1;
  return {
    station,
    in: ledger.in.map((entry) => scaled(entry, factor)),
    out: ledger.out.map((entry) => scaled(entry, factor)),
  };
}

/** Why a part has no band in a station's ledger: it has left before, or is yet to come; empty where it is there. */
function absentText(season: Season, station: StationId, part: LedgerColumn, words: Words): string {
  const held = (entry: MassEntry) => (part === 'water' ? entry.waterKg : entry.dryKg[part]);
  const whole = season.ledgers.find((each) => each.station === station);
  if (!whole || [...whole.in, ...whole.out].some((entry) => held(entry) > 0)) return '';
  const { stops } = followPart(season.ledgers, part);
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last) return '';
  const toCome = stationIds.indexOf(first.station) > stationIds.indexOf(station);
  const { messages, language } = words;
  const said = followWords(language);
  const name = part === 'water' ? messages.ledger.water : messages.parts[part];
  return fill(toCome ? said.toCome : said.left, {
    part: language === 'en' ? name.toLowerCase() : name,
    station: messages.stations[(toCome ? first : last).station].name,
  });
}

/** The ledger of a station: every part and every pound, closing to zero. */
export interface LedgerPanelProps {
  readonly season: Season;
  readonly station: StationId;
  readonly theme: Theme;
}

export function LedgerPanel({ season, station, theme }: LedgerPanelProps) {
  const words = useWords();
  const { messages } = words;
  const [scale, setScale] = useState<LedgerScale>('bale');
  const [followed, setFollowed] = useState<LedgerColumn | null>(null);
  const whole = season.ledgers.find((each) => each.station === station);
  const shown = ledgerOf(season, station, scale);
  const counts = season.field.counts.filter((each) => each.station === station);
  const names = messages.stations;
  const index = stationIds.indexOf(station);
  const nameAt = (at: number) => names[stationIds[at] ?? station].name;
  if (counts.length > 0) {
    return (
      <section class="ledger-panel" aria-label={messages.ledger.heading}>
        <h2>{messages.ledger.heading}</h2>
        <CountTable
          ledgers={counts}
          caption={messages.readings.countedWholeField}
          workingOf={(place, name) => workingSource(season, words, { topic: 'count', place }, name)}
        />
      </section>
    );
  }
  if (!whole || !shown) return null;
  const lotNames = {
    in: fill(messages.accounts.lotIn, { name: nameAt(index - 1) }),
    out: fill(messages.accounts.lotOut, { name: nameAt(index + 1) }),
  };
  return (
    <section class="ledger-panel" aria-label={messages.ledger.heading}>
      <div class="panel-head">
        <h2>{messages.ledger.heading}</h2>
        <ChoiceRow
          label={messages.readings.scale}
          labelUnseen
          options={(['bale', 'field'] as const).map((value) => ({ value, label: messages.readings.scales[value] }))}
          value={scale}
          onChoose={setScale}
        />
      </div>
      <LedgerFollow
        ledger={shown}
        theme={theme}
        lotNames={lotNames}
        followed={followed}
        absent={followed ? absentText(season, station, followed, words) : ''}
        onFollow={setFollowed}
      />
      <LedgerTable
        ledger={shown}
        closingErrorRelative={closingErrorRelative(whole)}
        lotNames={lotNames}
        workingOf={ledgerWorkings(season, words, station, scale === 'bale')}
      />
      {followed ? (
        <PartJourney
          season={season}
          part={followed}
          share={scale === 'bale' ? oneBaleShare(season) : 1}
          shareName={messages.readings.scales[scale]}
        />
      ) : null}
    </section>
  );
}
