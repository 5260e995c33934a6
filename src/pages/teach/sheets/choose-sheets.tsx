import { type KindId, kindIds } from '../../../teach/sheets/make-question.ts';
import { levels } from '../../../teach/sheets/question.ts';
import { ChoiceRow } from '../../../ui/choice-row.tsx';
import { cutOf } from '../../../ui/cut-of.ts';
import type { SheetWords } from './question-text.ts';
import { choiceLimits, paperSides, type SheetChoice } from './sheet-choice.ts';
import { WholeNumberField } from './whole-number-field.tsx';

export interface ChooseSheetsProps {
  readonly words: SheetWords;
  readonly choice: SheetChoice;
  /** Pupils' sheets, each on paper of its own; keys run on. */
  readonly forPupils: boolean;
  readonly onChange: (choice: SheetChoice) => void;
}

function Kinds({ words, choice, onChange }: Omit<ChooseSheetsProps, 'forPupils'>) {
  const { kinds } = words.questions;
  const toggled = (kind: KindId) =>
    kindIds.filter((each) => (each === kind ? !choice.kinds.includes(kind) : choice.kinds.includes(each)));
  return (
    <fieldset class="choice-row">
      <legend class="control-label">{words.page.kinds}</legend>
      <div class="choices">
        {kindIds.map((kind) => {
          const isChosen = choice.kinds.includes(kind);
          return (
            <label
              key={kind}
              class="patch choice"
              data-state={isChosen ? 'sewn' : 'chalked'}
              data-cut={cutOf(kinds[kind])}
            >
              <input
                type="checkbox"
                checked={isChosen}
                onChange={() => onChange({ ...choice, kinds: toggled(kind) })}
              />
              <span>{kinds[kind]}</span>
            </label>
          );
        })}
      </div>
      {choice.kinds.length === 0 ? (
        <p class="refusal" role="status">
          {words.page.kindsNone}
        </p>
      ) : null}
    </fieldset>
  );
}

/** What the sheets are made of: kinds, level, how many, units, paper. */
export function ChooseSheets({ words, choice, forPupils, onChange }: ChooseSheetsProps) {
  const { page } = words;
  return (
    <div class="choose-sheets">
      <div class="sheet-numbers">
        <WholeNumberField
          label={page.pupils}
          value={choice.pupils}
          limits={choiceLimits.pupils}
          rule={page.limits}
          onChange={(pupils) => onChange({ ...choice, pupils })}
        />
        <WholeNumberField
          label={page.first}
          value={choice.first}
          limits={choiceLimits.first}
          rule={page.limits}
          help={page.firstHelp}
          onChange={(first) => onChange({ ...choice, first })}
        />
      </div>
      <Kinds words={words} choice={choice} onChange={onChange} />
      <ChoiceRow
        label={page.level}
        help={page.levels[choice.level].help}
        options={levels.map((level) => ({ value: level, label: page.levels[level].name }))}
        value={choice.level}
        onChoose={(level) => onChange({ ...choice, level })}
      />
      <ChoiceRow
        label={page.units}
        options={(['us', 'metric'] as const).map((units) => ({ value: units, label: page.unitNames[units] }))}
        value={choice.units}
        onChoose={(units) => onChange({ ...choice, units })}
      />
      {forPupils ? (
        <ChoiceRow
          label={page.paper}
          help={page.paperHelp[choice.paper]}
          options={paperSides.map((paper) => ({ value: paper, label: page.paperNames[paper] }))}
          value={choice.paper}
          onChoose={(paper) => onChange({ ...choice, paper })}
        />
      ) : null}
    </div>
  );
}
