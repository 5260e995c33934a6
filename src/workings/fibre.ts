import { type FibreReading, readFibre } from '../model/fibre.ts';
import { micronaireFacts } from '../model/fibre-facts.ts';
import { readBeard } from '../model/length/beard.ts';
import { arrayFacts, beardFacts } from '../model/length/reading-facts.ts';
import { lengthArrayMm, meanLengthMm, shortFibrePercent, upperQuartileMm } from '../model/length/statistics.ts';
import type { Season } from '../model/season.ts';
import { above, constant, count, exact, formula, input, percent, procedure, read, step } from './steps.ts';
import type { Origin, Printed, Step, Working } from './working.ts';

export type FibreKey = keyof FibreReading;

const at: Origin = { at: 'fibre' };
const millimetres = (mm: number) => exact(mm, 'millimetres');

/** One reading at every place of the chain up to here. */
const trailSteps = (season: Season, index: number, write: (reading: FibreReading) => Printed): Step[] =>
  season.fibreTrail.slice(0, index + 1).map(({ after, fibre }) => step({ place: after }, write(readFibre(fibre)), at));

/**
 * The working of a reading of the fibre card.
 * @param index place in the season's fibre trail
 */
export function fibreWorking(season: Season, index: number, key: FibreKey): Working | null {
  const fibre = season.fibreTrail[index]?.fibre;
  if (!fibre) return null;
  const beard = readBeard(fibre.lengths);
  const beardConstants = [
    step('catchPower', exact(beardFacts.weightExponent.value), read(beardFacts.weightExponent)),
    step('instrumentScale', exact(beardFacts.lengthScale.value), read(beardFacts.lengthScale)),
    step('scanStart', millimetres(beardFacts.startMm.value), read(beardFacts.startMm)),
  ];
  switch (key) {
    case 'upperHalfMeanMm':
      return procedure(
        [
          ...trailSteps(season, index, ({ upperHalfMeanMm }) => millimetres(upperHalfMeanMm)),
          step('meanByNumber', millimetres(meanLengthMm(fibre.lengths, 'number')), at),
          step('upperQuartile', millimetres(upperQuartileMm(fibre.lengths)), at),
          ...beardConstants,
        ],
        { as: 'fibreLength', value: beard.upperHalfMeanMm },
      );
    case 'uniformityPercent':
      return procedure(
        [
          ...beardConstants,
          step('beardMean', millimetres(beard.meanMm), at),
          step('upperHalfMean', millimetres(beard.upperHalfMeanMm), at),
        ],
        percent((100 * beard.meanMm) / beard.upperHalfMeanMm),
      );
    case 'shortFibrePercentByWeight':
      return procedure(
        [
          step('shortBelow', millimetres(arrayFacts.shortBelowMm.value), read(arrayFacts.shortBelowMm)),
          ...trailSteps(season, index, (reading) => percent(reading.shortFibrePercentByWeight, 2)),
          step('shortByNumber', percent(shortFibrePercent(fibre.lengths, 'number')), at),
        ],
        percent(shortFibrePercent(fibre.lengths, 'weight')),
      );
    case 'strengthGPerTex':
      return procedure(
        trailSteps(season, index, ({ strengthGPerTex }) => exact(strengthGPerTex, 'gramsPerTex')),
        { as: 'strength', value: fibre.strengthGPerTex },
      );
    case 'micronaire': {
      const reading = readFibre(fibre).micronaire;
      return formula(
        'micronaire',
        [
          input('H', 'fibreFineness', exact(fibre.linearDensityMtex, 'millitex'), at),
          input('M', 'maturity', exact(fibre.maturityRatio), at),
          constant('a', 'lordSquare', micronaireFacts.square, 'none'),
          constant('b', 'lordSlope', micronaireFacts.slope, 'none'),
          constant('c', 'lordConstant', micronaireFacts.constant, 'none'),
        ],
        exact(reading),
        { as: 'micronaire', value: reading },
      );
    }
  }
}

/**
 * The working of one length of the laid-out array: the length that a share of the fibres exceeds.
 * @param index place in the season's fibre trail
 * @param share of the fibres, 0 to 1, longest first
 * @param laid how many fibres are laid out
 */
export function arrayWorking(season: Season, index: number, share: number, laid: number): Working | null {
  const fibre = season.fibreTrail[index]?.fibre;
  if (!fibre) return null;
  const place = Math.min(laid - 1, Math.floor(share * laid));
  const lengthMm = lengthArrayMm(fibre.lengths, laid)[place]!;
  return procedure(
    [
      step('fibresLaid', count(laid), { at: 'definition' }),
      step('placeInArray', count(place + 1), above),
      step('shareLonger', percent((100 * (place + 1 / 2)) / laid, 2), above),
      step('meanByNumber', millimetres(meanLengthMm(fibre.lengths, 'number')), at),
      step('lengthThere', millimetres(lengthMm), at),
    ],
    { as: 'fibreLength', value: lengthMm },
  );
}
