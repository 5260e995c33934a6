import type { WorkedBench } from '../../model/bench/work-bench.ts';
import type { ClothDescription } from '../../model/cloth/describe-cloth.ts';
import { ashenhurstSideBySide } from '../../model/cloth/diameter.ts';
import { feelFacts, geometryFacts, needleTable, tariffFacts } from '../../model/cloth/facts.ts';
import { stripFacts, washTable } from '../../model/cloth/wash-facts.ts';
import { weaveTable } from '../../model/cloth/weave-facts.ts';
import { weaveOf } from '../../model/cloth/weaves.ts';
import { fahrenheitFromCelsius } from '../../model/units.ts';
import { coverWorking, drapeWorking, fuzzWorking, wovenWeight } from '../of-cloth.ts';
import { above, constant, count, exact, formula, input, percent, procedure, read, step } from '../steps.ts';
import type { Working } from '../working.ts';
import { type BenchReading, type BenchReadings, chosen, onBench, reading } from './bench-reading.ts';
import { knitReadings } from './knit-readings.ts';

function fullestSett(cloth: ClothDescription): Working {
  const { weave, warpTex, weftTex } = cloth.construction;
  const { repeat, intersections } = weaveOf(weave);
  return procedure(
    [
      step('warpSideBySide', exact(ashenhurstSideBySide(warpTex), 'perInch'), read(geometryFacts.ashenhurstThreads)),
      step('weftSideBySide', exact(ashenhurstSideBySide(weftTex), 'perInch'), read(geometryFacts.ashenhurstThreads)),
      step('weaveRepeat', exact(repeat), read(weaveTable)),
      step('weaveChanges', exact(intersections), read(weaveTable)),
    ],
    { as: 'threads', value: cloth.maximumSettPerInch },
  );
}

function customs(cloth: ClothDescription): Working {
  return procedure(
    [
      step('clothWeight', exact(cloth.gramsPerSquareMetre, 'gramsPerSquareMetre'), onBench),
      step('lightCloth', exact(tariffFacts.lightGsm.value, 'gramsPerSquareMetre'), read(tariffFacts.lightGsm)),
      step('singlesPerCm2', exact(cloth.singlesPerSquareCm), onBench),
      step('averageNumber', exact(cloth.averageYarnNumber), onBench),
    ],
    { as: 'text', text: cloth.tariffClass },
  );
}

const threads = (key: string, cloth: ClothDescription, from: typeof chosen): BenchReading => {
  const { endsPerInch, picksPerInch } = cloth.construction;
  const washed = from === onBench;
  return reading(
    key,
    formula(
      'threadCount',
      [
        input('e', washed ? 'endsWashed' : 'ends', exact(endsPerInch, 'threadsPerInch'), from),
        input('p', washed ? 'picksWashed' : 'picks', exact(picksPerInch, 'threadsPerInch'), from),
      ],
      exact(cloth.threadCount, 'threadsPerInch'),
      count(cloth.threadCount),
    ),
  );
};

function wovenReadings({ cloth, warp, setUp }: WorkedBench, woven: ClothDescription): BenchReading[] {
  const { construction } = woven;
  const strip = (newtons: number): Working =>
    formula(
      'stripStrength',
      [
        input('e', 'ends', exact(setUp.endsPerInch, 'threadsPerInch'), chosen),
        constant('b', 'stripWidth', stripFacts.widthMm, 'millimetres'),
        input('T', 'warpTex', exact(warp.number.resultantTex, 'tex'), chosen),
        input('z', 'yarnStrength', exact(warp.spinning.yarn?.tenacityCnPerTex ?? 0, 'centinewtonsPerTex'), onBench),
        constant('r', 'threadsTogether', stripFacts.threadsTogether, 'none'),
      ],
      exact(newtons, 'newtons'),
      count(newtons),
    );
  return [
    reading('weight', wovenWeight(woven, chosen)),
    threads('threadCount', woven, chosen),
    reading('cover', coverWorking(woven, onBench)),
    reading('fullestSett', fullestSett(woven)),
    reading(
      'crimp',
      procedure(
        [
          step('warpCrimp', percent(construction.warpCrimpPercent), read(geometryFacts.warpCrimpPercent)),
          step('weftCrimp', percent(construction.weftCrimpPercent), read(geometryFacts.weftCrimpPercent)),
        ],
        { as: 'both', length: construction.warpCrimpPercent, width: construction.weftCrimpPercent },
      ),
      geometryFacts.weftCrimpPercent,
    ),
    reading(
      'thickness',
      procedure(
        [
          step('warpThick', exact(woven.warpDiameterMm, 'millimetres'), onBench),
          step('weftThick', exact(woven.weftDiameterMm, 'millimetres'), onBench),
          step('waveFactor', exact(geometryFacts.waveHeight.value), read(geometryFacts.waveHeight)),
        ],
        { as: 'number', value: woven.thicknessMm, decimals: 2 },
      ),
    ),
    reading('customs', customs(woven)),
    ...(cloth.warpNewtons === null ? [] : [reading('strip', strip(cloth.warpNewtons), stripFacts.threadsTogether)]),
  ];
}

function washReadings({ cloth }: WorkedBench): BenchReading[] {
  const { shrinkPercent, description, washed } = cloth;
  const steps = [
    step('washLength', percent(shrinkPercent.length), read(washTable)),
    step('washWidth', percent(shrinkPercent.width), read(washTable)),
  ];
  return [
    reading('shrink', procedure(steps, { as: 'both', ...shrinkPercent }), washTable),
    reading(
      'washedWeight',
      formula(
        'washedWeight',
        [
          input('W', 'clothWeight', exact(description.gramsPerSquareMetre, 'gramsPerSquareMetre'), onBench),
          input('l', 'washLength', exact(shrinkPercent.length, 'percent'), read(washTable)),
          input('w', 'washWidth', exact(shrinkPercent.width, 'percent'), read(washTable)),
        ],
        exact(washed.gramsPerSquareMetre, 'gramsPerSquareMetre'),
        { as: 'clothWeight', value: washed.gramsPerSquareMetre },
      ),
      washTable,
    ),
    ...(washed.kind === 'woven'
      ? [
          threads('washedThreads', washed, onBench),
          reading(
            'washedCrimp',
            procedure(steps, {
              as: 'both',
              length: washed.construction.warpCrimpPercent,
              width: washed.construction.weftCrimpPercent,
            }),
            washTable,
          ),
        ]
      : []),
  ];
}

function useReadings(bench: WorkedBench): BenchReading[] {
  const { cloth, warp, lintGramsPerYard, spindleMinutesPerYard } = bench;
  const { description, needle, drape } = cloth;
  const grams = exact(description.gramsPerSquareMetre, 'gramsPerSquareMetre');
  const woven = description.kind === 'woven' ? description : null;
  const { yarn } = warp.spinning;
  return [
    reading(
      'drape',
      drapeWorking(drape, description.gramsPerSquareMetre, woven?.coverFraction ?? null, onBench),
      feelFacts.pressRise,
    ),
    reading(
      'bendingLength',
      procedure(
        [
          step('bendingFloor', exact(drape.floorMm, 'millimetres'), onBench),
          step('pressRise', exact(feelFacts.pressRise.value), read(feelFacts.pressRise)),
          step('pressPower', exact(feelFacts.pressPower.value), read(feelFacts.pressPower)),
        ],
        { as: 'number', value: drape.bendingLengthMm, decimals: 1 },
      ),
      feelFacts.pressRise,
    ),
    ...(cloth.fuzz !== null && yarn && warp.fibreEndsPerCm !== null
      ? [
          reading(
            'fuzz',
            fuzzWorking(warp.fibreEndsPerCm, yarn.shortFibrePercentByWeight, cloth.fuzz, {
              yarn: onBench,
              fibre: onBench,
            }),
            feelFacts.fuzzEndsPerCm,
          ),
        ]
      : []),
    reading(
      'needle',
      procedure([step('clothWeight', grams, read(needleTable))], { as: 'text', text: needle.needles.join(' – ') }),
    ),
    reading(
      'iron',
      procedure([step('ironDots', exact(cloth.ironDots), read(feelFacts.ironDots))], {
        as: 'temperature',
        value: fahrenheitFromCelsius(cloth.ironCelsius),
      }),
    ),
    ...(lintGramsPerYard === null || warp.spinning.yarnRealisation === null
      ? []
      : [
          reading(
            'lintPerYard',
            procedure(
              [
                step('clothWeight', grams, onBench),
                step('clothWidth', exact(cloth.widthInches, 'inches'), read(geometryFacts.clothWidthInches)),
                step('yardWeight', exact(cloth.gramsPerRunningYard, 'grams'), above),
                step('yarnOfLint', percent(100 * warp.spinning.yarnRealisation), onBench),
              ],
              { as: 'smallMass', value: lintGramsPerYard },
            ),
          ),
        ]),
    ...(spindleMinutesPerYard === null || warp.spindleMinutesPerKilometre === null
      ? []
      : [
          reading(
            'spindleTime',
            procedure(
              [
                step('warpLength', exact(cloth.yarnKilometres.warp), onBench),
                step('weftLength', exact(cloth.yarnKilometres.weft), onBench),
                step('clothWidth', exact(cloth.widthInches, 'inches'), read(geometryFacts.clothWidthInches)),
                step('warpMinutes', exact(warp.spindleMinutesPerKilometre, 'minutes'), onBench),
              ],
              { as: 'number', value: spindleMinutesPerYard, decimals: 0 },
            ),
          ),
        ]),
  ];
}

/** The figures of a bench's cloth: what it is, what a wash does to it, how it is sewn. */
export const clothReadings: BenchReadings = (bench) => {
  const { description } = bench.cloth;
  return [
    ...(description.kind === 'woven' ? wovenReadings(bench, description) : knitReadings(description, bench)),
    ...washReadings(bench),
    ...useReadings(bench),
  ];
};
