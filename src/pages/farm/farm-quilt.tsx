import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import { stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { quiltMarks } from '../../scene/quilt/quilt.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { unlikeLines } from './decided-lines.ts';
import { farmWords } from './farm-words.ts';

export interface FarmQuiltProps {
  readonly scenario: Scenario;
  readonly base: Scenario;
  readonly theme: Theme;
}

const size = { width: 420, height: 340 };

/** The farm's name over its quilt: a block is sewn where a station is unlike the farm it began as, and chalked elsewhere. */
export function FarmQuilt({ scenario, base, theme }: FarmQuiltProps) {
  const all = useWords();
  const { formats, language } = all;
  const words = farmWords(language);
  const farm = base.name[language];
  const unlike = stationIds.map((station) => unlikeLines(scenario, base, station, all).length);
  const count = unlike.reduce((sum, lines) => sum + lines, 0);
  const sewn = unlike.map((lines) => (lines > 0 ? '1' : '0')).join('');
  const svg = useMemo(
    () =>
      paintSvg(
        quiltMarks({
          layout: 'landscape',
          box: { x: 4, y: 4, width: size.width - 12, height: size.height - 12 },
          stateOf: (station) => (sewn[stationIds.indexOf(station)] === '1' ? 'sewn' : 'chalked'),
        }),
        { ...size, theme },
      ),
    [sewn, theme],
  );
  return (
    <div class="farm-quilt">
      <h2>{scenario.name[language] || words.unnamed}</h2>
      <Picture svg={svg} alt="" />
      <p class="caption">
        {count === 0 ? fill(words.sameAs, { farm }) : fill(formats.plural(count, words.unlike), { farm })}
      </p>
    </div>
  );
}
