import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { type BlockState, blockMarks } from '../../scene/quilt/block-marks.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';

const blockPx = 56;

export interface QuiltMapProps {
  readonly station: StationId;
  readonly sewn: number;
  readonly theme: Theme;
  readonly onGo: (station: StationId) => void;
}

const stateOf = (index: number, here: number, sewn: number): BlockState =>
  index === here ? 'pinned' : index < sewn ? 'sewn' : 'chalked';

/** The season's map: twelve blocks, sewn, pinned or chalked. A block that can be reached is a button. */
export function QuiltMap({ station, sewn, theme, onGo }: QuiltMapProps) {
  const { messages } = useWords();
  const { quilt } = messages.navigation;
  const here = stationIds.indexOf(station);
  return (
    <nav class="quilt-map" aria-label={quilt.label}>
      <ol>
        {stationIds.map((id, index) => {
          const state = stateOf(index, here, sewn);
          const name = messages.stations[id].name;
          const says = state === 'sewn' ? quilt.sewn : state === 'pinned' ? quilt.basted : quilt.chalked;
          return (
            <li key={id}>
              <button
                type="button"
                aria-current={index === here ? 'step' : undefined}
                aria-disabled={index > sewn ? true : undefined}
                aria-label={fill(says, { name })}
                title={name}
                onClick={() => {
                  if (index <= sewn) onGo(id);
                }}
              >
                <Block station={id} state={state} theme={theme} />
                <span class="quilt-name" aria-hidden="true">
                  {name}
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

function Block({ station, state, theme }: { station: StationId; state: BlockState; theme: Theme }) {
  const svg = useMemo(
    () =>
      paintSvg(blockMarks(station, state, { x: 3, y: 3, width: blockPx - 6, height: blockPx - 6 }), {
        width: blockPx,
        height: blockPx,
        theme,
      }),
    [station, state, theme],
  );
  return <Picture svg={svg} alt="" />;
}
