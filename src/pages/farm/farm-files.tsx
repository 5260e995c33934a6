import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { phrase } from '../../language/phrase.ts';
import { useWords } from '../../language/words.ts';
import type { Problem } from '../../model/problem.ts';
import type { Scenario } from '../../model/scenario.ts';
import { FilePicker } from '../../ui/file-picker.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { ProblemList } from '../../ui/problem-list.tsx';
import { saveFile } from '../save-file.ts';
import { decisionTitle } from './decided-lines.ts';
import { farmWords } from './farm-words.ts';
import { farmFileText, isFreeId, mostFarmBytes, newFarmId, noFarmFile, readFarmFile } from './read-farm-file.ts';
import { ownFarm } from './shelf.ts';

export interface FarmFilesProps {
  readonly scenario: Scenario;
  readonly onOpen: (scenario: Scenario) => void;
}

/** A farm as a JSON file, out and in. A file that cannot be used changes nothing, and every problem is named. */
export function FarmFiles({ scenario, onOpen }: FarmFilesProps) {
  const all = useWords();
  const words = farmWords(all.language);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [opened, setOpened] = useState('');
  const refuse = (found: readonly Problem[]) => {
    setOpened('');
    // Phrases that only farm files need come with this page, not with the first view.
    setProblems(
      found.map(({ field, value, rule }) => ({
        field: decisionTitle(field, all),
        value: phrase(value, words.phrases),
        rule: rule.kind === 'type' ? { kind: 'type', expected: phrase(rule.expected, words.phrases) } : rule,
      })),
    );
  };
  const read = (text: string, name: string) => {
    const file = readFarmFile(text, name);
    if (!file.ok) return refuse(file.problems);
    setProblems([]);
    const farm = file.value;
    const named = { name: farm.name[all.language] || words.unnamed };
    const isFree = isFreeId(farm.id, (id) => ownFarm(id)?.scenario);
    const kept = isFree ? farm : { ...farm, id: newFarmId() };
    onOpen(kept);
    setOpened(isFree ? fill(words.opened, named) : fill(words.openedAs, { ...named, id: kept.id }));
  };
  return (
    <section class="farm-files" aria-label={words.files}>
      <h2>{words.files}</h2>
      <p class="caption">{words.filesHelp}</p>
      <PatchButton
        onPress={() =>
          saveFile(`${scenario.id}.json`, new Blob([farmFileText(scenario)], { type: 'application/json' }))
        }
      >
        {words.save}
      </PatchButton>
      <FilePicker
        label={words.open}
        accept=".json,application/json"
        inUse={null}
        mostBytes={mostFarmBytes}
        onText={read}
        onFail={(name) => refuse([noFarmFile(name, 'too large')])}
      />
      <p role="status" class="caption">
        {opened}
      </p>
      <ProblemList problems={problems} untouched={words.untouched} />
    </section>
  );
}
