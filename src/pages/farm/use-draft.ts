import { useRef, useState } from 'preact/hooks';
import { farmOf, farms } from '../../model/farms.ts';
import type { Scenario } from '../../model/scenario.ts';
import { nearestFarm } from '../../statechart/saved-run.ts';
import { openRun } from './open-run.ts';
import { newFarmId } from './read-farm-file.ts';
import { dropFarm, type Keeping, keepFarm, type OwnFarm, ownFarm, ownFarms } from './shelf.ts';

/** The farm being made, and the one of the six it is compared with. */
export interface Draft extends Omit<OwnFarm, 'base'> {
  readonly base: Scenario;
}

const copyOf = (farm: Scenario, weather: OwnFarm['weather'] = null): Draft => ({
  scenario: { ...farm, id: newFarmId() },
  weather,
  base: nearestFarm(farm),
});
const again = (own: OwnFarm): Draft => ({ ...own, base: farmOf(own.base) ?? nearestFarm(own.scenario) });

/** What an address opens: the farm of a link, or the one changed last, or a copy of the first of the six. */
function openAddress(query: string): { draft: Draft; seed: number } {
  if (query === '') {
    const last = ownFarms()[0];
    return { draft: last ? again(last) : copyOf(farms[0]!), seed: 1 };
  }
  const { run, weather } = openRun(query);
  const kept = ownFarm(run.scenario.id);
  const draft = kept ? { ...again(kept), scenario: run.scenario } : copyOf(run.scenario, weather);
  return { draft, seed: run.seed };
}

/** The farm being made: every change is kept at once, from the first on. */
export function useDraft(query: string) {
  const [opened] = useState(() => openAddress(query));
  const [draft, setDraft] = useState<Draft>(opened.draft);
  const [keeping, setKeeping] = useState<Keeping | null>(() => (ownFarm(opened.draft.scenario.id) ? 'device' : null));
  const [removed, setRemoved] = useState<OwnFarm | null>(null);
  // Two changes may come before the page is drawn again: each builds on the last one, not on what is drawn.
  const latest = useRef(draft);
  const show = (next: Draft) => {
    latest.current = next;
    setDraft(next);
  };
  const keep = (next: Draft) => {
    show(next);
    setKeeping(keepFarm({ ...next, base: next.base.id }));
  };
  return {
    draft,
    seed: opened.seed,
    keeping,
    removed,
    change: (next: (scenario: Scenario) => Scenario) =>
      keep({ ...latest.current, scenario: next(latest.current.scenario) }),
    setWeather: (weather: OwnFarm['weather']) => keep({ ...latest.current, weather }),
    /** A fresh copy of one of the six, kept with its first change. */
    begin(farm: Scenario) {
      show(copyOf(farm));
      setKeeping(null);
    },
    /** A farm from a file, kept at once. */
    add: (scenario: Scenario) => keep({ scenario, weather: null, base: nearestFarm(scenario) }),
    open(own: OwnFarm) {
      show(again(own));
      setKeeping('device');
    },
    keepNow: () => keep(latest.current),
    remove(own: OwnFarm) {
      setRemoved(own);
      dropFarm(own.scenario.id);
      if (own.scenario.id === draft.scenario.id) setKeeping(null);
    },
    putBack() {
      if (removed) setKeeping(keepFarm(removed));
      setRemoved(null);
    },
  };
}
export type DraftHand = ReturnType<typeof useDraft>;
