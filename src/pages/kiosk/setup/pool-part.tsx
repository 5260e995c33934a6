import { useState } from 'preact/hooks';
import { ginOfScenario, ginScenario } from '../../../kiosk/own-gin.ts';
import { kioskLimits, type OwnGin } from '../../../kiosk/settings.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { decisionTable } from '../../../model/decisions.ts';
import { farms } from '../../../model/farms.ts';
import type { Problem } from '../../../model/problem.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { FilePicker } from '../../../ui/file-picker.tsx';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { ProblemList } from '../../../ui/problem-list.tsx';
import { Switch } from '../../../ui/switch.tsx';
import { farmFileText, mostFarmBytes, noFarmFile, readFarmFile } from '../../farm/read-farm-file.ts';
import { saveFile } from '../../save-file.ts';
import { namedProblems } from './named-problems.ts';
import { SelectRow } from './select-row.tsx';
import type { PartProps } from './setup-page.tsx';
import { TextRow } from './text-row.tsx';

const { stand, lintCleaners } = decisionTable.ginning;
const cleanerCounts = Array.from({ length: lintCleaners.high - lintCleaners.low + 1 }, (_, i) => lintCleaners.low + i);
const newGin: OwnGin = {
  farm: farms[0]!.id,
  stand: farms[0]!.decisions.ginning.stand,
  lintCleaners: farms[0]!.decisions.ginning.lintCleaners,
  greeting: { en: '', es: '' },
};

/** Which farms take their turn, and the site's own gin among them. */
export function PoolPart({ said, settings, change }: PartProps) {
  const { language } = useWords();
  const { pool } = said;
  const { scenarios, ownGin } = settings;
  // What was set before is still there when the gin is taken back in.
  const [asideGin, setAside] = useState(newGin);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [taken, setTaken] = useState('');
  const set = (gin: OwnGin) => change({ ownGin: gin });
  const take = (text: string, name: string) => {
    const farm = readFarmFile(text, name);
    const gin = farm.ok ? ginOfScenario(farm.value) : farm;
    setProblems(gin.ok ? [] : gin.problems);
    setTaken(gin.ok ? fill(pool.taken, { file: name }) : '');
    if (gin.ok) set(gin.value);
  };
  return (
    <section class="setup-part" aria-labelledby="setup-pool">
      <h2 id="setup-pool">{pool.heading}</h2>
      <fieldset class="setup-checks">
        <legend class="unseen">{pool.heading}</legend>
        {farms.map(({ id, name }) => {
          const isIn = scenarios.includes(id);
          const isLast = isIn && scenarios.length === 1;
          return (
            <label key={id} class="setup-check">
              <input
                type="checkbox"
                checked={isIn}
                disabled={isLast}
                onChange={() =>
                  change({
                    scenarios: farms
                      .map((farm) => farm.id)
                      .filter((each) => (each === id) !== scenarios.includes(each)),
                  })
                }
              />
              <span>{name[language]}</span>
            </label>
          );
        })}
      </fieldset>
      <p class="caption">
        {pool.help} {scenarios.length === 1 ? pool.last : ''}
      </p>
      <Switch
        label={pool.own}
        on={ownGin !== null}
        onChange={(on) => {
          if (ownGin) setAside(ownGin);
          change({ ownGin: on ? asideGin : null });
        }}
      />
      {ownGin ? (
        <>
          <SelectRow
            label={pool.farm}
            value={ownGin.farm}
            options={farms.map(({ id, name }) => ({ value: id, label: name[language] }))}
            onChoose={(farm) => set({ ...ownGin, farm })}
          />
          <ChoiceRow
            label={pool.stand}
            options={stand.options.map((value) => ({ value, label: pool.stands[value] }))}
            value={ownGin.stand}
            onChoose={(value) => set({ ...ownGin, stand: value })}
          />
          <ChoiceRow
            label={pool.lintCleaners}
            options={cleanerCounts.map((value) => ({ value, label: String(value) }))}
            value={ownGin.lintCleaners}
            onChoose={(value) => set({ ...ownGin, lintCleaners: value })}
          />
          {(['en', 'es'] as const).map((each) => (
            <TextRow
              key={each}
              label={each === 'en' ? pool.greetingEn : pool.greetingEs}
              rule=""
              value={ownGin.greeting[each]}
              mostLetters={kioskLimits.greetingLetters}
              mayStand={() => true}
              onChange={(text) => set({ ...ownGin, greeting: { ...ownGin.greeting, [each]: text } })}
            />
          ))}
          <PatchButton
            onPress={() =>
              saveFile('own-gin.json', new Blob([farmFileText(ginScenario(ownGin))], { type: 'application/json' }))
            }
          >
            {pool.save}
          </PatchButton>
        </>
      ) : null}
      <FilePicker
        label={pool.open}
        help={pool.openHelp}
        accept=".json,application/json"
        inUse={null}
        mostBytes={mostFarmBytes}
        onText={take}
        onFail={(name) => setProblems([noFarmFile(name, 'too large')])}
      />
      <p role="status" class="caption">
        {taken}
      </p>
      <ProblemList problems={namedProblems(problems, said)} untouched={said.file.untouched} />
    </section>
  );
}
