import { useEffect, useState } from 'preact/hooks';
import { probeDevice } from '../../../kiosk/probe-device.ts';
import { judgeDevice, type Probed } from '../../../kiosk/self-test.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import type { PartProps } from './setup-page.tsx';

/** The version by the name of its script, which changes with every change of the product. */
const build = (): string =>
  /index-([\w-]{8})\.js/.exec(document.querySelector<HTMLScriptElement>('script[type=module]')?.src ?? '')?.[1] ??
  'dev';

/** What the device has and what it lacks, a plain line for each part. */
export function SelfTestPart({ said: { test }, settings: { languages } }: PartProps) {
  const { messages, formats } = useWords();
  const [round, setRound] = useState(0);
  const [probed, setProbed] = useState<Probed | null>(null);
  useEffect(() => {
    let left = false;
    setProbed(null);
    probeDevice().then((found) => !left && setProbed(found));
    return () => {
      left = true;
    };
  }, [round]);
  const lines = probed ? judgeDevice(probed, languages) : [];
  const voiceless = languages.filter((language) => !probed?.voices.includes(language));
  const names = {
    files: formats.count(probed?.keptFiles ?? 0),
    fingers: formats.count(probed?.fingers ?? 0),
    languages: formats.list(voiceless.map((language) => messages.common.languages[language])),
  };
  return (
    <section class="setup-part" aria-labelledby="setup-test" aria-busy={probed === null}>
      <h2 id="setup-test">{test.heading}</h2>
      {probed ? null : <p role="status">{test.running}</p>}
      <dl class="setup-test">
        {lines.map(({ part, grade, says }) => (
          <div key={part} data-grade={grade}>
            <dt>
              {test.parts[part].name} <span class="setup-grade">{test.grades[grade]}</span>
            </dt>
            <dd>{fill((test.parts[part] as Readonly<Record<string, string>>)[says] ?? '', names)}</dd>
          </div>
        ))}
      </dl>
      <div class="setup-row">
        <PatchButton onPress={() => setRound(round + 1)}>{test.again}</PatchButton>
        <p class="caption">{fill(test.build, { build: build() })}</p>
      </div>
    </section>
  );
}
