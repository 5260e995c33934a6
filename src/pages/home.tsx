import { useMemo } from 'preact/hooks';
import farm from '../../content/scenarios/coastal-plain.json' with { type: 'json' };
import { useWords } from '../language/words.ts';
import { stationIds } from '../model/station.ts';
import { paintSvg } from '../scene/paint-svg.ts';
import { blockMarks } from '../scene/quilt/block-marks.ts';
import { quiltMarks } from '../scene/quilt/quilt.ts';
import { furrowFeet, furrowScene } from '../scene/stations/plant/furrow.ts';
import { type DoorId, Doors } from '../ui/doors.tsx';
import { Picture } from '../ui/picture.tsx';
import type { Theme } from './preferences.ts';
import { hashOf } from './route.ts';

export interface HomeProps {
  readonly theme: Theme;
}

const doorPictures: Readonly<Record<DoorId, 'boll' | 'weaving' | 'sewing'>> = {
  season: 'boll',
  bench: 'weaving',
  teach: 'sewing',
};
const doorSize = 72;
const furrowSize = { width: 1366, height: 196 };

/** The first view: the one surprising fact, three doors, and the season as a quilt still to be sewn. */
export function Home({ theme }: HomeProps) {
  const { messages, formats } = useWords();
  const { navigation, stations } = messages;
  const quilt = useMemo(() => {
    const size = { width: 560, height: 452 };
    const names = Object.fromEntries(stationIds.map((id) => [id, stations[id].name])) as Record<
      (typeof stationIds)[number],
      string
    >;
    const marks = quiltMarks({
      layout: 'landscape',
      box: { x: 4, y: 4, width: size.width - 12, height: size.height - 12 },
      stateOf: () => 'sewn',
      labels: names,
    });
    return paintSvg(marks, { ...size, theme });
  }, [theme, stations]);
  const furrow = useMemo(() => {
    const marks = furrowScene({
      seedsPerFoot: farm.decisions.planting.seedsPerFoot,
      size: furrowSize,
      labels: {
        rowTicks: Array.from({ length: furrowFeet(furrowSize.width) + 1 }, (_, feet) =>
          // At either end a word would be cut off.
          feet === 0 || feet === furrowFeet(furrowSize.width)
            ? { feet }
            : { feet, text: formats.length(feet * 12).text },
        ),
      },
    });
    return paintSvg(marks, { ...furrowSize, theme });
  }, [theme, formats]);
  const pictures = useMemo(
    () =>
      Object.fromEntries(
        Object.entries(doorPictures).map(([door, station]) => [
          door,
          paintSvg(blockMarks(station, 'sewn', { x: 3, y: 3, width: doorSize - 6, height: doorSize - 6 }), {
            width: doorSize,
            height: doorSize,
            theme,
          }),
        ]),
      ),
    [theme],
  );
  const hrefOf = (door: DoorId) =>
    door === 'season' ? hashOf({ page: 'season', station: 'planting', query: '' }) : `#/${door}`;
  return (
    <main id="main" class="home" tabIndex={-1}>
      <Doors hrefOf={hrefOf} pictures={pictures} />
      <Picture svg={quilt} alt={navigation.quilt.label} class="home-quilt" />
      <Picture svg={furrow} alt={stations.planting.name} class="home-furrow" />
    </main>
  );
}
