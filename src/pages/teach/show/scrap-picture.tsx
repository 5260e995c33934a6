import { useMemo } from 'preact/hooks';
import { useWords } from '../../../language/words.ts';
import { startingSetUp } from '../../../model/bench/set-up.ts';
import { workBench } from '../../../model/bench/work-bench.ts';
import { benchFacts } from '../../../model/mill/bench-limit-facts.ts';
import { clothPiecePicture } from '../../../scene/bench/cloth-piece.ts';
import { usualPxPerMm } from '../../../scene/bench/true-scale.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import { drawnCloth } from '../../bench/part-pictures.tsx';

const drawnWide = 260;

/** The scrap in every hand, close up: quilting cotton as the bench weaves it. */
export function ScrapPicture() {
  const { messages, unitSystem } = useWords();
  const isMetric = unitSystem === 'metric';
  const { sign } = messages.units[isMetric ? 'centimetres' : 'inches'];
  const svg = useMemo(() => {
    const bench = workBench(startingSetUp('uplandMedium', 'quilting', benchFacts.usualNoilPercent.value));
    const scale = { pxPerMm: usualPxPerMm, isMetric, unit: sign };
    const picture = clothPiecePicture(drawnCloth(bench), drawnWide, scale);
    return paintSvg(picture.marks, { ...picture, theme: 'projector' });
  }, [isMetric, sign]);
  return <Picture class="show-drawn" svg={svg} alt="" />;
}
