import type { CottonKind } from '../fibre.ts';
import type { Random } from '../random.ts';
import { oneTestSd, spread } from './facts.ts';
import { normalCurve } from './normal-curve-facts.ts';
import { darkenedRd, lintRd } from './trash-area.ts';

/** What an instrument line reports of a bale, and what the bale would read without noise. */
export interface InstrumentReading {
  /** Upper half mean length, in. */
  readonly lengthIn: number;
  readonly uniformityPercent: number;
  readonly strengthGPerTex: number;
  readonly micronaire: number;
  /** Rd with the trash on the surface, percent. */
  readonly reflectanceRd: number;
  readonly yellownessB: number;
  readonly trashAreaPercent: number;
}

/** Channels that module averaging shares out; colour, trash and extraneous matter stay each bale's own. */
const averagedChannels = ['lengthIn', 'uniformityPercent', 'strengthGPerTex', 'micronaire'] as const;

/** Six correlated normal draws and one for trash: how a module or a bale departs from the lot, in standard deviations. */
export interface Departure {
  readonly lengthIn: number;
  readonly uniformityPercent: number;
  readonly strengthGPerTex: number;
  readonly micronaire: number;
  readonly reflectanceRd: number;
  readonly yellownessB: number;
  readonly trash: number;
}

/**
 * Draws a departure. One common factor carries the shared correlation: length, uniformity, strength and Rd load on it,
 * +b loads against it, and +b leans on micronaire a little.
 */
export function drawDeparture(random: Random): Departure {
  const r = spread.sharedCorrelation.value;
  const lean = spread.micronaireYellownessCorrelation.value;
  const common = Math.sqrt(r) * random.normal();
  const own = () => Math.sqrt(1 - r) * random.normal();
  const micronaire = random.normal();
  return {
    lengthIn: common + own(),
    uniformityPercent: common + own(),
    strengthGPerTex: common + own(),
    micronaire,
    reflectanceRd: common + own(),
    yellownessB: -common + lean * micronaire + Math.sqrt(1 - r - lean * lean) * random.normal(),
    trash: random.normal(),
  };
}

/** Gamma with mean 1 from a normal draw (Wilson and Hilferty 1931), never negative. */
function gammaOfMeanOne(cv: number, normal: number): number {
  const root = normalCurve.gammaRoot.value;
  const spreadOfRoot = cv / root;
  return Math.max(0, 1 - spreadOfRoot * spreadOfRoot + normal * spreadOfRoot) ** root;
}

/**
 * Puts a departure on a lot's true values, with the spread between modules or between bales. The lint's own Rd varies, and
 * the trash of that very module or bale then darkens it: a leafier bale reads darker.
 */
export function depart(
  truth: InstrumentReading,
  by: Departure,
  level: 'module' | 'bale',
  kind: CottonKind,
): InstrumentReading {
  const pima = kind === 'pima' ? spread.pimaUniformityShare.value : 1;
  const sd = {
    lengthIn: spread[`${level}LengthIn`].value,
    uniformityPercent: spread[`${level}UniformityPercent`].value * pima,
    strengthGPerTex: spread[`${level}StrengthGPerTex`].value,
    micronaire: spread[`${level}Micronaire`].value,
    reflectanceRd: spread[`${level}ReflectanceRd`].value,
    yellownessB: spread[`${level}YellownessB`].value,
  };
  const trash = truth.trashAreaPercent * gammaOfMeanOne(spread[`${level}Trash`].value, by.trash);
  const lint = lintRd(truth.reflectanceRd, truth.trashAreaPercent) + by.reflectanceRd * sd.reflectanceRd;
  return {
    lengthIn: truth.lengthIn + by.lengthIn * sd.lengthIn,
    uniformityPercent: truth.uniformityPercent + by.uniformityPercent * sd.uniformityPercent,
    strengthGPerTex: truth.strengthGPerTex + by.strengthGPerTex * sd.strengthGPerTex,
    micronaire: truth.micronaire + by.micronaire * sd.micronaire,
    reflectanceRd: darkenedRd(lint, trash),
    yellownessB: truth.yellownessB + by.yellownessB * sd.yellownessB,
    trashAreaPercent: trash,
  };
}

/** Mixes two cottons' values by share, for bales that hold the end of one module and the start of the next. */
export function mixReadings(a: InstrumentReading, b: InstrumentReading, shareOfB: number): InstrumentReading {
  const mix = (x: number, y: number) => x + (y - x) * shareOfB;
  return {
    lengthIn: mix(a.lengthIn, b.lengthIn),
    uniformityPercent: mix(a.uniformityPercent, b.uniformityPercent),
    strengthGPerTex: mix(a.strengthGPerTex, b.strengthGPerTex),
    micronaire: mix(a.micronaire, b.micronaire),
    reflectanceRd: mix(a.reflectanceRd, b.reflectanceRd),
    yellownessB: mix(a.yellownessB, b.yellownessB),
    trashAreaPercent: mix(a.trashAreaPercent, b.trashAreaPercent),
  };
}

/** One instrument test: the bale's true values with the noise of the instrument, not yet rounded. */
export function testBale(truth: InstrumentReading, random: Random): InstrumentReading {
  const noise = (fact: { readonly value: number }) => fact.value * random.normal();
  const trashSd = oneTestSd.trashShare.value * truth.trashAreaPercent + oneTestSd.trashFloorPercent.value;
  return {
    lengthIn: truth.lengthIn + noise(oneTestSd.lengthIn),
    uniformityPercent: truth.uniformityPercent + noise(oneTestSd.uniformityPercent),
    strengthGPerTex: truth.strengthGPerTex + noise(oneTestSd.strengthGPerTex),
    micronaire: truth.micronaire + noise(oneTestSd.micronaire),
    reflectanceRd: truth.reflectanceRd + noise(oneTestSd.reflectanceRd),
    yellownessB: truth.yellownessB + noise(oneTestSd.yellownessB),
    trashAreaPercent: Math.max(0, truth.trashAreaPercent + trashSd * random.normal()),
  };
}

/** Rounds as the record prints, except trash: it keeps hundredths, which the leaf grade is taken from. */
export function roundReading(reading: InstrumentReading): InstrumentReading {
  const tenth = (x: number) => Math.round(x * 10) / 10;
  const hundredth = (x: number) => Math.round(x * 100) / 100;
  return {
    lengthIn: hundredth(reading.lengthIn),
    uniformityPercent: tenth(reading.uniformityPercent),
    strengthGPerTex: tenth(reading.strengthGPerTex),
    micronaire: tenth(reading.micronaire),
    reflectanceRd: tenth(reading.reflectanceRd),
    yellownessB: tenth(reading.yellownessB),
    trashAreaPercent: hundredth(reading.trashAreaPercent),
  };
}

/**
 * Module averaging: every bale of the module gets the module's mean of length, uniformity, strength and micronaire.
 * @param readings unrounded readings of one module's bales, at least one
 */
export function averageModule(readings: readonly InstrumentReading[]): InstrumentReading[] {
  const mean = {} as Record<(typeof averagedChannels)[number], number>;
  for (const channel of averagedChannels) {
    mean[channel] = readings.reduce((sum, reading) => sum + reading[channel], 0) / readings.length;
  }
  return readings.map((reading) => ({ ...reading, ...mean }));
}
