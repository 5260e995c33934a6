import { useEffect, useState } from 'preact/hooks';
import type { CheckAnswer } from './check-rows.ts';

export interface CheckRun {
  readonly answers: ReadonlyMap<string, CheckAnswer>;
  /** The worker could not start, or broke. */
  readonly failed: boolean;
}

/** How often the page shows what has come, ms. */
const showEveryMs = 250;

/** Runs every check in a worker of its own; answers arrive a few times a second. */
export function useChecks(): CheckRun {
  const [run, setRun] = useState<CheckRun>({ answers: new Map(), failed: false });
  useEffect(() => {
    const answers = new Map<string, CheckAnswer>();
    let later: ReturnType<typeof setTimeout> | null = null;
    const show = () => {
      later = null;
      setRun({ answers: new Map(answers), failed: false });
    };
    let worker: Worker;
    try {
      worker = new Worker(new URL('./checks-worker.ts', import.meta.url), { type: 'module' });
    } catch {
      setRun({ answers, failed: true });
      return;
    }
    worker.onmessage = ({ data }: MessageEvent<CheckAnswer>) => {
      answers.set(data.id, data);
      later ??= setTimeout(show, showEveryMs);
    };
    worker.onerror = () => setRun({ answers: new Map(answers), failed: true });
    return () => {
      worker.terminate();
      if (later !== null) clearTimeout(later);
    };
  }, []);
  return run;
}
