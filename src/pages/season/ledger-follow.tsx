import { useEffect, useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { MassLedger } from '../../model/ledger.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { type Masses, plus } from '../../scene/stations/flow/flow-input.ts';
import { ledgerBands, partAtPoint } from '../../scene/stations/ledger/ledger-bands.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { type LedgerColumn, ledgerRows } from '../../ui/ledger-rows.ts';
import { Picture } from '../../ui/picture.tsx';
import { useWidth } from '../../ui/use-width.ts';
import type { Theme } from '../preferences.ts';
import { followWords } from './follow-words.ts';

export interface LedgerFollowProps {
  /** As the table below shows it: one bale's worth, or the whole field. */
  readonly ledger: MassLedger;
  readonly theme: Theme;
  readonly lotNames: { readonly in: string; readonly out: string };
  readonly followed: LedgerColumn | null;
  /** Why the part that is followed has no band here; empty where it has one. */
  readonly absent: string;
  readonly onFollow: (part: LedgerColumn | null) => void;
}

/** A finger may miss a thin band by this much, px. */
const reachPx = 10;

/** The ledger as bands of cloth as wide as their masses. One part can be followed: by pointing, tapping, or the arrow keys. */
export function LedgerFollow({ ledger, theme, lotNames, followed: asked, absent, onFollow }: LedgerFollowProps) {
  const { messages, formats, unitSystem, language } = useWords();
  const words = followWords(language);
  // A part that has no band here leaves the others as they are.
  const followed = absent ? null : asked;
  const [place, width] = useWidth<HTMLDivElement>(640);
  const rows = useMemo(() => ledgerRows(ledger, unitSystem), [ledger, unitSystem]);
  const picture = useMemo(() => {
    const sign = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
    const names: Readonly<Record<string, string>> = { ...messages.accounts.sources, ...messages.accounts.destinations };
    const side = (name: 'in' | 'out') =>
      rows[name].flatMap(({ account, all }) => {
        const masses = (ledger[name] as readonly ({ readonly account: string } & Masses)[])
          .filter((entry) => entry.account === account)
          .reduce<Masses | null>((sum, entry) => (sum ? plus(sum, entry) : entry), null);
        if (!masses || !(all > 0)) return [];
        const text = account === 'lot' ? lotNames[name] : (names[account] ?? account);
        return [{ account, masses, label: `${text} ${formats.number(all, rows.decimals)}\u00a0${sign}` }];
      });
    return ledgerBands({
      name: `ledger/${ledger.station}`,
      in: side('in'),
      out: side('out'),
      followed,
      width,
      wordPx: width < 420 ? 13 : 15,
    });
  }, [ledger, rows, messages, formats, unitSystem, lotNames.in, lotNames.out, followed, width]);
  const svg = useMemo(
    () => (picture.height > 0 ? paintSvg(picture.marks, { width, height: picture.height, theme }) : ''),
    [picture, width, theme],
  );
  // A shortcut for the hand, so a bare listener: the row of choices below does the same for the keyboard and for speech.
  useEffect(() => {
    const bands = place.current;
    if (!bands) return;
    const tap = (event: MouseEvent) => {
      const box = bands.getBoundingClientRect();
      const part = partAtPoint(picture.spots, event.clientX - box.left, event.clientY - box.top, reachPx);
      onFollow(part === followed ? null : part);
    };
    bands.addEventListener('click', tap);
    return () => bands.removeEventListener('click', tap);
  }, [place, picture, followed, onFollow]);
  const nameOf = (column: LedgerColumn) => (column === 'water' ? messages.ledger.water : messages.parts[column]);
  return (
    <div class="ledger-follow">
      <div class="ledger-bands" ref={place}>
        {svg ? <Picture svg={svg} alt="" /> : null}
      </div>
      {absent ? (
        <p role="status">
          <b>{absent}</b>
        </p>
      ) : null}
      <ChoiceRow
        label={words.choose}
        options={[
          { value: 'all', label: words.all },
          ...rows.columns.map((column) => ({ value: column as string, label: nameOf(column) })),
        ]}
        value={followed ?? 'all'}
        onChoose={(value) => onFollow(value === 'all' ? null : (value as LedgerColumn))}
      />
    </div>
  );
}
