import { useEffect, useState } from 'preact/hooks';
import { type Run, type TakenApart, whatMadeTheDifference } from '../../compare/what-made-the-difference.ts';
import { nextTask } from './use-seasons.ts';

interface Work {
  readonly result: TakenApart | null;
  readonly done: number;
  readonly of: number;
}
const notBegun: Work = { result: null, done: 0, of: 0 };

/**
 * Takes a difference apart, one season a task.
 * @param key changes when other runs are compared
 */
export function useTakenApart(key: string, before: Run, after: Run): Work {
  const [state, setState] = useState<Work & { readonly key: string }>({ ...notBegun, key: '' });
  useEffect(() => {
    let left = false;
    const work = async () => {
      const steps = whatMadeTheDifference(before, after);
      for (;;) {
        await nextTask();
        if (left) return;
        const { value, done } = steps.next();
        setState(done ? { key, result: value, done: 1, of: 1 } : { key, result: null, done: value.done, of: value.of });
        if (done) return;
      }
    };
    void work();
    return () => {
      left = true;
    };
  }, [key]);
  return state.key === key ? state : notBegun;
}
