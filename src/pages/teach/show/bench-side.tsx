import { useMemo } from 'preact/hooks';
import type { BenchQuestionId } from '../../../compare/bench-questions.ts';
import { useWords } from '../../../language/words.ts';
import type { BenchOutcomeKey } from '../../../model/bench/outcomes.ts';
import type { WorkedBench } from '../../../model/bench/work-bench.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import { lengthArrayMm } from '../../../model/length/statistics.ts';
import { clothPiecePicture } from '../../../scene/bench/cloth-piece.ts';
import { fibresLaid, lengthArrayPicture } from '../../../scene/bench/length-array.ts';
import { type BenchPicture, type Scale, usualPxPerMm } from '../../../scene/bench/true-scale.ts';
import { yarnSectionPicture } from '../../../scene/bench/yarn-section.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import { allReadings, readingOfOutcome } from '../../../workings/bench/all-readings.ts';
import { readingName, readingText } from '../../bench/bench-source.ts';
import { benchWords } from '../../bench/bench-words.ts';
import { drawnCloth } from '../../bench/part-pictures.tsx';

/** What of a bench is drawn for a question, and the number below it. */
const shownFor: Readonly<Record<BenchQuestionId, readonly [draws: 'fibers' | 'yarn' | 'cloth', BenchOutcomeKey]>> = {
  pilling: ['fibers', 'fibreEnds'],
  lawn: ['cloth', 'fibresInSection'],
  thread: ['yarn', 'evenness'],
  flannel: ['cloth', 'shrinkLength'],
};

/** Width at which a picture of the bench is drawn before it grows with the wall, px. */
const drawnWide = 300;

function draw(bench: WorkedBench, draws: 'fibers' | 'yarn' | 'cloth', scale: Scale): BenchPicture {
  if (draws === 'cloth') return clothPiecePicture(drawnCloth(bench), drawnWide, scale);
  const { warp, fibre } = bench;
  if (draws === 'fibers')
    return lengthArrayPicture(lengthArrayMm(fibre.lengths, fibresLaid(drawnWide)), drawnWide, scale);
  const { number, spinning } = warp;
  return yarnSectionPicture(
    {
      fibresInSingle: spinning.verdict.fibresInSection,
      singles: number.singles,
      fibreMtex: fibre.linearDensityMtex,
      singleDiameterMm: yarnDiameterMm(number.singleTex),
    },
    drawnWide,
    scale,
  );
}

export interface BenchSideProps {
  readonly question: BenchQuestionId;
  readonly bench: WorkedBench;
}

/** One bench of a question on the wall: its cotton and cloth, a picture, and the number that decides. */
export function BenchSide({ question, bench }: BenchSideProps) {
  const words = useWords();
  const said = benchWords(words.language);
  const [draws, outcome] = shownFor[question];
  const isMetric = words.unitSystem === 'metric';
  const centimetresOrInches = words.messages.units[isMetric ? 'centimetres' : 'inches'];
  const picture = useMemo(
    () => draw(bench, draws, { pxPerMm: usualPxPerMm, isMetric, unit: centimetresOrInches.sign }),
    [bench, draws, isMetric, centimetresOrInches],
  );
  const reading = readingOfOutcome(outcome, allReadings(bench));
  const { setUp } = bench;
  const names = { fibers: said.cottons[setUp.cotton], yarn: setUp.warp, cloth: said.cloth.names[setUp.cloth] };
  return (
    <figure class="show-side">
      <figcaption>{names[draws]}</figcaption>
      <Picture class="show-drawn" svg={paintSvg(picture.marks, { ...picture, theme: 'projector' })} alt="" />
      {reading ? (
        <p>
          {readingName(reading, words, said)}: <b>{readingText(reading, words, said)}</b>
        </p>
      ) : null}
    </figure>
  );
}
