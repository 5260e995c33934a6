import { useState } from 'preact/hooks';
import { type KioskSettings, keepSettings, keptSettings } from '../../../kiosk/settings.ts';
import { CountsPart } from './counts-part.tsx';
import { HoursPart } from './hours-part.tsx';
import { PoolPart } from './pool-part.tsx';
import { SelfTestPart } from './self-test-part.tsx';
import { SettingsFilePart } from './settings-file-part.tsx';
import { SizePart } from './size-part.tsx';
import type { SetupWords } from './use-setup-words.ts';
import { VisitorsPart } from './visitors-part.tsx';

/** What every part of the page works on. */
export interface PartProps {
  readonly said: SetupWords;
  readonly settings: KioskSettings;
  readonly change: (some: Partial<KioskSettings>) => void;
}

/** What an installer sets; each change is kept at once. */
export function SetupPage({ said }: { readonly said: SetupWords }) {
  const [settings, setSettings] = useState(keptSettings);
  const [told, setTold] = useState('');
  const change = (some: Partial<KioskSettings>) => {
    const next = { ...settings, ...some };
    setSettings(next);
    setTold(keepSettings(next) ? said.kept : said.notKept);
  };
  const part: PartProps = { said, settings, change };
  return (
    <>
      <div class="setup-head">
        <h1>{said.title}</h1>
        <p>
          {said.lead} {said.returns}
        </p>
        <p class="setup-told" role="status">
          {told}
        </p>
      </div>
      <div class="setup-parts">
        <div class="setup-column">
          <SizePart {...part} />
          <VisitorsPart {...part} />
        </div>
        <div class="setup-column">
          <SelfTestPart {...part} />
          <PoolPart {...part} />
        </div>
        <div class="setup-column">
          <HoursPart {...part} />
          <SettingsFilePart {...part} />
          <CountsPart said={said} />
        </div>
      </div>
    </>
  );
}
