import { heatedHumidity, lintRegain, saturationKPa, wetBasisFromRegain } from '../model/gin/air.ts';
import { dryingMoisture, dryingRatePerSecond } from '../model/gin/dryer.ts';
import { waterToAdd } from '../model/gin/moisten.ts';
import { celsiusFromFahrenheit, KILO } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, near, nearShare } from './expected.ts';

const ashrae = 'ASHRAE Handbook Fundamentals 2017, through PsychroLib 1.1.1';

/** Saturation pressure at a temperature, as PsychroLib answers it, Pa; the Magnus form in the model runs high near boiling. */
const saturation: readonly (readonly [celsius: number, pascal: number, share: number])[] = [
  [5, 872.4866542640298, 0.005],
  [20, 2338.8037000739814, 0.005],
  [40, 7383.46000898612, 0.005],
  [60, 19943.76062162073, 0.01],
  [80, 47411.61146313797, 0.015],
  [100, 101418.71682799236, 0.03],
];

/** Outside air, how hot it is made, the vapour pressure in it (Pa) and the humidity PsychroLib gives for the hot air. */
const heated: readonly (readonly [outsideF: number, humidity: number, airF: number, pascal: number, after: number])[] =
  [
    [70, 0.6, 100, 1502.824938325072, 0.22936332633369633],
    [70, 0.6, 125, 1502.824938325072, 0.11208226938596032],
    [70, 0.6, 180, 1502.824938325072, 0.02898826591558625],
    [50, 0.8, 110, 982.3962203526237, 0.11162681578363233],
    [85, 0.5, 140, 2056.2400483216193, 0.10310192181571216],
  ];

/** Lint regain by humidity, %, American cloth. */
const regains: readonly (readonly [humidityPercent: number, regainPercent: number])[] = [
  [20, 3.7],
  [40, 5.2],
  [60, 6.8],
  [80, 10],
];

export const ginAirChecks: readonly Check[] = [
  ...saturation.map(
    ([celsius, pascal, share]): Check => ({
      id: `gin/saturation-${celsius}C`,
      link: 'gin',
      kind: 'notTuned',
      what: `saturation pressure of water vapor at ${celsius} °C, within ${100 * share} %`,
      source: ashrae,
      unit: 'Pa',
      expected: nearShare(pascal, share),
      tool: { name: 'psychrolib', call: 'GetSatVapPres', args: [celsius] },
      ours: () => KILO * saturationKPa(celsius),
    }),
  ),
  ...heated.map(
    ([outsideF, humidity, airF, pascal, after]): Check => ({
      id: `gin/heated-air-${outsideF}F-${airF}F`,
      link: 'gin',
      kind: 'notTuned',
      what: `humidity of air of ${outsideF} °F and ${100 * humidity} % when heated to ${airF} °F, within 3 % of it`,
      source: ashrae,
      unit: 'fraction',
      expected: nearShare(after, 0.03),
      tool: { name: 'psychrolib', call: 'GetRelHumFromVapPres', args: [celsiusFromFahrenheit(airF), pascal] },
      ours: () => heatedHumidity(outsideF, humidity, airF),
    }),
  ),
  ...regains.map(
    ([humidity, regain]): Check => ({
      id: `gin/regain-${humidity}`,
      link: 'gin',
      kind: 'calibrated',
      what: `regain of lint at ${humidity} % humidity`,
      source: 'ASHRAE industrial table, American cloth, from memory',
      unit: '%',
      expected: near(regain, 0.35),
      ours: () => 100 * lintRegain(humidity / 100),
    }),
  ),
  {
    id: 'G22',
    link: 'gin',
    kind: 'notTuned',
    what: 'water that brings 500 lb of lint from 4.3 to 5.5 %: about 6 lb',
    source: 'USDA-ARS Stoneville 161267',
    unit: 'lb',
    expected: near(6, 1),
    ours: () => waterToAdd(500, 4.3, 5.5),
  },
  {
    id: 'G22b',
    link: 'gin',
    kind: 'notTuned',
    what: 'water that brings 500 lb of lint from 5.1 to 6.2 %: about 5 lb',
    source: 'USDA-ARS Stoneville 146242',
    unit: 'lb',
    expected: near(5, 1),
    ours: () => waterToAdd(500, 5.1, 6.2),
  },
  {
    id: 'G24',
    link: 'gin',
    kind: 'definition',
    what: 'regain 8.5 % as moisture on the wet basis',
    source: 'ASTM D1909-13, commercial regain of cotton',
    unit: '% wet basis',
    expected: near(7.83, 0.005),
    ours: () => 100 * wetBasisFromRegain(0.085),
  },
  {
    id: 'G25',
    link: 'gin',
    kind: 'notTuned',
    what: 'regain of lint at 65 % humidity and 20 °C',
    source: 'Morton & Hearle, Physical Properties of Textile Fibres',
    unit: '%',
    expected: between(7, 8),
    ours: () => 100 * lintRegain(0.65),
  },
  {
    id: 'G26',
    link: 'gin',
    kind: 'calibrated',
    what: 'dispersed lint of 20 % after 15 s at 0.10 a second toward 2 %',
    source: 'Hughs et al. 1985, Beltwide 539',
    unit: '% wet basis',
    expected: near(6, 0.5),
    ours: () => dryingMoisture(20, 2, 0.1, 15),
  },
  {
    id: 'gin/dryer-counterflow',
    link: 'gin',
    kind: 'calibrated',
    what: 'lint of 13 % after 14 s in counter-flow air of 175 °F, toward 2 %',
    source: 'Hughs et al. 1985, Beltwide 539: 13-17.5 % seed cotton to lint of 7.4 % in 14 s at 150-200 °F',
    unit: '% wet basis',
    expected: near(7.4, 0.5),
    ours: () => dryingMoisture(13, 2, dryingRatePerSecond(175), 14),
  },
];
