import type { UnitSystem } from '../../../src/language/unit-system.ts';
import type { KindId } from '../../../src/teach/sheets/make-question.ts';
import type { Level } from '../../../src/teach/sheets/question.ts';

/** A sum for each thing asked, in the names that the printed text gives its numbers. Written from the text, not from the code. */
export type Sums = Readonly<Record<string, string>>;
type ByUnits = Sums | { readonly us: Sums; readonly metric: Sums };

const outs = 'load - lint - seed - trash - motes';
const week = (days: number) =>
  Array.from({ length: days }, (_, i) => `max(0, (high${i + 1} + low${i + 1}) / 2 - base)`).join(' + ');

/**
 * Sums of every kind but the staple chart, which is read and not worked out. Turnout, count, tex and weight are used as
 * defined by the texts themselves; 840 yd a hank and 16 oz a pound by definition.
 */
const sums: Readonly<Record<Exclude<KindId, 'staple'>, Readonly<Record<Level, ByUnits>>>> = {
  heat: {
    1: { total: week(3) },
    2: { total: week(7) },
    3: { total: week(7), perDay: `(${week(7)}) / 7`, days: `7 * need / (${week(7)})` },
  },
  ginBalance: {
    1: { rest: 'load - lint - seed' },
    2: { dried: outs, seedShare: 'seed / load * 100' },
    3: {
      water: 'load * moisture / 100',
      dried: outs,
      waterOut: `load * moisture / 100 - (${outs}) + added`,
    },
  },
  turnout: {
    1: { turnout: 'lint / load * 100' },
    2: { lint: 'load * turnoutPercent / 100', bales: 'load * turnoutPercent / 100 / bale' },
    3: {
      needFirst: 'bale * 100 / first',
      needSecond: 'bale * 100 / second',
      more: '(bale * 100 / second - bale * 100 / first) * bales',
    },
  },
  bales: {
    1: { fullBales: 'lint / bale', left: 'lint - floor(lint / bale) * bale' },
    2: { price: 'base + difference', value: 'net * (base + difference) / 100' },
    3: {
      us: {
        credit: 'seed / 2000 * seedPrice',
        charge: 'lint / bale * ginPrice',
        balance: 'seed / 2000 * seedPrice - lint / bale * ginPrice',
      },
      metric: {
        credit: 'seed / 1000 * seedPrice',
        charge: 'lint / bale * ginPrice',
        balance: 'seed / 1000 * seedPrice - lint / bale * ginPrice',
      },
    },
  },
  yarn: {
    1: { us: { count: 'length / 840' }, metric: { count: 'mass / length * 1000' } },
    2: {
      us: { tex: 'texTimesNe / count', fibers: 'texTimesNe / count * 1000 / fiber' },
      metric: { ne: 'texTimesNe / count', fibers: 'count * 1000 / fiber' },
    },
    3: {
      fiber: 'micronaire * mtexPerMicronaire',
      fibers: 'texTimesNe / ne * 1000 / (micronaire * mtexPerMicronaire)',
      finest: 'texTimesNe * 1000 / (fewest * micronaire * mtexPerMicronaire)',
    },
  },
  clothWeight: {
    1: { weight: 'mass / area' },
    2: {
      us: { area: 'length * width / 36', mass: 'length * width / 36 * weight / 16' },
      metric: { area: 'length * width / 100', mass: 'length * width / 100 * weight' },
    },
    3: {
      us: {
        warp: 'ends * 36 * (100 + warpCrimp) / 100',
        weft: 'picks * 36 * (100 + weftCrimp) / 100',
        weight: '36 * (ends * (100 + warpCrimp) + picks * (100 + weftCrimp)) / 100 / (840 * count) * 16',
      },
      metric: {
        warp: 'ends * 100 * (100 + warpCrimp) / 100',
        weft: 'picks * 100 * (100 + weftCrimp) / 100',
        weight: '(ends * (100 + warpCrimp) + picks * (100 + weftCrimp)) * count / 1000',
      },
    },
  },
  conversions: {
    1: { share: 'heavy / all * 100', newPrice: 'price * (100 - off) / 100' },
    2: {
      us: { otherLength: 'length * metresPerYard', otherWeight: 'weight * gsmPerOunce' },
      metric: { otherLength: 'length / metresPerYard', otherWeight: 'weight / gsmPerOunce' },
    },
    3: {
      after: 'bought * (100 - shrink) / 100',
      cutLength: 'piece * 100 / (100 - shrink)',
      heavier: 'weight * 10000 / ((100 - shrink) * (100 - shrinkAcross))',
    },
  },
  layout: {
    1: { strips: 'width / strip', left: 'width - floor(width / strip) * strip' },
    2: {
      us: { sameArea: 'needed * from / to', buy: 'needed * from / to' },
      metric: { sameArea: 'needed * from / to', buy: 'needed * from / to' },
    },
    3: {
      us: {
        stripsUpright: '(width + over) / usable',
        upright: 'ceil((width + over) / usable) * (length + over) / 36',
        stripsCrosswise: '(length + over) / usable',
        crosswise: 'ceil((length + over) / usable) * (width + over) / 36',
        buy: 'min(ceil((width + over) / usable) * (length + over), ceil((length + over) / usable) * (width + over)) / 36',
      },
      metric: {
        stripsUpright: '(width + over) / usable',
        upright: 'ceil((width + over) / usable) * (length + over) / 100',
        stripsCrosswise: '(length + over) / usable',
        crosswise: 'ceil((length + over) / usable) * (width + over) / 100',
        buy: 'min(ceil((width + over) / usable) * (length + over), ceil((length + over) / usable) * (width + over)) / 100',
      },
    },
  },
  trace: {
    1: { seedCotton: 'lint * 100 / turnout' },
    2: {
      us: { seedCotton: 'lint * 100 / turnout', bolls: 'lint * 100 / turnout * gramsPerOunce / boll' },
      metric: { seedCotton: 'lint * 100 / turnout', bolls: 'lint * 100 / turnout / boll' },
    },
    3: {
      us: {
        yarn: 'cloth * 10000 / (finishing * weaving)',
        lint: 'cloth * 1000000 / (finishing * weaving * realisation)',
        bolls: 'cloth * 100000000 / (finishing * weaving * realisation * turnout) * gramsPerOunce / boll',
      },
      metric: {
        yarn: 'cloth * 10000 / (finishing * weaving)',
        lint: 'cloth * 1000000 / (finishing * weaving * realisation)',
        bolls: 'cloth * 100000000 / (finishing * weaving * realisation * turnout) / boll',
      },
    },
  },
};

/** The sums of a kind, level and unit system. */
export function sumsOf(kind: Exclude<KindId, 'staple'>, level: Level, units: UnitSystem): Sums {
  const found = sums[kind][level];
  return 'us' in found && typeof found.us === 'object' ? (found as { us: Sums; metric: Sums })[units] : (found as Sums);
}
