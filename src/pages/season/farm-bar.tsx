import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { farmOf, farms } from '../../model/farms.ts';
import type { Scenario } from '../../model/scenario.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { farmWords } from '../farm/farm-words.ts';
import { ownFarm, ownFarms } from '../farm/shelf.ts';
import { hashOf } from '../route.ts';
import type { Session } from './season-session.ts';
import { WeatherPicker } from './weather-picker.tsx';

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
  const own = farmWords(language);
  const [link, setLink] = useState<'copied' | 'failed' | null>(null);
  const open = (chosen: Scenario, number: number) =>
    session.actor.send({ type: 'OPEN', scenario: chosen, seed: number });
  const choose = (id: string) => {
    const mine = ownFarm(id);
    if (mine?.weather) session.setWeather(mine.weather);
    open(mine?.scenario ?? farmOf(id) ?? scenario, seed);
  };
  const copy = () =>
    navigator.clipboard.writeText(location.href).then(
      () => setLink('copied'),
      () => setLink('failed'),
    );
  return (
    <section class="farm-bar" aria-label={navigation.farm}>
      <ChoiceRow
        label={navigation.farm}
        options={[...farms, ...ownFarms().map((own) => own.scenario)].map((farm) => ({
          value: farm.id,
          label: farm.name[language] || own.unnamed,
        }))}
        value={scenario.id}
        onChoose={choose}
      />
      <p>{scenario.story[language]}</p>
      <p class="caption">{farmOf(scenario.id) ? limits.inventedFarm : own.ownFarm}</p>
      <div class="farm-actions">
        <PatchButton onPress={() => open(scenario, (seed % largestSeed) + 1)}>
          {readings.reseed} ({seed})
        </PatchButton>
        <PatchButton onPress={copy}>{readings.link}</PatchButton>
        <PatchButton onPress={() => session.actor.send({ type: 'START_OVER' })}>{common.startOver}</PatchButton>
      </div>
      <p>
        <a href={hashOf({ page: 'farm', query: encodeRun(session.runOf(scenario, seed)) })}>{own.change}</a>
      </p>
      <p role="status" class="caption">
        {link === 'copied'
          ? session.weather()
            ? common.sharedWithoutWeather
            : common.shared
          : link === 'failed'
            ? `${common.shareFailed} ${location.href}`
            : ''}
      </p>
      <WeatherPicker weather={session.weather()} climate={scenario.climate} onWeather={session.setWeather} />
    </section>
  );
}
