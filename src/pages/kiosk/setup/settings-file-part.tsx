import { useState } from 'preact/hooks';
import { mostSettingsBytes, noSettingsFile, readSettingsFile, settingsFileText } from '../../../kiosk/settings-file.ts';
import { fill } from '../../../language/fill.ts';
import type { Problem } from '../../../model/problem.ts';
import { FilePicker } from '../../../ui/file-picker.tsx';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { ProblemList } from '../../../ui/problem-list.tsx';
import { saveFile } from '../../save-file.ts';
import { namedProblems } from './named-problems.ts';
import type { PartProps } from './setup-page.tsx';

/** The settings to a file and back. A file with anything wrong in it changes nothing, and every problem is named. */
export function SettingsFilePart({ said, settings, change }: PartProps) {
  const { file } = said;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [opened, setOpened] = useState('');
  const read = (text: string, name: string) => {
    const found = readSettingsFile(text, name);
    setProblems(found.ok ? [] : found.problems);
    setOpened(found.ok ? fill(file.opened, { file: name }) : '');
    if (found.ok) change(found.value);
  };
  return (
    <section class="setup-part" aria-labelledby="setup-file">
      <h2 id="setup-file">{file.heading}</h2>
      <p>{file.help}</p>
      <div class="setup-row">
        <PatchButton
          onPress={() =>
            saveFile('seamfield-kiosk.json', new Blob([settingsFileText(settings)], { type: 'application/json' }))
          }
        >
          {file.save}
        </PatchButton>
        <FilePicker
          label={file.open}
          accept=".json,application/json"
          inUse={null}
          mostBytes={mostSettingsBytes}
          onText={read}
          onFail={(name) => setProblems([noSettingsFile(name, 'too large')])}
        />
      </div>
      <p role="status" class="caption">
        {opened}
      </p>
      <ProblemList problems={namedProblems(problems, said)} untouched={file.untouched} />
    </section>
  );
}
