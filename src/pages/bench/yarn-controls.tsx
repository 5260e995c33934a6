import { useWords } from '../../language/words.ts';
import { setUpLimits } from '../../model/bench/check-set-up.ts';
import { isKnit } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { benchWords } from './bench-words.ts';
import type { ControlsProps } from './fibre-controls.tsx';
import { NumberField } from './number-field.tsx';
import { optionsOf, SelectField } from './select-field.tsx';
import { YarnField } from './yarn-field.tsx';

/** Chooses how the yarn is spun, how fine and how hard twisted. */
export function YarnControls({ setUp, bench, onChange }: ControlsProps & { readonly bench: WorkedBench }) {
  const { language } = useWords();
  const { yarn: said } = benchWords(language);
  const knit = isKnit(setUp.structure);
  return (
    <div class="bench-controls">
      <ChoiceRow
        label={said.system}
        options={optionsOf(said.systems)}
        value={setUp.system}
        onChoose={(system) => onChange({ ...setUp, system })}
      />
      <div class="bench-pair">
        <YarnField
          label={knit ? said.only : said.warp}
          value={setUp.warp}
          onChange={(warp) => onChange({ ...setUp, warp })}
        />
        {knit ? null : (
          <YarnField label={said.weft} value={setUp.weft} onChange={(weft) => onChange({ ...setUp, weft })} />
        )}
      </div>
      <details>
        <summary>{said.twist}</summary>
        <SelectField
          label={said.use}
          value={setUp.use}
          options={optionsOf(said.uses)}
          onChoose={(use) => onChange({ ...setUp, use })}
        />
        <label class="bench-check">
          <input
            type="checkbox"
            checked={setUp.twist !== null}
            onChange={(event) =>
              onChange({
                ...setUp,
                twist: event.currentTarget.checked ? Number(bench.warp.twistMultiplier.toFixed(2)) : null,
              })
            }
          />
          {said.ownTwist}
        </label>
        {setUp.twist === null ? null : (
          <NumberField
            label={said.twist}
            value={setUp.twist}
            limits={setUpLimits.twist}
            step={0.05}
            decimals={2}
            onChange={(twist) => onChange({ ...setUp, twist })}
          />
        )}
        {setUp.system === 'ringCombed' ? (
          <NumberField
            label={said.noil}
            value={setUp.noilPercent}
            limits={setUpLimits.noilPercent}
            step={1}
            decimals={0}
            onChange={(noilPercent) => onChange({ ...setUp, noilPercent })}
          />
        ) : null}
      </details>
    </div>
  );
}
