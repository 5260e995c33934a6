import type { ComponentChildren } from 'preact';
import { beatText } from '../../../kiosk/heartbeat.ts';
import { nightMinute } from '../../../kiosk/opening-hours.ts';
import { keptSettings } from '../../../kiosk/settings.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { clockTime } from './clock-time.ts';
import { ReachPart } from './reach-part.tsx';
import type { KioskSheetWords } from './use-setup-words.ts';
import './sheet.css';

/** A moment to show the form of the heartbeat with. */
const shownBeat = beatText('attract', new Date(Date.UTC(2026, 0, 1, 9, 30, 10)));

interface PartProps {
  readonly part: { readonly heading: string; readonly lines?: readonly string[] };
  readonly names: Readonly<Record<string, string>>;
  readonly children?: ComponentChildren;
}

/** One part of the sheet: its lines, and what it shows. */
function SheetPart({ part, names, children }: PartProps) {
  return (
    <section>
      <h2>{part.heading}</h2>
      {part.lines ? (
        <ul>
          {part.lines.map((line) => (
            <li key={line}>{fill(line, names)}</li>
          ))}
        </ul>
      ) : null}
      {children}
    </section>
  );
}

/** The sheet that hangs behind the kiosk: two sides of paper, with the settings of this one. */
export function InstallationSheet({ said }: { readonly said: KioskSheetWords }) {
  const { formats } = useWords();
  const { mmPerPx, hours, phoneAddress } = keptSettings();
  const { parts, here } = said;
  const names = { beat: shownBeat, time: clockTime(nightMinute(hours)) };
  const part = { names };
  return (
    <>
      <div class="kiosk-sheet-print">
        <PatchButton onPress={() => print()}>{said.print}</PatchButton>
      </div>
      <article class="kiosk-sheet">
        <header>
          <h1>{said.title}</h1>
          <p>{said.lead}</p>
        </header>
        <section class="kiosk-sheet-here">
          <h2>{here.heading}</h2>
          <p>
            {fill(here.size, { mm: formats.number(mmPerPx, 3) })} ·{' '}
            {fill(here.hours, { from: clockTime(hours.from * 60), to: clockTime(hours.to * 60) })} ·{' '}
            {phoneAddress ? fill(here.phone, { address: phoneAddress }) : here.noPhone}
          </p>
          {here.blanks.map((blank) => (
            <p key={blank} class="kiosk-sheet-blank">
              {blank}
            </p>
          ))}
        </section>
        <div class="kiosk-sheet-side">
          <SheetPart part={parts.before} {...part} />
          <SheetPart part={parts.linux} {...part} />
          <SheetPart part={parts.windows} {...part} />
          <SheetPart part={parts.launcher} {...part} />
          <SheetPart part={parts.setup} {...part} />
          <SheetPart part={parts.weekly} {...part} />
        </div>
        <div class="kiosk-sheet-side">
          <SheetPart part={parts.reach} {...part}>
            <ReachPart words={parts.reach} />
          </SheetPart>
          <SheetPart part={parts.sound} {...part} />
          <SheetPart part={parts.power} {...part} />
          <SheetPart part={parts.cleaning} {...part} />
        </div>
        <SheetPart part={{ heading: parts.trouble.heading }} {...part}>
          <table class="kiosk-sheet-trouble">
            <thead>
              <tr>
                <th scope="col">{parts.trouble.seen}</th>
                <th scope="col">{parts.trouble.does}</th>
              </tr>
            </thead>
            <tbody>
              {parts.trouble.rows.map(({ seen, does }) => (
                <tr key={seen}>
                  <th scope="row">{seen}</th>
                  <td>{does}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </SheetPart>
      </article>
    </>
  );
}
