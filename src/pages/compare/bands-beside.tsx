import { useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords, type Words } from '../../language/words.ts';
import type { MassLedger } from '../../model/ledger.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { type Masses, massOf, plus } from '../../scene/stations/flow/flow-input.ts';
import { type LedgerBand, ledgerBands } from '../../scene/stations/ledger/ledger-bands.ts';
import type { Theme } from '../../style/inks.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { Picture } from '../../ui/picture.tsx';
import { useWidth } from '../../ui/use-width.ts';
import { compareWords } from './compare-words.ts';
import { useSideNames } from './side-names.ts';

/** The accounts of one side of a ledger as bands with their names and masses; an account named twice is one band. */
function bandsOf(ledger: MassLedger, side: 'in' | 'out', words: Words): LedgerBand[] {
  const { accounts, stations } = words.messages;
  const names: Readonly<Record<string, string>> = { ...accounts.sources, ...accounts.destinations };
  const other = stationIds[stationIds.indexOf(ledger.station) + (side === 'in' ? -1 : 1)];
  const lotName = fill(side === 'in' ? accounts.lotIn : accounts.lotOut, {
    name: other ? stations[other].name : '',
  });
  const byAccount = new Map<string, Masses>();
  for (const entry of ledger[side]) {
    const known = byAccount.get(entry.account);
    byAccount.set(entry.account, known ? plus(known, entry) : entry);
  }
  return [...byAccount]
    .filter(([, masses]) => massOf(masses) > 0)
    .map(([account, masses]) => ({
      account,
      masses,
      label: `${account === 'lot' ? lotName : (names[account] ?? account)} ${words.formats.mass(massOf(masses), 0).text}`,
    }));
}

const sumKg = (bands: readonly LedgerBand[]): number => bands.reduce((sum, { masses }) => sum + massOf(masses), 0);

interface Side {
  readonly name: string;
  readonly in: readonly LedgerBand[];
  readonly out: readonly LedgerBand[];
}

function SideBands({ side, fullKg, theme, spoken }: { side: Side; fullKg: number; theme: Theme; spoken: string }) {
  const [place, width] = useWidth<HTMLDivElement>(560);
  const svg = useMemo(() => {
    const wordPx = width < 420 ? 13 : 15;
    const picture = ledgerBands({ ...side, followed: null, width, wordPx, fullKg });
    return paintSvg(picture.marks, { width, height: picture.height, theme });
  }, [side, fullKg, width, theme]);
  return (
    <div class="ledger-bands" ref={place}>
      <Picture svg={svg} alt={spoken} />
    </div>
  );
}

export interface BandsBesideProps {
  readonly before: Season;
  readonly after: Season;
  readonly theme: Theme;
}

/** The two ledgers of one station as bands of cloth, both on one scale. */
export function BandsBeside({ before, after, theme }: BandsBesideProps) {
  const words = useWords();
  const { messages, formats, language } = words;
  const said = compareWords(language);
  const stations = stationIds.filter((id) =>
    [before, after].some(({ ledgers }) => ledgers.some(({ station }) => station === id)),
  );
  const names = useSideNames();
  const [chosen, setStation] = useState<StationId>('ginning');
  const station = stations.includes(chosen) ? chosen : (stations[0] ?? 'harvest');
  const sides = useMemo(
    () =>
      ([before, after] as const).map(({ ledgers }, index): Side | null => {
        const ledger = ledgers.find((each) => each.station === station);
        return ledger
          ? {
              name: `compare/${index}/${station}`,
              in: bandsOf(ledger, 'in', words),
              out: bandsOf(ledger, 'out', words),
            }
          : null;
      }),
    [before, after, station, words],
  );
  if (stations.length === 0) return null;
  const fullKg = Math.max(...sides.map((side) => (side ? sumKg(side.in) : 0)));
  const list = (bands: readonly LedgerBand[]) => formats.list(bands.map(({ label }) => label));
  return (
    <section class="bands-beside" aria-labelledby="bands">
      <h2 id="bands">{said.bands.heading}</h2>
      <ChoiceRow
        label={said.bands.station}
        labelUnseen
        options={stations.map((value) => ({ value, label: messages.stations[value].name }))}
        value={station}
        onChoose={setStation}
      />
      <p class="caption">{said.bands.caption}</p>
      <div class="beside">
        {sides.map((side, index) => {
          const which = index === 0 ? 'before' : 'after';
          const name = names[which];
          return (
            <figure key={which} data-side={which}>
              <figcaption class="side-name" data-side={which}>
                {name}
              </figcaption>
              {side ? (
                <SideBands
                  side={side}
                  fullKg={fullKg}
                  theme={theme}
                  spoken={fill(said.bands.spoken, {
                    side: name,
                    station: messages.stations[station].name,
                    in: list(side.in),
                    out: list(side.out),
                  })}
                />
              ) : (
                <p>{said.bands.none}</p>
              )}
            </figure>
          );
        })}
      </div>
    </section>
  );
}
