import { useEffect, useRef, useState } from 'preact/hooks';
import type { DoubtInput, DoubtResult } from '../../doubt/doubt-season.ts';
import type { Season } from '../../model/season.ts';
import type { DoubtAnswer } from './doubt-worker.ts';

/** How far the doubts about a season have come. */
export type DoubtRun =
  | { readonly state: 'idle' | 'stopped' | 'broken' }
  | { readonly state: 'running'; readonly share: number }
  | { readonly state: 'done'; readonly result: DoubtResult };

/** Runs the doubts about a season in a worker, when asked. Another season ends the run and drops its result. */
export function useDoubt(season: Season) {
  const [run, setRun] = useState<DoubtRun>({ state: 'idle' });
  const worker = useRef<Worker | null>(null);
  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => {
    setRun({ state: 'idle' });
    return end;
  }, [season]);

  const start = (count: number) => {
    end();
    const broken = () => {
      end();
      setRun({ state: 'broken' });
    };
    try {
      worker.current = new Worker(new URL('./doubt-worker.ts', import.meta.url), { type: 'module' });
    } catch {
      broken();
      return;
    }
    worker.current.onerror = broken;
    worker.current.onmessage = ({ data }: MessageEvent<DoubtAnswer>) => {
      if (data.kind === 'progress') {
        setRun({ state: 'running', share: data.share });
        return;
      }
      end();
      setRun({ state: 'done', result: data.result });
    };
    const { scenario, seed, weather } = season;
    const record = weather.origin === 'record' ? weather : null;
    worker.current.postMessage({ scenario, seed, record, count } satisfies DoubtInput);
    setRun({ state: 'running', share: 0 });
  };
  const stop = () => {
    end();
    setRun({ state: 'stopped' });
  };
  return { run, start, stop };
}
