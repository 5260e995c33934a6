import { useEffect, useState } from 'preact/hooks';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { predictions } from '../../predict/predictions.ts';

const key = 'seamfield.predict.1';

function keptOn(): boolean {
  try {
    return localStorage.getItem(key) === 'on';
  } catch {
    // Shut storage: off, as for anyone new.
    return false;
  }
}

function keepOn(on: boolean): void {
  try {
    if (on) localStorage.setItem(key, 'on');
    else localStorage.removeItem(key);
  } catch {
    // Nothing is lost but a choice at the next visit.
  }
}

/** Guesses of this visit by farm, year and station; null where the question was skipped. Gone with the tab. */
const guesses = new Map<string, number | null>();

export interface PredictOptions {
  readonly season: Season;
  readonly station: StationId;
  /** The link asked for the questions. */
  readonly linked: boolean;
  /** The season is over: nothing more is asked. */
  readonly over: boolean;
  /** Holds time at the station's start, and lets it run again. */
  readonly onHold: () => void;
  readonly onGo: () => void;
}

/** The question of a station: whether one is asked, what was guessed, and time that waits for it. */
export function usePredict({ season, station, linked, over, onHold, onGo }: PredictOptions) {
  const [on, setOn] = useState(() => linked || keptOn());
  const [, redraw] = useState(0);
  const place = `${season.scenario.id}/${season.seed}/${station}`;
  const known = guesses.get(place);
  const asking = on && !over && known === undefined && predictions[station].answer(season) !== null;
  useEffect(() => {
    if (asking) onHold();
  }, [asking, place]);
  const keep = (guess: number | null) => {
    guesses.set(place, guess);
    redraw((times) => times + 1);
    onGo();
  };
  return {
    on,
    asking,
    /** The guess to set beside the answer; null where there is none. */
    guess: on && !over ? (known ?? null) : null,
    answer: (guess: number) => keep(guess),
    skip: () => keep(null),
    turn(wanted: boolean) {
      setOn(wanted);
      keepOn(wanted);
      if (!wanted && asking) onGo();
    },
  };
}
