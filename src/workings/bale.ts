import type { ClassedBale } from '../model/classing/class-bales.ts';
import { colourSteps, pimaColourSteps } from '../model/classing/colour-chart-facts.ts';
import { leafEdges, spread } from '../model/classing/facts.ts';
import { markets } from '../model/classing/markets.ts';
import { presentMoney } from '../model/classing/money-facts.ts';
import { priceOfCrop } from '../model/classing/prices.ts';
import { stapleChart } from '../model/classing/staple-facts.ts';
import { pressFacts } from '../model/gin/press-facts.ts';
import type { Season } from '../model/season.ts';
import { kilogramsFromPounds } from '../model/units.ts';
import { baleCountSteps, tareSource } from './pressing.ts';
import { above, atStation, count, exact, formula, input, mass, procedure, read, step } from './steps.ts';
import type { Origin, Printed, Step, Working } from './working.ts';

/** The columns of the bales' table that hold a number or a grade. */
export type BaleKey = 'net' | 'gross' | 'color' | 'leaf' | 'staple' | 'micronaire' | 'strength' | 'premium' | 'value';

const at = atStation('classing');
const netOf = (lb: number): Printed => mass(kilogramsFromPounds(lb), 0);

function netWorking(season: Season, bale: ClassedBale): Working | null {
  const { pressing } = season;
  if (!pressing) return null;
  return procedure(
    [
      ...baleCountSteps(pressing, season),
      step('balesPressed', count(pressing.bales.length), atStation('pressing')),
      step('scaleSpread', exact(pressFacts.weightSpreadLb.value, 'pounds'), read(pressFacts.weightSpreadLb)),
      step('onTheScale', exact(bale.netLb, 'pounds'), { at: 'chance' }),
    ],
    netOf(bale.netLb),
  );
}

function grossWorking({ scenario }: Season, bale: ClassedBale): Working {
  const { lb, from } = tareSource(scenario.era);
  return procedure(
    [
      step('net', exact(bale.netLb, 'pounds'), atStation('pressing')),
      step('wrapAndStraps', exact(lb, 'pounds'), read(from)),
    ],
    netOf(bale.netLb + lb),
  );
}

/** A reading: what the whole lot would give, this bale's own test, and what stands on the record. */
function readingSteps(
  season: Season,
  bale: ClassedBale,
  write: (reading: ClassedBale['reading']) => Printed,
  names = { lot: 'lotReading', own: 'ownTest', record: 'onRecord' },
): Step[] {
  const { classing } = season;
  return [
    ...(classing ? [step(names.lot, write(classing.lotReading), { at: 'fibre' })] : []),
    step({ word: 'moduleOfBale', n: bale.module }, count(bale.module), atStation('module')),
    step(names.own, write(bale.ownReading), { at: 'chance' }),
    step(names.record, write(bale.reading), at),
  ];
}

const toHundredths = (value: number): Printed => ({ as: 'number', value, decimals: 2 });

function colourWorking(season: Season, bale: ClassedBale): Working {
  const rd = readingSteps(season, bale, ({ reflectanceRd }) => ({ as: 'number', value: reflectanceRd, decimals: 1 }), {
    lot: 'lotReflectance',
    own: 'ownReflectance',
    record: 'recordReflectance',
  });
  const eye = bale.byEye;
  return procedure(
    [
      ...rd,
      step('yellowness', { as: 'number', value: bale.reading.yellownessB, decimals: 1 }, at),
      step(
        'colorChart',
        { as: 'text', text: bale.color },
        read(season.field.variety.kind === 'pima' ? pimaColourSteps : colourSteps),
      ),
    ],
    { as: 'text', text: eye ? eye.colorName : bale.color },
  );
}

function leafWorking(season: Season, bale: ClassedBale): Working {
  const { kind } = season.field.variety;
  const trash = readingSteps(season, bale, ({ trashAreaPercent }) => ({
    as: 'percent',
    value: trashAreaPercent,
    decimals: 2,
  }));
  return procedure([...trash, step('leafEdge', count(bale.leaf), read(leafEdges[kind]))], count(bale.leaf));
}

function stapleWorking(season: Season, bale: ClassedBale): Working {
  const { kind } = season.field.variety;
  const length = readingSteps(season, bale, ({ lengthIn }) => exact(lengthIn, 'inches'));
  const eye = bale.byEye;
  return procedure([...length, step('thirtySeconds', exact(bale.staple32nds), read(stapleChart[kind]))], {
    as: 'text',
    text: eye ? eye.staple.sixteenthsName : `${bale.staple32nds}/32`,
  });
}

function premiumWorking(season: Season, bale: ClassedBale): Working {
  const { scenario } = season;
  const market = markets[scenario.decisions.classing.market];
  const table = (item: string) =>
    item === 'grade'
      ? market.grades
      : item === 'micronaire' || item === 'strength' || item === 'uniformity'
        ? market[item]
        : market.extraneous;
  return procedure(
    bale.basis === 'market'
      ? bale.points.map(({ item, points }) =>
          step({ points: item }, { as: 'number', value: points, decimals: 0 }, read(table(item))),
        )
      : [step('onePrice', exact(bale.baseCentsPerLb, 'centsPerPound'), priceSource(season, bale))],
    { as: 'number', value: bale.points.reduce((sum, { points }) => sum + points, 0), decimals: 0 },
  );
}

/** Where the base price was read. */
function priceSource({ scenario }: Season, bale: ClassedBale): Origin {
  if (bale.basis === 'loanRate') return read(presentMoney.pimaLoanCentsPerLb);
  const crop = bale.basis === 'seasonAverage' ? priceOfCrop(bale.priceYear) : null;
  return crop ? read(crop) : read(markets[scenario.decisions.classing.market].baseCentsPerLb);
}

function valueWorking(season: Season, bale: ClassedBale): Working {
  return formula(
    'baleValue',
    [
      input('W', 'poundsPaid', exact(bale.paidLb, 'pounds'), bale.waterRule === 'none' ? atStation('pressing') : above),
      input('B', 'basePrice', exact(bale.baseCentsPerLb, 'centsPerPound'), priceSource(season, bale)),
      input('P', 'pointsSum', exact(bale.premiumPoints, 'points'), at),
    ],
    exact(bale.valueUsd, 'dollars'),
    { as: 'money', value: bale.valueUsd, decimals: 2 },
  );
}

/** The working of one number of one bale; null where the season has no such bale. */
export function baleWorking(season: Season, number: number, key: BaleKey): Working | null {
  const bale = season.classing?.classed.find((each) => each.number === number);
  if (!bale) return null;
  switch (key) {
    case 'net':
      return netWorking(season, bale);
    case 'gross':
      return grossWorking(season, bale);
    case 'color':
      return colourWorking(season, bale);
    case 'leaf':
      return leafWorking(season, bale);
    case 'staple':
      return stapleWorking(season, bale);
    case 'micronaire':
      return procedure(
        [
          ...readingSteps(season, bale, ({ micronaire }) => toHundredths(micronaire)),
          step('moduleSpread', exact(spread.sharedCorrelation.value), read(spread.sharedCorrelation)),
        ],
        { as: 'micronaire', value: bale.reading.micronaire },
      );
    case 'strength':
      return procedure(
        [
          ...readingSteps(season, bale, ({ strengthGPerTex }) => exact(strengthGPerTex, 'gramsPerTex')),
          step('moduleSpread', exact(spread.sharedCorrelation.value), read(spread.sharedCorrelation)),
        ],
        { as: 'number', value: bale.reading.strengthGPerTex, decimals: 1 },
      );
    case 'premium':
      return premiumWorking(season, bale);
    case 'value':
      return valueWorking(season, bale);
  }
}
