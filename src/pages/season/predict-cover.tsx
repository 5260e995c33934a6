import { useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { StationId } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { blockMarks } from '../../scene/quilt/block-marks.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { predictWords } from './predict-words.ts';

/** Pictures that say their station's answer before any work is done. */
export const tellingPictures: readonly StationId[] = ['cleaning', 'pressing', 'classing', 'spinning', 'sewing'];

const blockPx = 260;

/** Said where the numbers of a station will stand once the guess is made. */
export const PredictCovered = () => <p class="caption">{predictWords(useWords().language).covered}</p>;

/** A cloth over the picture, with the station's quilt block pinned to it, until the guess is made. */
export function PredictCover({ station, theme }: { readonly station: StationId; readonly theme: Theme }) {
  const said = predictWords(useWords().language);
  const svg = useMemo(
    () =>
      paintSvg(blockMarks(station, 'pinned', { x: 10, y: 10, width: blockPx - 20, height: blockPx - 20 }), {
        width: blockPx,
        height: blockPx,
        theme,
      }),
    [station, theme],
  );
  return (
    <div class="predict-cover patch" data-ink="indigo">
      <Picture svg={svg} alt="" />
      <p>{said.coveredPicture}</p>
    </div>
  );
}
