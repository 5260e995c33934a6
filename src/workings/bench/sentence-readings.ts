import type { BenchYarn } from '../../model/bench/bench-yarn.ts';
import type { BenchOutcomeKey } from '../../model/bench/outcomes.ts';
import { benchOutcome } from '../../model/bench/outcomes.ts';
import type { PrintedGrades } from '../../model/bench/printed-grades.ts';
import type { FibreCard } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { colourOf } from '../../model/classing/colour.ts';
import { colourSteps, pimaColourSteps } from '../../model/classing/colour-chart-facts.ts';
import { stapleCode32nds } from '../../model/classing/staple.ts';
import { stapleChart } from '../../model/classing/staple-facts.ts';
import { feelFacts, needleTable } from '../../model/cloth/facts.ts';
import { count, exact, percent, procedure, read, step } from '../steps.ts';
import type { Step } from '../working.ts';
import { type BenchReading, chosen, onBench, reading } from './bench-reading.ts';
import { verdictSteps } from './yarn-readings.ts';

/** Decimals of a yarn number in a sentence. */
const ofCount = 10;

/** The count that is asked of a yarn, as its verdict says it. */
export const wantedCount = (bench: WorkedBench, yarn: BenchYarn): BenchReading =>
  reading(
    'countWanted',
    procedure(verdictSteps(bench, yarn), { as: 'yarnCount', value: Math.round(yarn.singleNe * ofCount) / ofCount }),
  );

/** The nearest count that can be spun. */
export const nearestCount = (bench: WorkedBench, yarn: BenchYarn): BenchReading =>
  reading(
    'nearest',
    procedure(verdictSteps(bench, yarn), { as: 'yarnCount', value: yarn.spinning.verdict.nearestFeasibleNe }),
  );

/** The codes that a card's readings come to: staple, color grade and the leaf grade as it was given. */
export function cardCodes({ kind, lengthIn, reflectanceRd, yellownessB, leaf }: FibreCard) {
  const { color, colorName } = colourOf(kind, reflectanceRd, yellownessB);
  const code = stapleCode32nds(kind, lengthIn);
  const graded = kind === 'pima' ? colorName : `${color} ${colorName}`;
  return {
    staple: reading(
      'stapleCode',
      procedure(
        [
          step('cardLength', exact(lengthIn, 'inches'), chosen),
          step('stapleRow', { as: 'text', text: `${code}/32` }, read(stapleChart[kind])),
        ],
        { as: 'text', text: `${code}/32` },
      ),
    ),
    color: reading(
      'color',
      procedure(
        [
          step('cardRd', exact(reflectanceRd), chosen),
          step('cardB', exact(yellownessB), chosen),
          step('colorChart', { as: 'text', text: color }, read(kind === 'pima' ? pimaColourSteps : colourSteps)),
        ],
        { as: 'text', text: graded },
      ),
    ),
    leaf: reading('leafGrade', procedure([step('leafTyped', exact(leaf), chosen)], count(leaf))),
  };
}

/** The grades that a card prints, as they were typed. */
export function printedCodes({ color, staple32nds }: PrintedGrades): Readonly<Record<string, BenchReading>> {
  const typed = (key: string, text: string) =>
    reading(key, procedure([step(key, { as: 'text', text }, chosen)], { as: 'text', text }));
  return {
    ...(color === null ? {} : { printedGrade: typed('printedColor', color) }),
    ...(staple32nds === null ? {} : { printedCode: typed('printedStaple', `${staple32nds}/32`) }),
  };
}

/** Thread numbers that go with a weight of cloth; null where the manuals say "fine" alone. */
export function threadNumbers({ cloth }: WorkedBench): readonly [from: BenchReading, to: BenchReading] | null {
  const { threadNumbers: numbers } = cloth.needle;
  const weight = step('clothWeight', exact(cloth.description.gramsPerSquareMetre, 'gramsPerSquareMetre'), onBench);
  const of = (key: string, number: number): BenchReading =>
    reading(key, procedure([weight, step('threadRow', exact(number), read(needleTable))], count(number)));
  return numbers ? [of('threadFrom', numbers[0]), of('threadTo', numbers[1])] : null;
}

/** Dots of the iron on a care label. */
export const ironDots = ({ cloth }: WorkedBench): BenchReading =>
  reading(
    'ironDots',
    procedure([step('ironDots', exact(cloth.ironDots), read(feelFacts.ironDots))], count(cloth.ironDots)),
  );

/** Bales that are blended. */
export const balesBlended = (bales: number): BenchReading =>
  reading('balesBlended', procedure([step('balesLaid', exact(bales), chosen)], count(bales)));

/** How far the second bench lies from the first, of a hundred. @param steps what each bench has, under its name */
export function shareBetween(
  key: BenchOutcomeKey,
  benches: readonly [WorkedBench, WorkedBench],
  steps: readonly Step[],
) {
  const [before, after] = benches.map((bench) => benchOutcome(key, bench) ?? Number.NaN);
  const ratio = after! / before!;
  return reading(
    'share',
    procedure([...steps, step('ratio', exact(ratio), { at: 'above' })], percent(100 * Math.abs(ratio - 1), 0)),
  );
}
