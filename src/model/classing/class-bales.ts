import type { DecisionsOf } from '../decisions.ts';
import { type Fibre, readFibre } from '../fibre.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import { upperQuartileMm } from '../length/statistics.ts';
import { type Lot, type PartMasses, parts, splitLot, totalKg } from '../lot.ts';
import type { Era } from '../scenario.ts';
import { inchesFromMillimetres, kilogramsFromPounds, OUNCES_PER_POUND, poundsFromKilograms } from '../units.ts';
import { type BaleReading, readBales } from './bale-readings.ts';
import { type EyeGrade, gradeByEye, thirtiesPrice } from './by-eye.ts';
import { type BalePrice, type GradedBale, gradeOne } from './class-card.ts';
import type { Colour } from './colour.ts';
import { moisturePercentDryBasis, moisturePercentWetBasis, readyToTest } from './conditioning.ts';
import { colourAtRisk } from './damp.ts';
import { callChances, callExtraneous, type ExtraneousCall } from './extraneous.ts';
import { office } from './facts.ts';
import type { InstrumentReading } from './reading.ts';
import { darkenedRd, trashAreaPercent } from './trash-area.ts';

/** A bale as it leaves the press. */
export interface PressedBale {
  /** Counted from 1 in the order of pressing. */
  readonly number: number;
  readonly netKg: number;
  readonly grossKg: number;
  readonly tag: string | null;
  readonly mark: string | null;
}

/** What classing needs to know beside the lot and the bales. */
export interface ClassingContext {
  readonly era: Era;
  readonly seed: number;
  /** Bales pressed from one module or wagon; rounded to at least one. */
  readonly balesPerModule: number;
  /** Whether the cotton was stripped, which brings bark. */
  readonly stripped: boolean;
}

/** One bale's record. Weights are the press's: the sample is not taken off what is paid. */
export interface ClassedBale extends Colour, BalePrice {
  readonly number: number;
  readonly tag: string | null;
  readonly mark: string | null;
  readonly netLb: number;
  readonly grossLb: number;
  readonly leaf: number;
  readonly staple32nds: number;
  readonly module: number;
  /** What the record holds; in the 1930s, what an instrument would say today. */
  readonly reading: InstrumentReading;
  /** The bale's own test, which differs where modules are averaged. */
  readonly ownReading: InstrumentReading;
  readonly extraneous: readonly ExtraneousCall[];
  /** Grade by eye and staple by hand; only in the 1930s, and then the grade and staple above are these. */
  readonly byEye: EyeGrade | null;
}

export interface ClassingOutcome {
  /** The bales less their samples. */
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly classed: readonly ClassedBale[];
  readonly sample: {
    readonly kg: number;
    /** Moisture of the lint, percent of its dry mass, and whether that lies inside the office's gate. */
    readonly moisturePercentDryBasis: number;
    readonly readyToTest: boolean;
  };
  /** Water in the bales, lint alone. */
  readonly moisture: {
    /** Percent wet basis. */
    readonly percent: number;
    /** Damper than the trade of its time accepts: see each bale's waterRule. */
    readonly overLimit: boolean;
    /** So damp that the cotton changes colour in months of storage. */
    readonly colourAtRisk: boolean;
  };
  /** What the whole lot would read without noise. */
  readonly lotReading: InstrumentReading;
}

/** What an instrument without noise would read of a lot of lint, trash included. */
export function readLot(lot: Lot): InstrumentReading {
  const fibre = readFibre(lot.fibre);
  const trash = trashAreaPercent(lot);
  return {
    lengthIn: inchesFromMillimetres(fibre.upperHalfMeanMm),
    uniformityPercent: fibre.uniformityPercent,
    strengthGPerTex: fibre.strengthGPerTex,
    micronaire: fibre.micronaire,
    reflectanceRd: darkenedRd(lot.fibre.reflectanceRd, trash),
    yellownessB: lot.fibre.yellownessB,
    trashAreaPercent: trash,
  };
}

/** Takes a sample of each bale, both sides together, water in proportion. */
function takeSamples(lot: Lot, baleCount: number) {
  const wantedKg = kilogramsFromPounds((baleCount * office.sampleOunces.value) / OUNCES_PER_POUND);
  const all = totalKg(lot);
  const share = all > 0 ? Math.min(1, wantedKg / all) : 0;
  const fractions = {} as Record<keyof PartMasses, number>;
  for (const part of parts) fractions[part] = share;
  return splitLot(lot, fractions);
}

/** A bale's record, field by field: a season has thousands of bales, and spreading objects took half of its time. */
const classedBale = (
  { colour, leaf, staple32nds, price }: GradedBale,
  bale: PressedBale,
  { module, own, recorded }: BaleReading,
  extraneous: readonly ExtraneousCall[],
  byEye: EyeGrade | null,
): ClassedBale => ({
  number: bale.number,
  tag: bale.tag,
  mark: bale.mark,
  netLb: poundsFromKilograms(bale.netKg),
  grossLb: poundsFromKilograms(bale.grossKg),
  module,
  reading: recorded,
  ownReading: own,
  color: colour.color,
  colorName: colour.colorName,
  leaf,
  staple32nds,
  paidLb: price.paidLb,
  waterRule: price.waterRule,
  points: price.points,
  premiumPoints: price.premiumPoints,
  baseCentsPerLb: price.baseCentsPerLb,
  priceCentsPerLb: price.priceCentsPerLb,
  heldAtZero: price.heldAtZero,
  valueUsd: price.valueUsd,
  priceYear: price.priceYear,
  basis: price.basis,
  filled: price.filled,
  extraneous,
  byEye,
});

/**
 * Classes a season's bales: samples them, reads or grades each and prices it.
 * @param lot the lint of all bales at the press
 */
export function classBales(
  lot: Lot,
  bales: readonly PressedBale[],
  decisions: DecisionsOf<'classing'>,
  context: ClassingContext,
): ClassingOutcome {
  const { kept, removed } = takeSamples(lot, bales.length);
  const sampled: Lot = { ...kept, fibre: lot.fibre };
  const lotReading = readLot(lot);
  const readings = readBales(
    lotReading,
    bales.map(({ number }) => number),
    {
      seed: context.seed,
      kind: lot.fibre.kind,
      balesPerModule: context.balesPerModule,
      moduleAveraging: decisions.moduleAveraging && context.era === 'present',
    },
  );
  const chances = callChances(lot, context.stripped);
  const quartilePerLength = quartileRatio(lot.fibre, lotReading.lengthIn);
  const percent = moisturePercentWetBasis(lot);
  const classed = bales.map((bale, i): ClassedBale => {
    const reading = readings[i]!;
    const netLb = poundsFromKilograms(bale.netKg);
    if (context.era === 'thirties') {
      const byEye = gradeByEye(reading.truth, quartilePerLength, reading.random);
      const price = thirtiesPrice({ netLb, moisturePercent: percent });
      const graded = { colour: byEye, leaf: byEye.leaf, staple32nds: byEye.staple.thirtySeconds, price };
      return classedBale(graded, bale, reading, [], byEye);
    }
    const { recorded } = reading;
    const extraneous = callExtraneous(chances, reading.random);
    const graded = gradeOne({
      lengthIn: recorded.lengthIn,
      uniformityPercent: recorded.uniformityPercent,
      strengthGPerTex: recorded.strengthGPerTex,
      micronaire: recorded.micronaire,
      reflectanceRd: recorded.reflectanceRd,
      yellownessB: recorded.yellownessB,
      kind: lot.fibre.kind,
      leaf: recorded,
      market: decisions.market,
      netLb,
      moisturePercent: percent,
      extraneous,
    });
    return classedBale(graded, bale, reading, extraneous, null);
  });
  const moisture = moisturePercentDryBasis(lot);
  return {
    lot: sampled,
    ledger: {
      station: 'classing',
      in: [massEntry('lot', lot)],
      out: [massEntry('classingSample', removed), massEntry('lot', sampled)],
    },
    classed,
    sample: {
      kg: totalKg(removed),
      moisturePercentDryBasis: moisture,
      readyToTest: readyToTest(moisture),
    },
    moisture: {
      percent,
      overLimit: classed.some(({ waterRule }) => waterRule !== 'none'),
      colourAtRisk: colourAtRisk(percent),
    },
    lotReading,
  };
}

/** Hand-array upper quartile length over instrument length: what turns one into the other for each bale. */
const quartileRatio = (fibre: Fibre, lengthIn: number): number =>
  inchesFromMillimetres(upperQuartileMm(fibre.lengths)) / lengthIn;
