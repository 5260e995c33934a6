import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { phrase } from '../../language/phrase.ts';
import { useWords } from '../../language/words.ts';
import { farmOf, farms } from '../../model/farms.ts';
import { climateOf } from '../../model/field/climates.ts';
import type { Problem } from '../../model/problem.ts';
import type { Scenario } from '../../model/scenario.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { FilePicker } from '../../ui/file-picker.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { ProblemList } from '../../ui/problem-list.tsx';
import type { Session } from './season-session.ts';

export interface FarmBarProps {
  readonly session: Session;
  readonly scenario: Scenario;
  readonly seed: number;
}

const largestSeed = 999_999;

/** Which farm, which season, and whose weather. */
export function FarmBar({ session, scenario, seed }: FarmBarProps) {
  const { messages, language } = useWords();
  const { readings, navigation, common, limits } = messages;
  const [link, setLink] = useState<'copied' | 'failed' | null>(null);
  const open = (chosen: Scenario, number: number) =>
    session.actor.send({ type: 'OPEN', scenario: chosen, seed: number });
  const copy = () =>
    navigator.clipboard.writeText(location.href).then(
      () => setLink('copied'),
      () => setLink('failed'),
    );
  return (
    <section class="farm-bar" aria-label={navigation.farm}>
      <ChoiceRow
        label={navigation.farm}
        options={farms.map((farm) => ({ value: farm.id, label: farm.name[language] }))}
        value={scenario.id}
        onChoose={(id) => open(farmOf(id) ?? scenario, seed)}
      />
      <p>{scenario.story[language]}</p>
      <p class="caption">{limits.inventedFarm}</p>
      <div class="farm-actions">
        <PatchButton onPress={() => open(scenario, (seed % largestSeed) + 1)}>
          {readings.reseed} ({seed})
        </PatchButton>
        <PatchButton onPress={copy}>{readings.link}</PatchButton>
        <PatchButton onPress={() => session.actor.send({ type: 'START_OVER' })}>{common.startOver}</PatchButton>
      </div>
      <p role="status" class="caption">
        {link === 'copied'
          ? session.weather()
            ? common.sharedWithoutWeather
            : common.shared
          : link === 'failed'
            ? `${common.shareFailed} ${location.href}`
            : ''}
      </p>
      <WeatherPicker session={session} scenario={scenario} />
    </section>
  );
}

/** Real weather from a file on this device, in place of the made-up year. */
function WeatherPicker({ session, scenario }: { readonly session: Session; readonly scenario: Scenario }) {
  const { messages } = useWords();
  const words = messages.problems.weather;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const weather = session.weather();
  const read = async (text: string, name: string) => {
    // The reader is fetched with the first file: most visitors never open one.
    const { readWeatherRecord } = await import('../../model/field/read-weather-record.ts');
    const fallbackLatitudeDegrees = climateOf(scenario.climate).latitudeDegrees;
    const record = readWeatherRecord(text, { units: null, latitudeDegrees: null, fallbackLatitudeDegrees, year: null });
    if (!record.ok) return setProblems(record.problems);
    setProblems([]);
    session.setWeather({ name, year: record.value, notes: record.notes ?? [] });
  };
  return (
    <section class="weather-picker" aria-label={words.heading}>
      <h3>{words.heading}</h3>
      <FilePicker
        label={words.choose}
        help={words.help}
        accept=".csv,text/csv"
        inUse={weather?.name ?? null}
        onText={read}
        onFail={(name) =>
          setProblems([{ field: name, value: words.heading, rule: { kind: 'type', expected: 'a daily record' } }])
        }
      />
      <p>
        {weather
          ? fill(words.used, { name: weather.name })
          : fill(words.generated, { place: messages.climates[scenario.climate] })}
      </p>
      {weather && weather.notes.length > 0 ? (
        <ul class="caption" aria-label={words.notes}>
          {weather.notes.map((note) => (
            <li key={note}>{phrase(note, messages.problems.phrases)}</li>
          ))}
        </ul>
      ) : null}
      {weather ? <PatchButton onPress={() => session.setWeather(null)}>{words.clear}</PatchButton> : null}
      <ProblemList problems={problems} />
    </section>
  );
}
