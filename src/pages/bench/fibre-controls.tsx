import { useWords } from '../../language/words.ts';
import { type FibreNumber, fibreLimits, limitsOf } from '../../model/bench/check-set-up.ts';
import { colourCodesOf, noGrades, stapleCodesOf } from '../../model/bench/printed-grades.ts';
import { type SetUp, withCotton } from '../../model/bench/set-up.ts';
import { type CottonName, cottons } from '../../model/mill/cotton-facts.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import type { BenchSide } from '../../statechart/saved-bench.ts';
import { benchWords } from './bench-words.ts';
import { CardReading } from './card-reading.tsx';
import { LayDown } from './lay-down.tsx';
import { NumberField } from './number-field.tsx';
import { RestsOn } from './rests-on.tsx';
import { optionsOf, SelectField } from './select-field.tsx';

export interface ControlsProps {
  readonly setUp: SetUp;
  readonly side: BenchSide;
  readonly onChange: (setUp: SetUp) => void;
}

const steps: Readonly<Record<FibreNumber, readonly [step: number, decimals: number]>> = {
  lengthIn: [0.01, 2],
  uniformityPercent: [0.5, 1],
  strengthGPerTex: [0.5, 1],
  micronaire: [0.1, 1],
  reflectanceRd: [0.5, 1],
  yellownessB: [0.1, 1],
  leaf: [1, 0],
  trashAreaPercent: [0.05, 2],
};
/** What is changed most stands in the open; the rest of the card lies folded. */
const open: readonly FibreNumber[] = ['lengthIn', 'micronaire'];

/** Chooses a cotton: by its kind, by sliders, by a class card typed in, or by bales laid together. */
export function FibreControls({ setUp, side, onChange }: ControlsProps) {
  const { language, unitSystem, messages } = useWords();
  const said = benchWords(language);
  const { card } = setUp;
  const field = (key: FibreNumber) => {
    const metric = unitSystem === 'metric' && key === 'lengthIn';
    const [step, decimals] = metric ? [0.5, 1] : steps[key];
    const unit = key === 'lengthIn' ? `, ${messages.units[metric ? 'millimetres' : 'inches'].sign}` : '';
    return (
      <NumberField
        key={key}
        label={said.card.fields[key] + unit}
        value={card[key]}
        limits={limitsOf(key, card.kind)}
        step={step}
        decimals={decimals}
        factor={metric ? MM_PER_INCH : 1}
        isWhole={key === 'leaf'}
        onChange={(value) => onChange({ ...setUp, bales: [], card: { ...card, [key]: value } })}
      />
    );
  };
  const { source, mark } = cottons[setUp.cotton];
  const asOptions = (codes: readonly string[]) => [
    { value: '', label: said.card.printed.none },
    ...codes.map((code) => ({ value: code, label: code })),
  ];
  return (
    <div class="bench-controls">
      <SelectField
        label={said.cotton}
        value={setUp.cotton}
        options={optionsOf<CottonName>(said.cottons)}
        onChoose={(cotton) => onChange(withCotton(setUp, cotton))}
      />
      <RestsOn source={source} mark={mark} />
      {open.map(field)}
      <details>
        <summary>{said.card.heading}</summary>
        <p class="caption">{said.card.help}</p>
        <SelectField
          label={said.card.kind}
          value={card.kind}
          options={optionsOf(said.card.kinds)}
          onChoose={(kind) =>
            onChange({
              ...setUp,
              bales: [],
              card: { ...card, kind, leaf: Math.min(card.leaf, limitsOf('leaf', kind).high) },
              printed: noGrades,
            })
          }
        />
        {(Object.keys(fibreLimits) as FibreNumber[]).filter((key) => !open.includes(key)).map(field)}
        <SelectField
          label={said.card.printed.color}
          value={setUp.printed.color ?? ''}
          options={asOptions(colourCodesOf(card.kind))}
          onChoose={(color) => onChange({ ...setUp, printed: { ...setUp.printed, color: color || null } })}
        />
        <SelectField
          label={said.card.printed.staple}
          value={String(setUp.printed.staple32nds ?? '')}
          options={asOptions(stapleCodesOf(card.kind).map(String))}
          onChoose={(code) =>
            onChange({ ...setUp, printed: { ...setUp.printed, staple32nds: code === '' ? null : Number(code) } })
          }
        />
        <CardReading card={card} printed={setUp.printed} side={side} />
      </details>
      <LayDown setUp={setUp} side={side} onChange={onChange} />
    </div>
  );
}
