import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Problem } from '../../model/problem.ts';
import { mostPlanBytes, noPlanFile, planFileText, readPlanFile } from '../../teach/plan/plan-file.ts';
import { FilePicker } from '../../ui/file-picker.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { ProblemList } from '../../ui/problem-list.tsx';
import { saveFile } from '../save-file.ts';
import { namedProblems } from './plan-problems.ts';
import type { PlanHand } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface KeepPlanProps {
  readonly hand: PlanHand;
  readonly said: TeachWords['said'];
  readonly onTold: (line: string) => void;
}

/** The plan on paper, as a link and as a file. A file that cannot be used changes nothing, and every problem is named. */
export function KeepPlan({ hand: { plan, set }, said, onTold }: KeepPlanProps) {
  const { messages } = useWords();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [copied, setCopied] = useState('');
  const copy = () =>
    navigator.clipboard.writeText(location.href).then(
      () => setCopied(said.copied),
      () => setCopied(`${messages.common.shareFailed} ${location.href}`),
    );
  const read = (text: string, name: string) => {
    const file = readPlanFile(text, name);
    setProblems(file.ok ? [] : file.problems);
    if (!file.ok) return;
    set(file.value);
    onTold(fill(said.opened, { file: name }));
    setCopied(fill(said.opened, { file: name }));
  };
  return (
    <section class="teach-keep" aria-labelledby="teach-keep">
      <h2 id="teach-keep">{said.keep}</h2>
      <p class="caption">{said.kept}</p>
      <div class="teach-keep-buttons">
        <PatchButton onPress={() => print()}>{said.print}</PatchButton>
        <PatchButton onPress={copy}>{said.copy}</PatchButton>
        <PatchButton
          onPress={() =>
            saveFile(
              `seamfield-plan-${plan.focus}-${plan.minutes}.json`,
              new Blob([planFileText(plan)], { type: 'application/json' }),
            )
          }
        >
          {said.save}
        </PatchButton>
        <FilePicker
          label={said.open}
          accept=".json,application/json"
          inUse={null}
          mostBytes={mostPlanBytes}
          onText={read}
          onFail={(name) => setProblems([noPlanFile(name, 'too large')])}
        />
      </div>
      <p role="status" class="caption">
        {copied}
      </p>
      <ProblemList problems={namedProblems(problems, said)} untouched={said.untouched} />
    </section>
  );
}
