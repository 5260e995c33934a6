import { parseYarnNumber } from '../../model/mill/yarn-number.ts';
import { exact, procedure, read, step } from '../steps.ts';
import { type BenchReading, reading } from './bench-reading.ts';

const coats = {
  source:
    'Coats Bulletin 05, Thread Numbering: counts of fixed weight divide by the plies; GNU units: 840 yd to a hank, tex x Ne = 590.54',
  mark: 'published',
} as const;

/** What "50" may mean on a spool, and the yarn number that each reading stands for. */
const meanings = { single: '50Ne', two: '50/2Ne', three: '50/3Ne', metric: '50Nm' } as const;

/** The linear density of each meaning, tex. */
export const threadReadings = (): readonly BenchReading[] =>
  Object.entries(meanings).flatMap(([key, text]) => {
    const parsed = parseYarnNumber(text);
    if (!parsed.ok) return [];
    const { singleTex, singles, resultantTex } = parsed.value;
    return [
      reading(
        key,
        procedure(
          [step('yarnTexSingle', exact(singleTex, 'tex'), read(coats)), step('plies', exact(singles), read(coats))],
          { as: 'number', value: resultantTex, decimals: 1 },
        ),
      ),
    ];
  });
