import { useId, useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { farmLimits } from '../../model/input-facts.ts';
import type { Problem } from '../../model/problem.ts';
import { climateIds, eras, type Scenario } from '../../model/scenario.ts';
import { inchesFromMillimetres } from '../../model/units.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { ProblemList } from '../../ui/problem-list.tsx';
import { RulerSlider } from '../../ui/ruler-slider.tsx';
import { WeatherPicker } from '../season/weather-picker.tsx';
import { farmWords } from './farm-words.ts';
import type { DraftHand } from './use-draft.ts';

const soilStepMm = 5;

/** Where and when the farm is: climate or a weather record, the time, the field and its soil. */
export function PlacePlan({
  hand,
  onEra,
}: {
  readonly hand: DraftHand;
  readonly onEra: (era: Scenario['era']) => void;
}) {
  const { messages, formats, language } = useWords();
  const words = farmWords(language);
  const { scenario, weather } = hand.draft;
  return (
    <div class="place-plan">
      <ChoiceRow
        label={words.climate}
        help={words.climateHelp}
        options={climateIds.map((id) => ({ value: id, label: messages.climates[id] }))}
        value={scenario.climate}
        onChoose={(climate) => hand.change((farm) => ({ ...farm, climate }))}
      />
      <WeatherPicker weather={weather} climate={scenario.climate} onWeather={hand.setWeather} />
      <ChoiceRow
        label={words.era}
        help={words.eraHelp}
        options={eras.map((id) => ({ value: id, label: messages.eras[id] }))}
        value={scenario.era}
        onChoose={onEra}
      />
      <AcresField
        key={scenario.id}
        acres={scenario.acres}
        onAcres={(acres) => hand.change((farm) => ({ ...farm, acres }))}
      />
      <RulerSlider
        label={words.soil}
        help={words.soilHelp}
        value={scenario.soilWaterMm}
        low={farmLimits.soilWaterMm.low}
        high={farmLimits.soilWaterMm.high}
        step={soilStepMm}
        quantityOf={(mm) => formats.rain(inchesFromMillimetres(mm))}
        onChange={(soilWaterMm) => hand.change((farm) => ({ ...farm, soilWaterMm }))}
      />
    </div>
  );
}

/** The field's size, typed: a ruler from a garden patch to thousands of acres would be all small marks. */
function AcresField({ acres, onAcres }: { readonly acres: number; readonly onAcres: (acres: number) => void }) {
  const { formats, language } = useWords();
  const words = farmWords(language);
  const id = useId();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const { low, high, unit } = farmLimits.acres;
  const read = (typed: string) => {
    const value = Number(typed);
    const isAllowed = typed.trim() !== '' && value >= low && value <= high;
    const problem: Problem = {
      field: words.acres,
      value: typed.trim() || 'nothing',
      rule: { kind: 'range', low, high, step: null, unit },
    };
    setProblems(isAllowed ? [] : [problem]);
    if (isAllowed && value !== acres) onAcres(value);
  };
  return (
    <div class="typed-field">
      <label class="control-label" for={id}>
        {words.acres}
      </label>
      <input
        id={id}
        class="typed"
        inputMode="decimal"
        autoComplete="off"
        defaultValue={String(acres)}
        aria-invalid={problems.length > 0 ? true : undefined}
        onInput={(event) => read(event.currentTarget.value)}
      />
      <span class="caption">{formats.area(acres).text}</span>
      <ProblemList problems={problems} untouched={words.untouched} />
    </div>
  );
}
