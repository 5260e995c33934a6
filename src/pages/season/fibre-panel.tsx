import { useMemo } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { type Fibre, readFibre } from '../../model/fibre.ts';
import { lengthArrayMm } from '../../model/length/statistics.ts';
import type { FibrePlace, Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { FibreCard, type FibreState } from '../../ui/fibre-card.tsx';
import type { Asked } from '../../workings/work-out.ts';
import { workingSource } from './working-source.ts';

/** Fibres laid out on the card; enough for the shape, few enough to see each. */
const fibresLaid = 118;

/** Where the fibre of a station is read, before and after it; none before there is a boll. */
const placesOf: Readonly<
  Partial<Record<StationId, { readonly before?: FibrePlace; readonly after: FibrePlace | 'gin' | 'mill' }>>
> = {
  boll: { after: 'boll' },
  harvest: { before: 'boll', after: 'harvest' },
  module: { before: 'harvest', after: 'harvest' },
  cleaning: { before: 'harvest', after: 'seedCottonCleaning' },
  ginning: { before: 'seedCottonCleaning', after: 'gin' },
  pressing: { after: 'gin' },
  classing: { after: 'gin' },
  spinning: { after: 'mill' },
  weaving: { after: 'mill' },
  sewing: { after: 'mill' },
};

/** The fibre of a place in the chain, or the last one before it that the season reached. */
function fibreAt(season: Season, place: FibrePlace | 'gin' | 'mill'): Fibre | null {
  const trail = season.fibreTrail;
  const milled = (after: FibrePlace) => after === 'card' || after === 'comber';
  const found =
    place === 'mill'
      ? trail.at(-1)
      : place === 'gin'
        ? trail.filter(({ after }) => !milled(after)).at(-1)
        : trail.find(({ after }) => after === place);
  return found?.fibre ?? null;
}

/** The fibre card of a station: its fibres laid out, with the state before as chalk. Absent when no crop came. */
export function FibrePanel({ season, station }: { readonly season: Season; readonly station: StationId }) {
  const words = useWords();
  const { messages } = words;
  const places = placesOf[station];
  const after = places ? fibreAt(season, places.after) : null;
  const before =
    station === 'spinning' ? fibreAt(season, 'gin') : places?.before ? fibreAt(season, places.before) : null;
  const laid = useMemo(() => (after ? lengthArrayMm(after.lengths, fibresLaid) : []), [after]);
  const laidBefore = useMemo(() => (before ? lengthArrayMm(before.lengths, fibresLaid) : null), [before]);
  if (!places || !after) return null;
  const thirties = season.scenario.era === 'thirties';
  const placeOf = (fibre: Fibre) => season.fibreTrail.map((each) => each.fibre).lastIndexOf(fibre);
  const source = (state: FibreState, name: string, ask: (index: number) => Asked) =>
    workingSource(season, words, ask(placeOf(state === 'before' && before ? before : after)), name, `${state}/`);
  const inBoll = places.after === 'boll';
  const note = inBoll ? messages.fibre.handGinned : thirties ? messages.fibre.instrumentToday : null;
  return (
    <FibreCard
      lengthsMm={laid}
      reading={readFibre(after)}
      {...(laidBefore && before ? { beforeMm: laidBefore, readingBefore: readFibre(before) } : {})}
      {...(note ? { note } : {})}
      workings={{
        reading: (key, state, name) => source(state, name, (index) => ({ topic: 'fibre', index, key })),
        array: (share, state, name) =>
          source(state, name, (index) => ({ topic: 'array', index, share, laid: fibresLaid })),
      }}
    />
  );
}
