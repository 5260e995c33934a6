import { rowFeetPerAcre } from '../model/field/stand.ts';
import { meganewtons, universalDensity } from '../model/gin/press-force.ts';
import { squareYards } from '../model/trace/yardage.ts';
import {
  asNe,
  asNm,
  asTex,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  GRAMS_PER_OUNCE,
  gsmFromOuncesPerSquareYard,
  inchesFromMillimetres,
  kilogramsFromPounds,
  millimetresFromInches,
  neFromTex,
  nominalMtexFromMicronaire,
  ouncesPerSquareYardFromGsm,
  poundsFromKilograms,
  SQUARE_FEET_PER_ACRE,
  SQUARE_METRES_PER_ACRE,
  texFromNe,
  texFromNm,
} from '../model/units.ts';
import type { Check, CheckKind } from './check.ts';
import { nearShare } from './expected.ts';

/** Digits that must agree with the program's own answer. */
const agreement = 1e-9;

/**
 * A conversion against GNU units. One whose factor is a definition in one step could hardly differ; one composed of several is an
 * exact check.
 */
function conversion(
  id: string,
  kind: Extract<CheckKind, 'definition' | 'exact'>,
  what: string,
  [from, to]: readonly [string, string],
  unit: string,
  answer: number,
  ours: () => number,
): Check {
  return {
    id: `units/${id}`,
    link: 'units',
    kind,
    what,
    source: `GNU units 2.22, definitions.units: ${from} in ${to}`,
    unit,
    expected: nearShare(answer, agreement),
    tool: { name: 'units', from, to },
    ours,
  };
}

// The cotton count is indirect, so a count is asked for as a reciprocal.
export const unitsChecks: readonly Check[] = [
  conversion('ne1-tex', 'exact', '1 Ne in tex', ['1/cottonyarncount', 'tex'], 'tex', 590.5412474482, () =>
    texFromNe(asNe(1)),
  ),
  conversion(
    'tex20-ne',
    'exact',
    '20 tex as a hundred over Ne',
    ['20 tex', '0.01/cottonyarncount'],
    '100/Ne',
    3.386723634703,
    () => 100 / neFromTex(asTex(20)),
  ),
  conversion('nm50-tex', 'exact', '50 Nm in tex', ['1/(50 metricyarncount)', 'tex'], 'tex', 20, () =>
    texFromNm(asNm(50)),
  ),
  conversion(
    'micronaire-mtex',
    'exact',
    'micronaire 4.2, read as micrograms an inch, in mtex',
    ['4.2 microgram/inch', 'mtex'],
    'mtex',
    165.3543307087,
    () => nominalMtexFromMicronaire(4.2),
  ),
  conversion('oz-gsm', 'exact', '1 oz/yd2 in g/m2', ['oz/yd^2', 'g/m^2'], 'g/m2', 33.90574747488, () =>
    gsmFromOuncesPerSquareYard(1),
  ),
  conversion('gsm-oz', 'exact', '124 g/m2 in oz/yd2', ['124 g/m^2', 'oz/yd^2'], 'oz/yd2', 3.657197060524, () =>
    ouncesPerSquareYardFromGsm(124),
  ),
  conversion(
    'bale-density',
    'exact',
    '500 lb in 17 cubic feet in kg/m3',
    ['500|17 lb/ft^3', 'kg/m^3'],
    'kg/m3',
    471.1312757047,
    () => universalDensity(kilogramsFromPounds(500)).kgPerCubicMetre,
  ),
  conversion('press-force', 'exact', '854,021 lbf in MN', ['854021 lbf', 'MN'], 'MN', 3.798874672086, () =>
    meganewtons(854_021),
  ),
  conversion('row-feet', 'exact', 'feet of 38-inch row in an acre', ['acre/(38 in)', 'ft'], 'ft', 13755.78947368, () =>
    rowFeetPerAcre(38),
  ),
  conversion(
    'cloth-area',
    'exact',
    '1 1/4 yd of 44-inch cloth in square yards',
    ['1.25 yd * 44 in', 'yd^2'],
    'yd2',
    1.527777777778,
    () => squareYards(44, 1.25 * 36),
  ),
  conversion(
    'yield',
    'exact',
    '1000 lb/acre in kg/ha',
    ['1000 lb/acre', 'kg/ha'],
    'kg/ha',
    1120.851156194,
    () => (kilogramsFromPounds(1000) / SQUARE_METRES_PER_ACRE) * 10_000,
  ),
  conversion('lb-kg', 'definition', '480 lb in kg', ['480 lb', 'kg'], 'kg', 217.7243376, () =>
    kilogramsFromPounds(480),
  ),
  conversion('kg-lb', 'definition', '100 kg in lb', ['100 kg', 'lb'], 'lb', 220.4622621849, () =>
    poundsFromKilograms(100),
  ),
  conversion('in-mm', 'definition', '1.12 in in mm', ['1.12 in', 'mm'], 'mm', 28.448, () =>
    millimetresFromInches(1.12),
  ),
  conversion('mm-in', 'definition', '28 mm in inches', ['28 mm', 'in'], 'in', 1.102362204724, () =>
    inchesFromMillimetres(28),
  ),
  conversion('f-c', 'definition', '60 °F in °C', ['tempF(60)', 'tempC'], '°C', 15.55555555556, () =>
    celsiusFromFahrenheit(60),
  ),
  conversion('c-f', 'definition', '-40 °C in °F', ['tempC(-40)', 'tempF'], '°F', -40, () => fahrenheitFromCelsius(-40)),
  conversion(
    'acre-m2',
    'definition',
    'an acre in square meters',
    ['acre', 'm^2'],
    'm2',
    4046.8564224,
    () => SQUARE_METRES_PER_ACRE,
  ),
  conversion(
    'acre-ft2',
    'definition',
    'an acre in square feet',
    ['acre', 'ft^2'],
    'ft2',
    43560,
    () => SQUARE_FEET_PER_ACRE,
  ),
  conversion(
    'oz-g',
    'definition',
    'half a pound, the classing sample, in g',
    ['8 oz', 'g'],
    'g',
    226.796185,
    () => 8 * GRAMS_PER_OUNCE,
  ),
];
