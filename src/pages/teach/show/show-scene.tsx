import { useEffect, useMemo, useState } from 'preact/hooks';
import { useWords } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { dayAt, stationSpan } from '../../../model/timeline.ts';
import type { PictureSize } from '../../season/pictures/picture.ts';
import { stationPictures } from '../../season/pictures/station-pictures.ts';
import { SceneView } from '../../season/scene-view.tsx';

export interface ShowSceneProps {
  readonly season: Season;
  readonly station: StationId;
}

/** A scene on the wall runs once through its station in this time, and then stands. */
const playSeconds = 12;
const tickMs = 100;
/** Heights of the wall at which a picture is laid out px for px: on a larger one its letters grow with the wall. */
const laidOutFor = 560;

/** The wall's height, or what stands for it on a wall that is taller than wide: as in show.css. */
const growth = (): number => Math.max(1, Math.min(window.innerHeight, 80 * (window.innerWidth / 100)) / laidOutFor);

/** The size at which a scene is laid out to fill the place around it once it has grown with the wall. */
function sizeIn(host: HTMLElement): PictureSize {
  const { clientWidth, clientHeight } = host.parentElement ?? host;
  return { width: Math.round(clientWidth / growth()), height: Math.round(clientHeight / growth()) };
}

const isStill = (): boolean => document.documentElement.dataset.motion === 'still';

/** What a station's picture shows, in sentences. */
const seenAtEnd = (season: Season, station: StationId, words: ReturnType<typeof useWords>): string => {
  const moment = { dayOfYear: stationSpan(season, station).toDay, progress: 1 };
  return stationPictures[station].see(season, words, moment).join(' ');
};

/** The scene of a station on the wall: it lives where things may move, and runs once through the station's work. */
export function ShowScene({ season, station }: ShowSceneProps) {
  const words = useWords();
  const span = useMemo(() => stationSpan(season, station), [season, station]);
  const still = isStill();
  const ticks = Math.min(span.steps, (playSeconds * 1000) / tickMs);
  const [tick, setTick] = useState(still ? ticks : 0);
  useEffect(() => {
    if (still) return;
    const timer = setInterval(() => setTick((before) => Math.min(ticks, before + 1)), (playSeconds * 1000) / ticks);
    return () => clearInterval(timer);
  }, [still, ticks]);
  const moment = useMemo(
    () => ({ dayOfYear: dayAt(span, Math.round((span.steps * tick) / ticks)), progress: tick / ticks }),
    [span, tick, ticks],
  );
  return (
    <div class="show-picture">
      <SceneView
        season={season}
        station={station}
        moment={moment}
        theme="projector"
        still={still}
        paused={tick === ticks}
        alt={seenAtEnd(season, station, words)}
        sizeIn={sizeIn}
      />
    </div>
  );
}
