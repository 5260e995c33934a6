import type { Mark } from '../fact.ts';
import type { Era } from '../scenario.ts';
import { POUNDS_PER_SHORT_TON, POUNDS_PER_STATISTICAL_BALE, poundsFromKilograms } from '../units.ts';
import type { PaidWeight } from './damp.ts';
import { presentMoney, thirtiesMoney } from './money-facts.ts';
import { priceOfCrop } from './prices.ts';

/** Pounds in the hundredweight that picking was paid by, exact. */
const POUNDS_PER_HUNDREDWEIGHT = 100;

/** What a sale is made of. */
export interface Sale {
  readonly era: Era;
  /** The classed bales. */
  readonly bales: readonly (PaidWeight & {
    readonly netLb: number;
    readonly valueUsd: number;
    readonly priceYear: number;
  })[];
  /** Seed that left the gin, kg as weighed. */
  readonly seedKg: number;
  /** Months in the warehouse before the sale. */
  readonly storageMonths: number;
  /** Seed cotton picked by hand, kg; null for machines. Paid by weight in the 1930s; no rate of today was read. */
  readonly handPickedSeedCottonKg: number | null;
}

/** One line of the settlement; what the farm pays is negative. */
export interface PaymentLine {
  readonly item: 'lint' | 'seed' | 'ginning' | 'classing' | 'storage' | 'picking';
  readonly usd: number;
  /** Year of the price. */
  readonly year: number;
  readonly mark: Mark;
}

/** Who is paid what for a season's cotton. */
export interface Payments {
  readonly lines: readonly PaymentLine[];
  readonly netToFarmUsd: number;
  /** Seed against the ginning charge: by common practice the gin keeps the seed and settles the rest. */
  readonly seedAndGin: SeedSettlement;
  /** Water that nobody paid for, lb: what the bales hold above the moisture the trade accepts. */
  readonly waterDeductedLb: number;
  /** Bales that the loan does not take until they have dried. */
  readonly balesRefusedForLoan: number;
  /** Whether the lines come from different years, and which. */
  readonly mixedYears: boolean;
  readonly years: readonly number[];
}

export interface SeedSettlement {
  readonly seedCreditUsd: number;
  readonly ginChargeUsd: number;
  /** Credit less charge; what the gin pays out, or where negative still asks for. */
  readonly balanceUsd: number;
  readonly seedPaysGin: boolean;
  /** Seed price at which the seed just pays the gin, USD a short ton; null without seed. */
  readonly breakEvenUsdPerTon: number | null;
}

/** Sets the seed off against the ginning charge. */
export function settleSeed(seedLb: number, usdPerTon: number, ginChargeUsd: number): SeedSettlement {
  const seedCreditUsd = (seedLb * usdPerTon) / POUNDS_PER_SHORT_TON;
  return {
    seedCreditUsd,
    ginChargeUsd,
    balanceUsd: seedCreditUsd - ginChargeUsd,
    seedPaysGin: seedCreditUsd >= ginChargeUsd,
    breakEvenUsdPerTon: seedLb > 0 ? (POUNDS_PER_SHORT_TON * ginChargeUsd) / seedLb : null,
  };
}

/** Warehouse cost, USD. */
export const storageUsd = (bales: number, months: number, usdPerBaleMonth: number): number =>
  bales * months * usdPerBaleMonth;

/** A sum per bale as points a pound, to set it beside the differences: 100 cents, and 100 points in each. */
export const pointsOfUsd = (usd: number, netLb: number): number => ((100 * usd) / netLb) * 100;

interface Rates {
  readonly seed: { readonly value: number; readonly year: number; readonly mark: Mark };
  readonly gin: { readonly value: number; readonly year: number; readonly mark: Mark };
  readonly classFee: { readonly value: number; readonly year: number; readonly mark: Mark } | null;
  readonly storage: { readonly value: number; readonly year: number; readonly mark: Mark };
}

function ratesOf(era: Era): Rates {
  if (era === 'thirties') {
    const { cropYear, ginChargeUsdPer480Lb, storageUsdPerBaleMonth } = thirtiesMoney;
    const crop = priceOfCrop(cropYear.value)!;
    const year = cropYear.value;
    return {
      seed: { value: crop.seedUsdPerTon!, year, mark: crop.mark },
      gin: { value: ginChargeUsdPer480Lb.value, year, mark: ginChargeUsdPer480Lb.mark },
      classFee: null,
      storage: { value: storageUsdPerBaleMonth.value, year, mark: storageUsdPerBaleMonth.mark },
    };
  }
  const money = presentMoney;
  return {
    seed: { value: money.seedUsdPerTon.value, year: money.seedYear.value, mark: money.seedUsdPerTon.mark },
    gin: {
      value: money.ginChargeUsdPer480Lb.value,
      year: money.ginChargeYear.value,
      mark: money.ginChargeUsdPer480Lb.mark,
    },
    classFee: {
      value: money.classFeeUsdPerBale.value,
      year: money.classFeeYear.value,
      mark: money.classFeeUsdPerBale.mark,
    },
    storage: {
      value: money.storageUsdPerBaleMonth.value,
      year: money.storageYear.value,
      mark: money.storageUsdPerBaleMonth.mark,
    },
  };
}

/**
 * Settles a season: lint and seed on one side; ginning, classing, storage and hand picking on the other. Growing costs
 * and machine harvest are not part of it.
 */
export function settle(sale: Sale): Payments {
  const { era, bales, seedKg, storageMonths, handPickedSeedCottonKg } = sale;
  const rates = ratesOf(era);
  const netLb = bales.reduce((sum, bale) => sum + bale.netLb, 0);
  const lintUsd = bales.reduce((sum, bale) => sum + bale.valueUsd, 0);
  const seedAndGin = settleSeed(
    poundsFromKilograms(seedKg),
    rates.seed.value,
    (netLb / POUNDS_PER_STATISTICAL_BALE) * rates.gin.value,
  );
  const lines: PaymentLine[] = [
    { item: 'lint', usd: lintUsd, year: bales[0]?.priceYear ?? rates.seed.year, mark: 'published' },
    { item: 'seed', usd: seedAndGin.seedCreditUsd, year: rates.seed.year, mark: rates.seed.mark },
    { item: 'ginning', usd: -seedAndGin.ginChargeUsd, year: rates.gin.year, mark: rates.gin.mark },
  ];
  const { classFee, storage } = rates;
  if (classFee) {
    lines.push({ item: 'classing', usd: -bales.length * classFee.value, year: classFee.year, mark: classFee.mark });
  }
  if (storageMonths > 0) {
    const usd = -storageUsd(bales.length, storageMonths, storage.value);
    lines.push({ item: 'storage', usd, year: storage.year, mark: storage.mark });
  }
  if (era === 'thirties' && handPickedSeedCottonKg !== null) {
    const { pickingUsdPerCwt, cropYear } = thirtiesMoney;
    const hundredweights = poundsFromKilograms(handPickedSeedCottonKg) / POUNDS_PER_HUNDREDWEIGHT;
    const usd = -hundredweights * pickingUsdPerCwt.value;
    lines.push({ item: 'picking', usd, year: cropYear.value, mark: pickingUsdPerCwt.mark });
  }
  const years = [...new Set(lines.map(({ year }) => year))].sort((a, b) => a - b);
  return {
    lines,
    netToFarmUsd: lines.reduce((sum, line) => sum + line.usd, 0),
    seedAndGin,
    waterDeductedLb: bales.reduce((sum, bale) => sum + bale.netLb - bale.paidLb, 0),
    balesRefusedForLoan: bales.filter(({ waterRule }) => waterRule === 'refusedForLoan').length,
    mixedYears: years.length > 1,
    years,
  };
}
