import { useWords } from '../../language/words.ts';
import { setUpLimits } from '../../model/bench/check-set-up.ts';
import { isKnit, listedCloth, withCloth, withStructure } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { MM_PER_INCH } from '../../model/units.ts';
import { benchWords } from './bench-words.ts';
import type { ControlsProps } from './fibre-controls.tsx';
import { NumberField } from './number-field.tsx';
import { RestsOn } from './rests-on.tsx';
import { optionsOf, SelectField } from './select-field.tsx';

const mmPerCm = 10;

/** Chooses a cloth by its name, or its weave, threads and finish one by one. */
export function ClothControls({ setUp, bench, onChange }: ControlsProps & { readonly bench: WorkedBench }) {
  const { language, unitSystem, messages } = useWords();
  const { cloth: said } = benchWords(language);
  const metric = unitSystem === 'metric';
  const knit = isKnit(setUp.structure);
  const { source, mark, note } = listedCloth(setUp.cloth);
  const threads = (key: 'endsPerInch' | 'picksPerInch', label: string) => (
    <NumberField
      label={`${label}, ${messages.units[metric ? 'threadsPerCentimetre' : 'threadsPerInch'].sign}`}
      value={setUp[key]}
      limits={setUpLimits[key]}
      step={1}
      decimals={metric ? 1 : 0}
      factor={metric ? mmPerCm / MM_PER_INCH : 1}
      onChange={(value) => onChange({ ...setUp, [key]: value })}
    />
  );
  const { description } = bench.cloth;
  const crimp = (key: 'warpCrimpPercent' | 'weftCrimpPercent', label: string) =>
    description.kind === 'woven' ? (
      <NumberField
        label={label}
        value={description.construction[key]}
        limits={setUpLimits[key]}
        step={0.5}
        decimals={1}
        onChange={(value) => onChange({ ...setUp, [key]: value })}
      />
    ) : null;
  return (
    <div class="bench-controls">
      <SelectField
        label={said.cloth}
        value={setUp.cloth}
        options={optionsOf(said.names)}
        onChoose={(cloth) => onChange(withCloth(setUp, cloth))}
      />
      <RestsOn {...(note ? { source, mark, note } : { source, mark })} />
      <SelectField
        label={said.finish}
        value={setUp.finish}
        options={optionsOf(said.finishes)}
        onChoose={(finish) => onChange({ ...setUp, finish })}
      />
      <p class="caption bench-finish">{said.finishDoes[setUp.finish]}</p>
      <details>
        <summary>{said.structure}</summary>
        <SelectField
          label={said.structure}
          value={setUp.structure}
          options={optionsOf(said.structures)}
          onChoose={(structure) => onChange(withStructure(setUp, structure, bench.warp.number.resultantTex))}
        />
        {knit ? (
          <NumberField
            label={said.loop}
            value={setUp.loopMm}
            limits={setUpLimits.loopMm}
            step={0.05}
            decimals={2}
            onChange={(loopMm) => onChange({ ...setUp, loopMm })}
          />
        ) : (
          <>
            {threads('endsPerInch', said.ends)}
            {threads('picksPerInch', said.picks)}
            {crimp('warpCrimpPercent', said.warpCrimp)}
            {crimp('weftCrimpPercent', said.weftCrimp)}
          </>
        )}
        <label class="bench-check">
          <input
            type="checkbox"
            checked={setUp.preshrunk}
            onChange={(event) => onChange({ ...setUp, preshrunk: event.currentTarget.checked })}
          />
          {said.preshrunk}
        </label>
      </details>
    </div>
  );
}
