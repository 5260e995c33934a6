import { nightMinute } from '../../../kiosk/opening-hours.ts';
import { fill } from '../../../language/fill.ts';
import { clockTime } from './clock-time.ts';
import { SelectRow } from './select-row.tsx';
import type { PartProps } from './setup-page.tsx';

const hoursOfDay = 24;
const hour = (value: number) => ({ value: String(value), label: clockTime(value * 60) });

/** When visitors are about. */
export function HoursPart({ said: { hours: words }, settings: { hours }, change }: PartProps) {
  const { from, to } = hours;
  return (
    <section class="setup-part" aria-labelledby="setup-hours">
      <h2 id="setup-hours">{words.heading}</h2>
      <div class="setup-row">
        <SelectRow
          label={words.from}
          value={String(from)}
          options={Array.from({ length: to }, (_, value) => hour(value))}
          onChoose={(value) => change({ hours: { from: Number(value), to } })}
        />
        <SelectRow
          label={words.to}
          value={String(to)}
          options={Array.from({ length: hoursOfDay - from }, (_, i) => hour(from + 1 + i))}
          onChoose={(value) => change({ hours: { from, to: Number(value) } })}
        />
      </div>
      <p class="caption">{fill(words.help, { time: clockTime(nightMinute(hours)) })}</p>
    </section>
  );
}
