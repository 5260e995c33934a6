import type { WorkedBench } from '../../model/bench/work-bench.ts';
import type { JerseyDescription } from '../../model/cloth/describe-jersey.ts';
import { jerseyFacts } from '../../model/cloth/facts.ts';
import { interlockFacts } from '../../model/cloth/interlock-facts.ts';
import { above, exact, procedure, read, step } from '../steps.ts';
import { type BenchReading, chosen, reading } from './bench-reading.ts';

/** What the rows and columns of a knit are worked out with. */
function loopSteps(knit: JerseyDescription, { setUp, warp }: WorkedBench) {
  const { courses, wales } =
    setUp.structure === 'interlock'
      ? interlockFacts
      : knit.state === 'dry'
        ? { courses: jerseyFacts.coursesDry, wales: jerseyFacts.walesDry }
        : { courses: jerseyFacts.coursesWet, wales: jerseyFacts.walesWet };
  return [
    step('coursesConstant', exact(courses.value), read(courses)),
    step('walesConstant', exact(wales.value), read(wales)),
    step('loopLength', exact(knit.loopLengthMm, 'millimetres'), chosen),
    step('yarnTex', exact(warp.number.resultantTex, 'tex'), chosen),
    ...(setUp.structure === 'interlock'
      ? [step('faces', exact(interlockFacts.faces.value), read(interlockFacts.faces))]
      : []),
    step('loopsPerCm2', exact(knit.loopsPerSquareCm), above),
  ];
}

/** The figures of a knit. */
export function knitReadings(knit: JerseyDescription, bench: WorkedBench): BenchReading[] {
  const steps = loopSteps(knit, bench);
  return [
    reading('weight', procedure(steps, { as: 'clothWeight', value: knit.gramsPerSquareMetre })),
    reading('courses', procedure(steps, { as: 'threads', value: knit.coursesPerInch })),
    reading('wales', procedure(steps, { as: 'threads', value: knit.walesPerInch })),
    reading('tightness', procedure(steps, { as: 'number', value: knit.tightness, decimals: 1 })),
  ];
}
