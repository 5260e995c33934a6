import { useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { quiltMarks } from '../../scene/quilt/quilt.ts';
import { encodeComparison, runQueries } from '../../statechart/saved-comparison.ts';
import { decodeRun } from '../../statechart/saved-run.ts';
import { Filled } from '../../ui/filled.tsx';
import { Picture } from '../../ui/picture.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { cardWords } from '../card/card-words.ts';
import { ChosenList } from '../card/chosen-list.tsx';
import type { Theme } from '../preferences.ts';
import { hashOf } from '../route.ts';
import { printed } from './printed.ts';
import { workingSource } from './working-source.ts';

const size = { width: 760, height: 560 };

export interface FinishedQuiltProps {
  readonly season: Season;
  readonly theme: Theme;
  /** The season's own link, for its card. */
  readonly query: string;
}

/** The reward and the poster: all twelve blocks sewn, and what one boll came to. */
export function FinishedQuilt({ season, theme, query }: FinishedQuiltProps) {
  const words = useWords();
  const { messages } = words;
  const { stations, navigation, cloth } = messages;
  const svg = useMemo(() => {
    const labels = Object.fromEntries(stationIds.map((id) => [id, stations[id].name])) as Record<StationId, string>;
    const box = { x: 4, y: 4, width: size.width - 12, height: size.height - 12 };
    return paintSvg(quiltMarks({ layout: 'landscape', box, stateOf: () => 'sewn', labels }), { ...size, theme });
  }, [stations, theme]);
  const said = cardWords(words.language);
  const compared = encodeComparison({ before: decodeRun(runQueries(query).after).run, after: decodeRun(query).run });
  const inches = season.sewing?.patchInchesPerBoll;
  const asked = { topic: 'reading', station: 'sewing', key: 'patch' } as const;
  const source = workingSource(season, words, asked, cloth.sewing.patch, 'finished/');
  return (
    <div class="finished-quilt">
      <Picture svg={svg} alt={navigation.finished} />
      {inches ? (
        <>
          <p>
            <Filled
              template={cloth.sewing.patchLine}
              parts={{
                size: (
                  <WorkingNumber text={printed({ as: 'length', value: inches, decimals: 2 }, words)} source={source} />
                ),
              }}
            />
          </p>
          <WorkingPlace sources={[source]} />
        </>
      ) : null}
      <ChosenList scenario={season.scenario} />
      <ul class="quilt-links">
        <li>
          <a href={hashOf({ page: 'card', query })}>{said.toCard}</a>
        </li>
        <li>
          <a href={hashOf({ page: 'trace', query: '' })}>{said.toTrace}</a>
        </li>
        <li>
          <a href={hashOf({ page: 'compare', query: compared })}>{said.toCompare}</a>
        </li>
      </ul>
    </div>
  );
}
