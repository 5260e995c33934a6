import { playMeterTone } from '../../../kiosk/meter-tone.ts';
import { kioskLimits, mayStand } from '../../../kiosk/settings.ts';
import { fill } from '../../../language/fill.ts';
import type { Language } from '../../../language/language.ts';
import { useWords } from '../../../language/words.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { Switch } from '../../../ui/switch.tsx';
import type { PartProps } from './setup-page.tsx';
import { TextRow } from './text-row.tsx';

const volumes = [0, 25, 50, 100] as const;
const languageSets = ['en,es', 'es,en', 'en', 'es'] as const;

/** What a visitor hears, reads and takes home. */
export function VisitorsPart({ said: { visitors }, settings, change }: PartProps) {
  const { formats } = useWords();
  const { volume, highContrast, phoneAddress } = settings;
  const chosen = languageSets.find((set) => set === settings.languages.join());
  return (
    <section class="setup-part" aria-labelledby="setup-visitors">
      <h2 id="setup-visitors">{visitors.heading}</h2>
      <ChoiceRow
        label={visitors.languages}
        options={languageSets.map((value) => ({ value, label: visitors.languageSets[value] }))}
        value={chosen ?? null}
        onChoose={(set) => change({ languages: set.split(',') as Language[] })}
      />
      <ChoiceRow
        label={visitors.volume}
        options={volumes.map((value) => ({ value, label: visitors.volumes[value] }))}
        value={volumes.find((each) => each === volume) ?? null}
        onChoose={(next) => change({ volume: next })}
      />
      {volumes.some((each) => each === volume) ? null : (
        <p class="caption">{fill(visitors.volumeIs, { percent: formats.count(volume) })}</p>
      )}
      <div class="setup-field">
        <PatchButton onPress={playMeterTone}>{visitors.tone}</PatchButton>
        <p class="caption">{visitors.toneHelp}</p>
      </div>
      <Switch
        label={visitors.contrast}
        help={visitors.contrastHelp}
        on={highContrast}
        onChange={(on) => change({ highContrast: on })}
      />
      <TextRow
        label={visitors.address}
        help={visitors.addressHelp}
        rule={fill(visitors.addressRule, { letters: formats.count(kioskLimits.addressLetters) })}
        value={phoneAddress}
        mostLetters={kioskLimits.addressLetters}
        mayStand={(text) => mayStand('phoneAddress', text)}
        onChange={(text) => change({ phoneAddress: text })}
      />
    </section>
  );
}
