import type { BenchOutcomeKey } from '../../model/bench/outcomes.ts';
import { isKnit } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import type { BenchReading } from './bench-reading.ts';
import { clothReadings } from './cloth-readings.ts';
import { fibreReadings } from './fibre-readings.ts';
import { yarnReadings } from './yarn-readings.ts';

/** Every figure of a bench, part by part. The weft stands apart where it is another yarn than the warp. */
export interface AllReadings {
  readonly fibre: readonly BenchReading[];
  readonly yarn: readonly BenchReading[];
  readonly weft: readonly BenchReading[];
  readonly cloth: readonly BenchReading[];
}

export function allReadings(bench: WorkedBench): AllReadings {
  const {
    warp,
    weft,
    weft: { number },
    setUp,
  } = bench;
  const other = !isKnit(setUp.structure) && (number.resultantTex !== warp.number.resultantTex || weft.use !== warp.use);
  return {
    fibre: fibreReadings(bench),
    yarn: yarnReadings(bench, warp, false),
    weft: other ? yarnReadings(bench, weft, true).filter(({ key }) => !key.startsWith('waste.')) : [],
    cloth: clothReadings(bench),
  };
}

/** Which figure prints an outcome by which benches are compared. */
const readingOf: Readonly<Record<BenchOutcomeKey, readonly [part: keyof AllReadings, key: string]>> = {
  shortFibre: ['fibre', 'shortFibre'],
  fibresInSection: ['yarn', 'fibresInSection'],
  finestNe: ['yarn', 'comfortable'],
  turns: ['yarn', 'turns'],
  evenness: ['yarn', 'evenness'],
  tenacity: ['yarn', 'tenacity'],
  fibreEnds: ['yarn', 'fibreEnds'],
  realisation: ['yarn', 'realisation'],
  weight: ['cloth', 'weight'],
  threadCount: ['cloth', 'threadCount'],
  cover: ['cloth', 'cover'],
  thickness: ['cloth', 'thickness'],
  bendingLength: ['cloth', 'bendingLength'],
  strip: ['cloth', 'strip'],
  shrinkLength: ['cloth', 'shrink'],
  lintPerYard: ['cloth', 'lintPerYard'],
  spindleTime: ['cloth', 'spindleTime'],
};

/** The figure that prints an outcome; undefined where a bench has none. */
export function readingOfOutcome(key: BenchOutcomeKey, readings: AllReadings): BenchReading | undefined {
  const [part, name] = readingOf[key];
  return readings[part].find((reading) => reading.key === name);
}
