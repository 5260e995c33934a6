import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { dayAt, stationSpan } from '../../model/timeline.ts';
import type { Theme } from '../preferences.ts';
import { SceneView } from '../season/scene-view.tsx';

export interface KioskSceneProps {
  readonly season: Season;
  readonly station: StationId;
  readonly theme: Theme;
  readonly still: boolean;
  readonly alt: string;
  /** Shares of the station's work between which it plays, over and over. */
  readonly from?: number;
  readonly to?: number;
}

/** A station's work takes this long, and rests at its end before it begins anew. */
const playSeconds = 12;
const restSeconds = 3;
const stepMs = 100;

/** Drawn for a page of this size and scaled up, so that its pieces are as large as its words. */
const pageShort = 540;
const pageLong = 1000;

/** The page that a place is laid out as. */
function pageIn({ clientWidth, clientHeight }: HTMLElement) {
  const scale = Math.max(
    Math.min(clientWidth, clientHeight) / pageShort,
    Math.max(clientWidth, clientHeight) / pageLong,
    1 / pageShort,
  );
  return { width: Math.round(clientWidth / scale), height: Math.round(clientHeight / scale) };
}

/** How far the work is, 0 to 1, from a clock that starts with the scene. */
function useProgress(still: boolean, from: number, to: number): number {
  const [step, setStep] = useState(0);
  useEffect(() => {
    if (still) return;
    const steps = ((playSeconds + restSeconds) * 1000) / stepMs;
    const timer = setInterval(() => setStep((last) => (last + 1) % steps), stepMs);
    return () => clearInterval(timer);
  }, [still]);
  const share = still ? 1 : Math.min(1, (step * stepMs) / (playSeconds * 1000));
  return from + (to - from) * share;
}

/** A station at work, filling its place, without a word in it. */
export function KioskScene({ season, station, theme, still, alt, from = 0, to = 1 }: KioskSceneProps) {
  const progress = useProgress(still, from, to);
  const moment = useMemo(() => {
    const span = stationSpan(season, station);
    return { dayOfYear: dayAt(span, Math.round(span.steps * progress)), progress };
  }, [season, station, progress]);
  return (
    <div class="kiosk-scene">
      <SceneView
        season={season}
        station={station}
        moment={moment}
        theme={theme}
        still={still}
        paused={false}
        alt={alt}
        sizeIn={pageIn}
        wordless
      />
    </div>
  );
}
