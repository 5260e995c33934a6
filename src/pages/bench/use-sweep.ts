import { useEffect, useState } from 'preact/hooks';
import type { SetUp } from '../../model/bench/set-up.ts';
import { type SweepInput, type SweepPlace, sweepPlace, sweepSetUps } from '../../model/bench/sweep.ts';
import { nextTask } from '../compare/use-seasons.ts';

/** The places of both benches' curves. */
export interface Swept {
  readonly a: readonly SweepPlace[];
  readonly b: readonly SweepPlace[];
}

/** Works out both curves, one place a task, so that the page stays free; null until all are there. */
export function useSweep(a: SetUp, b: SetUp, input: SweepInput | null): Swept | null {
  const [swept, setSwept] = useState<(Swept & { readonly of: readonly unknown[] }) | null>(null);
  useEffect(() => {
    if (input === null) return;
    let left = false;
    const work = async () => {
      const sides: SweepPlace[][] = [];
      for (const setUp of [a, b]) {
        const places: SweepPlace[] = [];
        for (const one of sweepSetUps(setUp, input)) {
          await nextTask();
          if (left) return;
          places.push(sweepPlace(one, input));
        }
        sides.push(places);
      }
      setSwept({ a: sides[0]!, b: sides[1]!, of: [a, b, input] });
    };
    void work();
    return () => {
      left = true;
    };
  }, [a, b, input]);
  return swept && swept.of[0] === a && swept.of[1] === b && swept.of[2] === input ? swept : null;
}
