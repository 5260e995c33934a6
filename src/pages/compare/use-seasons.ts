import { useEffect, useState } from 'preact/hooks';
import type { Season } from '../../model/season.ts';

/** Seasons that are being run, one task each, so that the page stays free between them. */
export interface RunningSeasons {
  /** Null until all have run. */
  readonly seasons: readonly Season[] | null;
  readonly done: number;
}

const none: RunningSeasons = { seasons: null, done: 0 };

/** Lets the page paint and answer before the next piece of work. */
export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/**
 * Runs seasons one after the other.
 * @param key changes when other seasons are wanted
 * @param runs read when the key changes
 */
export function useSeasons(key: string, runs: readonly (() => Season)[]): RunningSeasons {
  const [state, setState] = useState<RunningSeasons & { readonly of: string }>({ ...none, of: '' });
  useEffect(() => {
    let left = false;
    const work = async () => {
      const seasons: Season[] = [];
      for (const run of runs) {
        await nextTask();
        if (left) return;
        seasons.push(run());
        setState({ seasons: seasons.length === runs.length ? seasons : null, done: seasons.length, of: key });
      }
    };
    void work();
    return () => {
      left = true;
    };
  }, [key]);
  return state.of === key ? state : none;
}
