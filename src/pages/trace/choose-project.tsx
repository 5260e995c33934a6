import { useId } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { clothNames, clothOunces } from '../../model/trace/cloth-weights.ts';
import { countLimits, ownClothLimits } from '../../model/trace/facts.ts';
import type { ProjectId } from '../../model/trace/project-facts.ts';
import { GSM_PER_OUNCE_PER_SQUARE_YARD, MM_PER_INCH } from '../../model/units.ts';
import type { TraceAsked } from './trace-link.ts';
import { TypedNumber } from './typed-number.tsx';
import type { TraceWords } from './use-trace-words.ts';

const groups = {
  quilts: ['baby-quilt', 'crib-quilt', 'throw-quilt', 'twin-quilt', 'full-quilt', 'queen-quilt', 'king-quilt'],
  wear: ['dress-shirt', 'skirt', 't-shirt', 'jeans', 'apron', 'bandana'],
  house: ['tote', 'pillowcase', 'flat-sheet', 'sheet-set'],
} as const satisfies Readonly<Record<string, readonly ProjectId[]>>;

interface ChooseProps {
  readonly asked: TraceAsked;
  readonly said: TraceWords;
  readonly onAsk: (some: Partial<TraceAsked>) => void;
}

/** What is made, and how many; or cloth of one's own. */
export function ChooseProject({ asked, said, onAsk }: ChooseProps) {
  const id = useId();
  return (
    <>
      <div class="trace-field">
        <label class="control-label" for={id}>
          {said.project}
        </label>
        <select
          id={id}
          class="typed"
          value={asked.project}
          onChange={(event) => onAsk({ project: event.currentTarget.value as TraceAsked['project'] })}
        >
          {(Object.keys(groups) as (keyof typeof groups)[]).map((name) => (
            <optgroup key={name} label={said.groups[name]}>
              {groups[name].map((project) => (
                <option key={project} value={project}>
                  {said.projects[project]}
                </option>
              ))}
            </optgroup>
          ))}
          <optgroup label={said.groups.own}>
            <option value="own">{said.own}</option>
          </optgroup>
        </select>
      </div>
      {asked.project === 'own' ? (
        <OwnClothFields asked={asked} said={said} onAsk={onAsk} />
      ) : (
        <TypedNumber
          label={said.count}
          value={asked.count}
          limits={{ ...countLimits, unit: '' }}
          whole
          onValue={(count) => onAsk({ count })}
        />
      )}
    </>
  );
}

const metresPerYard = 0.9144;
/** A link holds weights to less than this, oz/yd2. */
const leastOunces = 0.001;
const centimetresPerInch = MM_PER_INCH / 10;

/** Cloth of one's own, typed in the reader's units. */
function OwnClothFields({ asked, said, onAsk }: ChooseProps) {
  const { unitSystem, messages } = useWords();
  const { units } = messages;
  const id = useId();
  const us = unitSystem === 'us';
  const { own } = asked;
  const fields = [
    { key: 'yards', label: said.ownYards, unit: us ? units.yards : units.metres, factor: us ? 1 : metresPerYard },
    {
      key: 'widthInches',
      label: said.ownWidth,
      unit: us ? units.inches : units.centimetres,
      factor: us ? 1 : centimetresPerInch,
    },
    {
      key: 'ouncesPerSquareYard',
      label: said.ownWeight,
      unit: us ? units.ouncesPerSquareYard : units.gramsPerSquareMetre,
      factor: us ? 1 : GSM_PER_OUNCE_PER_SQUARE_YARD,
    },
  ] as const;
  const named =
    clothNames.find((name) => Math.abs((clothOunces(name) ?? 0) - own.ouncesPerSquareYard) < leastOunces) ?? '';
  return (
    <>
      {fields.map(({ key, label, unit, factor }) => {
        const { low, high } = ownClothLimits[key];
        return (
          <TypedNumber
            key={`${key}/${unitSystem}`}
            label={fill(label, { unit: unit.sign })}
            value={own[key] * factor}
            limits={{ low: low * factor, high: high * factor, unit: unit.sign }}
            onValue={(value) => onAsk({ own: { ...own, [key]: value / factor } })}
          />
        );
      })}
      <div class="trace-field">
        <label class="control-label" for={id}>
          {said.ownCloth}
        </label>
        <select
          id={id}
          class="typed"
          value={named}
          onChange={(event) => {
            const ouncesPerSquareYard = clothOunces(event.currentTarget.value);
            if (ouncesPerSquareYard !== undefined) onAsk({ own: { ...own, ouncesPerSquareYard } });
          }}
        >
          <option value="">{said.typed}</option>
          {clothNames.map((name) => (
            <option key={name} value={name}>
              {said.cloths[name]}
            </option>
          ))}
        </select>
      </div>
    </>
  );
}
