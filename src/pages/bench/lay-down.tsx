import { useState } from 'preact/hooks';
import { problemText } from '../../language/problem-text.ts';
import { useWords } from '../../language/words.ts';
import { fibreOfCard } from '../../model/bench/lint.ts';
import { readLayDown } from '../../model/bench/read-lay-down.ts';
import type { LaidBale } from '../../model/bench/set-up.ts';
import type { Problem } from '../../model/problem.ts';
import { FilePicker } from '../../ui/file-picker.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { balesBlended } from '../../workings/bench/sentence-readings.ts';
import { nextTask } from '../compare/use-seasons.ts';
import { saveFile } from '../save-file.ts';
import { benchWords } from './bench-words.ts';
import type { ControlsProps } from './fibre-controls.tsx';
import { SaidText } from './said-text.tsx';

const example =
  'bale,length,uniformity,strength,micronaire,rd,b,leaf,trash,net\n1,1.12,82,30,4.2,76,8.5,3,0.4,480\n2,1.08,80.5,28.5,4.6,74,9,4,0.5,492\n3,1.15,82.5,30.5,4,78,8.2,2,0.3,476\n';

/** Works out the fibers of each bale in a task of its own; they are kept, so that the mix is quick. */
async function fitted(bales: readonly LaidBale[]): Promise<void> {
  for (const bale of bales) {
    await nextTask();
    fibreOfCard(bale);
  }
}

/** Several bales in one mix, read from a file; what is wrong with it is said by line and column. */
export function LayDown({ setUp, side, onChange }: ControlsProps) {
  const { language, messages, formats } = useWords();
  const { layDown: said, problems: ownProblems } = benchWords(language);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [name, setName] = useState<string | null>(null);
  const spoken = {
    ...messages,
    problems: { ...messages.problems, phrases: { ...messages.problems.phrases, ...ownProblems.phrases } },
  };
  const { bales } = setUp;
  return (
    <details>
      <summary>{said.heading}</summary>
      <FilePicker
        label={said.choose}
        help={said.help}
        accept=".csv,text/csv"
        inUse={bales.length > 0 ? name : null}
        onText={(text, file) => {
          const read = readLayDown(text);
          setProblems(read.ok ? [] : read.problems);
          setName(file);
          if (read.ok) void fitted(read.value).then(() => onChange({ ...setUp, bales: read.value }));
        }}
        onFail={(file) => setProblems([{ field: file, value: 'nothing', rule: { kind: 'type', expected: 'CSV' } }])}
      />
      {problems.length > 0 ? (
        <ul class="bench-problems" role="alert">
          {problems.slice(0, 12).map((problem) => (
            <li key={problem.field}>{problemText(problem, spoken, formats)}</li>
          ))}
        </ul>
      ) : null}
      {bales.length > 0 ? (
        <div>
          <SaidText template={said.used} numbers={{ n: balesBlended(bales.length) }} where={`${side}/bales`} />{' '}
          <button type="button" class="bench-link" onClick={() => onChange({ ...setUp, bales: [] })}>
            {said.clear}
          </button>
        </div>
      ) : null}
      <PatchButton onPress={() => saveFile('bales.csv', new Blob([example], { type: 'text/csv' }))}>
        {said.example}
      </PatchButton>
    </details>
  );
}
