import {
  INCHES_PER_FOOT,
  INCHES_PER_YARD,
  KG_PER_POUND,
  KILO,
  MINUTES_PER_HOUR,
  MM_PER_INCH,
  OUNCES_PER_POUND,
  POUNDS_PER_STATISTICAL_BALE,
  SQUARE_FEET_PER_ACRE,
  SQUARE_METRES_PER_ACRE,
  TERA,
} from '../units.ts';

/** Lint in a kilogram, in mtex x mm: a fibre of 1 mtex and 1 mm weighs a nanogram. */
const millitexMillimetresPerKg = TERA;

/** Kilograms of cloth from its area, square yards, and its weight, oz/yd2. */
export const clothMassKg = (squareYards: number, ounces: number): number =>
  ((squareYards * ounces) / OUNCES_PER_POUND) * KG_PER_POUND;

/** Yarn in the loom for so much finished cloth, kg. Yields as fractions. */
export const yarnForClothKg = (clothKg: number, finishingYield: number, weavingYield: number): number =>
  clothKg / finishingYield / weavingYield;

/** Length of a yarn, km, from its mass, kg, and its linear density, tex. */
export const yarnKilometres = (yarnKg: number, tex: number): number => (yarnKg * KILO) / tex;

/** Baled lint for yarn and batting, kg. */
export const lintForKg = (yarnKg: number, realisation: number, battingKg: number, battingYield: number): number =>
  yarnKg / realisation + battingKg / battingYield;

/** Seed cotton at the gin for so much lint, kg. */
export const seedCottonForKg = (lintKg: number, turnout: number): number => lintKg / turnout;

/** Bolls that grew so much seed cotton. @param deliveredPerGrown what reaches the gin of what grew, by weight */
export const bollsFor = (seedCottonKg: number, deliveredPerGrown: number, bollGrams: number): number =>
  (seedCottonKg * KILO) / (deliveredPerGrown * bollGrams);

/** Field that so many plants stand on, square metres. */
export const fieldFor = (plants: number, plantsPerAcre: number): number =>
  (plants / plantsPerAcre) * SQUARE_METRES_PER_ACRE;

/** Row on a field, feet. @param rowInches from row to row */
export const rowFeetOn = (squareMetres: number, rowInches: number): number =>
  ((squareMetres / SQUARE_METRES_PER_ACRE) * SQUARE_FEET_PER_ACRE * INCHES_PER_FOOT) / rowInches;

/** Water on a field, litres: a millimetre on a square metre is a litre. */
export const waterOnLitres = (squareMetres: number, inches: number): number => squareMetres * inches * MM_PER_INCH;

/** What comes along with lint, kg: seed, or gin waste. */
export const alongLintKg = (lintKg: number, perLint: number): number => lintKg * perLint;

/** Days of picking by hand. */
export const handPickingDaysFor = (seedCottonKg: number, poundsPerDay: number): number =>
  seedCottonKg / KG_PER_POUND / poundsPerDay;

/** Minutes of a picking machine. */
export const machineMinutesFor = (squareMetres: number, acresPerHour: number): number =>
  (squareMetres / SQUARE_METRES_PER_ACRE / acresPerHour) * MINUTES_PER_HOUR;

/** Fibres in lint, one by one. */
export const fibresIn = (lintKg: number, mtex: number, meanMm: number): number =>
  (lintKg * millitexMillimetresPerKg) / (mtex * meanMm);

/** Share of a bale of 480 lb. */
export const baleShareOf = (lintKg: number): number => lintKg / (POUNDS_PER_STATISTICAL_BALE * KG_PER_POUND);

/** Side of the square that a piece of cloth makes, inches, from square yards. */
export const squareSideInches = (squareYards: number): number => Math.sqrt(squareYards) * INCHES_PER_YARD;
