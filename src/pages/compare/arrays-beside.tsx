import { useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { type Fibre, readFibre } from '../../model/fibre.ts';
import { lengthArrayMm } from '../../model/length/statistics.ts';
import type { Season } from '../../model/season.ts';
import { ArrayTable } from '../../ui/array-table.tsx';
import { FibreArray } from '../../ui/fibre-array.tsx';
import type { FibreState } from '../../ui/fibre-card.tsx';
import { workingSource } from '../season/working-source.ts';
import { compareWords } from './compare-words.ts';
import { useSideNames } from './side-names.ts';

/** Fibres laid out on each pad; enough for the shape, few enough to see each. */
const fibresLaid = 118;

/** Where the fibre as it lies in the bale stands in the trail: behind the last machine of the gin; -1 where there is none. */
const placeOfBale = ({ fibreTrail }: Season): number =>
  fibreTrail.filter(({ after }) => after !== 'card' && after !== 'comber').length - 1;

const fibreOfBale = (season: Season): Fibre | null => season.fibreTrail[placeOfBale(season)]?.fibre ?? null;

export interface ArraysBesideProps {
  readonly before: Season;
  readonly after: Season;
}

/** The fibre of both seasons laid out, one pad above the other, on one ruler. */
export function ArraysBeside({ before, after }: ArraysBesideProps) {
  const words = useWords();
  const names = useSideNames();
  const said = compareWords(words.language);
  const arraySource = (share: number, state: FibreState, name: string) => {
    const season = state === 'before' ? before : after;
    const asked = { topic: 'array', index: placeOfBale(season), share, laid: fibresLaid } as const;
    return workingSource(season, words, asked, name, `${state}/`);
  };
  const pads = useMemo(
    () =>
      [before, after].map((season) => {
        const fibre = fibreOfBale(season);
        return fibre
          ? { lengthsMm: lengthArrayMm(fibre.lengths, fibresLaid), upperHalfMeanMm: readFibre(fibre).upperHalfMeanMm }
          : null;
      }),
    [before, after],
  );
  const rulerToMm = Math.max(...pads.map((pad) => pad?.lengthsMm[0] ?? 0));
  const [first, second] = pads;
  return (
    <section class="arrays-beside" aria-labelledby="arrays">
      <h2 id="arrays">{said.arrays.heading}</h2>
      <p class="caption">{said.arrays.caption}</p>
      {pads.map((pad, index) => {
        const which = index === 0 ? 'before' : 'after';
        return (
          <figure key={which} data-side={which}>
            <figcaption class="side-name" data-side={which}>
              {names[which]}
            </figcaption>
            {pad ? <FibreArray {...pad} rulerToMm={rulerToMm} /> : <p>{said.arrays.none}</p>}
          </figure>
        );
      })}
      {first && second ? (
        <ArrayTable lengthsMm={second.lengthsMm} beforeMm={first.lengthsMm} workings={{ array: arraySource }} />
      ) : null}
    </section>
  );
}
