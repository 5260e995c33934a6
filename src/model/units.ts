/**
 * Exact unit conversions. The model holds kilograms, millimetres, tex and degrees Fahrenheit for
 * heat sums (the trade's own heat unit); every other unit is made here, at the edge.
 * Sources: international yard and pound (1959): 1 lb = 0.453 592 37 kg, 1 in = 25.4 mm, exactly.
 */

/** Kilograms in one pound, exact. */
export const KG_PER_POUND = 0.45359237;
/** Millimetres in one inch, exact. */
export const MM_PER_INCH = 25.4;
/** Square metres in one acre (international), exact. */
export const SQUARE_METRES_PER_ACRE = 4046.8564224;
/** Grams in one ounce (avoirdupois), exact. */
export const GRAMS_PER_OUNCE = 28.349523125;
/** Grams per square metre in one ounce per square yard, exact to rounding. */
export const GSM_PER_OUNCE_PER_SQUARE_YARD = GRAMS_PER_OUNCE / 0.83612736;
/** Yards in one hank of cotton yarn, and grams of 9000 m in one tex: the bases of the English count and of denier. */
export const YARDS_PER_HANK = 840;
export const DENIER_PER_TEX = 9;
/** Net pounds in one statistical bale, by definition of USDA statistics. */
export const POUNDS_PER_STATISTICAL_BALE = 480;
/** tex x Ne: a hank is 840 yd and Ne counts hanks in a pound, so 453.59237 g / (840 x 0.9144 m) x 1000. */
export const TEX_TIMES_NE = 453592.37 / (YARDS_PER_HANK * 0.9144);

/** Steps of the decimal prefixes: grams in a kilogram, meters in a kilometer, milligrams in a gram. */
export const KILO = 1000;
export const MEGA = 1e6;
export const TERA = 1e12;
/** Of the yard, the pound and the clock, exact. */
export const INCHES_PER_FOOT = 12;
export const INCHES_PER_YARD = 36;
export const OUNCES_PER_POUND = 16;
export const POUNDS_PER_SHORT_TON = 2000;
/** Divisions of an inch rule that staple is called in, exact. */
export const THIRTY_SECONDS_PER_INCH = 32;
export const SIXTEENTHS_PER_INCH = 16;
export const METRES_PER_FOOT = 0.3048;
/** A furlong by a chain: 660 ft x 66 ft. */
export const SQUARE_FEET_PER_ACRE = 43560;
export const MINUTES_PER_HOUR = 60;
export const MINUTES_PER_DAY = 24 * MINUTES_PER_HOUR;
/** Days of the model's years: 29 February is left out. */
export const DAYS_PER_YEAR = 365;
export const RADIANS_PER_DEGREE = Math.PI / 180;
/** Newtons in the weight of one kilogram at standard gravity, exact. */
export const NEWTONS_PER_KILOGRAM_FORCE = 9.80665;

declare const unit: unique symbol;
/** English cotton count: hanks of 840 yd in one pound. Higher is finer. */
export type Ne = number & { readonly [unit]: 'Ne' };
/** Grams in 1000 m. Higher is thicker. */
export type Tex = number & { readonly [unit]: 'tex' };
/** Metric count: metres in one gram. Higher is finer. */
export type Nm = number & { readonly [unit]: 'Nm' };

/** Brand a plain number as an English cotton count. */
export const asNe = (value: number): Ne => value as Ne;
/** Brand a plain number as tex. */
export const asTex = (value: number): Tex => value as Tex;
/** Brand a plain number as a metric count. */
export const asNm = (value: number): Nm => value as Nm;

export const texFromNe = (ne: Ne): Tex => asTex(TEX_TIMES_NE / ne);
export const neFromTex = (tex: Tex): Ne => asNe(TEX_TIMES_NE / tex);
export const texFromNm = (nm: Nm): Tex => asTex(1000 / nm);
export const nmFromTex = (tex: Tex): Nm => asNm(1000 / tex);

export const kilogramsFromPounds = (pounds: number): number => pounds * KG_PER_POUND;
export const poundsFromKilograms = (kilograms: number): number => kilograms / KG_PER_POUND;
export const millimetresFromInches = (inches: number): number => inches * MM_PER_INCH;
export const inchesFromMillimetres = (millimetres: number): number => millimetres / MM_PER_INCH;
export const celsiusFromFahrenheit = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
export const fahrenheitFromCelsius = (celsius: number): number => celsius * 1.8 + 32;
export const gsmFromOuncesPerSquareYard = (ounces: number): number => ounces * GSM_PER_OUNCE_PER_SQUARE_YARD;
export const ouncesPerSquareYardFromGsm = (gsm: number): number => gsm / GSM_PER_OUNCE_PER_SQUARE_YARD;

/**
 * Micronaire is read as micrograms per inch, so one unit is nominally 39.37 mtex. Nominal only: the
 * instrument reads air flow, and the reading is the true linear density only near average maturity.
 */
export const nominalMtexFromMicronaire = (micronaire: number): number => (micronaire * 1000) / MM_PER_INCH;
export const nominalMicronaireFromMtex = (mtex: number): number => (mtex * MM_PER_INCH) / 1000;
