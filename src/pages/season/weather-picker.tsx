import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { phrase } from '../../language/phrase.ts';
import { useWords } from '../../language/words.ts';
import { climateOf } from '../../model/field/climates.ts';
import type { Problem } from '../../model/problem.ts';
import type { ClimateId } from '../../model/scenario.ts';
import { FilePicker } from '../../ui/file-picker.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { ProblemList } from '../../ui/problem-list.tsx';
import type { OpenedWeather } from './season-session.ts';

export interface WeatherPickerProps {
  readonly weather: OpenedWeather | null;
  /** Where the farm lies: its latitude stands in for a record without one. */
  readonly climate: ClimateId;
  /** A record was opened, or put away with null. */
  readonly onWeather: (weather: OpenedWeather | null) => void;
}

/** Real weather from a file on this device, in place of the made-up year. */
export function WeatherPicker({ weather, climate, onWeather }: WeatherPickerProps) {
  const { messages } = useWords();
  const words = messages.problems.weather;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const read = async (text: string, name: string) => {
    // The reader is fetched with the first file: most visitors never open one.
    const { readWeatherRecord } = await import('../../model/field/read-weather-record.ts');
    const fallbackLatitudeDegrees = climateOf(climate).latitudeDegrees;
    const record = readWeatherRecord(text, { units: null, latitudeDegrees: null, fallbackLatitudeDegrees, year: null });
    if (!record.ok) return setProblems(record.problems);
    setProblems([]);
    onWeather({ name, year: record.value, notes: record.notes ?? [] });
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
          : fill(words.generated, { place: messages.climates[climate] })}
      </p>
      {weather && weather.notes.length > 0 ? (
        <ul class="caption" aria-label={words.notes}>
          {weather.notes.map((note) => (
            <li key={note}>{phrase(note, messages.problems.phrases)}</li>
          ))}
        </ul>
      ) : null}
      {weather ? <PatchButton onPress={() => onWeather(null)}>{words.clear}</PatchButton> : null}
      <ProblemList problems={problems} />
    </section>
  );
}
