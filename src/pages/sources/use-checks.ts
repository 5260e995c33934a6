import { useEffect, useState } from 'preact/hooks';
import type { CheckAnswer } from './check-rows.ts';

export interface CheckRun {
  readonly answers: ReadonlyMap<string, CheckAnswer>;
  /** The worker could not start, or broke. */
  readonly failed: boolean;
}

/** Runs every check in a worker of its own; answers arrive a few times a second. */
export function useChecks(): CheckRun {
  const [run, setRun] = useState<CheckRun>({ answers: new Map(), failed: false });
  useEffect(() => {
    const answers = new Map<string, CheckAnswer>();
    let frame: number | null = null;
    const show = () => {
      frame = null;
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
      frame ??= requestAnimationFrame(show);
    };
    worker.onerror = () => setRun({ answers: new Map(answers), failed: true });
    return () => {
      worker.terminate();
      if (frame !== null) cancelAnimationFrame(frame);
    };
  }, []);
  return run;
}
