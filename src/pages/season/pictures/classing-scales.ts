import { fill } from '../../../language/fill.ts';
import type { ClassedBale } from '../../../model/classing/class-bales.ts';
import { gradesOfGroup, named } from '../../../model/classing/colour.ts';
import {
  chartLean,
  colourGroups,
  colourSteps,
  pimaColourSteps,
  pimaLean,
} from '../../../model/classing/colour-chart-facts.ts';
import { micronaireClasses } from '../../../model/classing/descriptor-facts.ts';
import { leafEdges } from '../../../model/classing/facts.ts';
import { lengthArrayMm } from '../../../model/length/statistics.ts';
import { inchesFromMillimetres, MM_PER_INCH } from '../../../model/units.ts';
import type {
  ColourScale,
  LeafScale,
  LengthScale,
  MicronaireScale,
  PriceLine,
  PriceSlip,
  ScaleTick,
  StandardBoxes,
} from '../../../scene/stations/classing/classing-input.ts';
import { gradeText, lengthText, stapleText, type Told, totalText, valueText } from './classing-told.ts';

const POINTS_PER_CENT = 100;
/** Fibres of the lot that the sample is drawn with, at most. */
const fibresShown = 120;

/** Quarter inches with sixteenths between them, or centimetres with half ones, up to a length. */
function lengthTicks({ words: { unitSystem, formats, messages } }: Told, longestIn: number): ScaleTick[] {
  const us = unitSystem === 'us';
  const stepIn = us ? 1 / 16 : 0.5 / MM_PER_INCH;
  const each = us ? 4 : 10;
  const count = Math.floor(longestIn / stepIn + 1e-9);
  return Array.from({ length: count + 1 }, (_, i): ScaleTick => {
    const at = i * stepIn;
    // Half millimetres would be a blur: only whole ones and fives.
    if (!us && i % 2) return { at: -1 };
    if (i % each !== 0) return { at };
    if (i === 0) return { at, text: '0' };
    const sign = messages.units[us ? 'inches' : 'millimetres'].sign;
    const number = us ? formats.number(at, i % (each * 4) === 0 ? 0 : 2) : formats.count(i / 2);
    return { at, text: i === each * (us ? 4 : 2) ? `${number}\u00a0${sign}` : number };
  }).filter(({ at }) => at >= 0);
}

/** The lot's fibres, stretched to the bale's own length. */
export function lengthOf(told: Told): LengthScale {
  const { season, bale, own } = told;
  const { lot, lotReading } = season.classing!;
  const stretch = bale.reading.lengthIn / lotReading.lengthIn;
  const fibresIn = lengthArrayMm(lot.fibre.lengths, fibresShown)
    .map((mm) => inchesFromMillimetres(mm) * stretch)
    .sort((one, other) => other - one);
  const longestIn = Math.ceil((fibresIn[0] ?? 1) * 4) / 4;
  const { byEye, reading } = bale;
  return {
    name: byEye ? own.scales.pull : own.scales.length,
    value: byEye
      ? stapleText(told)
      : fill(own.lengthValue, { length: lengthText(told, reading.lengthIn), staple: stapleText(told) }),
    ...(byEye ? {} : { short: lengthText(told, reading.lengthIn) }),
    fibresIn,
    atIn: byEye ? byEye.staple.sixteenths / 16 : reading.lengthIn,
    longestIn,
    ticks: lengthTicks(told, longestIn),
    byHand: byEye !== null,
  };
}

/** The model's own colour chart with every bale of the season, or the boxes a classer judged by. */
export function colourOf({ season, bale, own }: Told): ColourScale | StandardBoxes {
  const { classed, lot } = season.classing!;
  if (bale.byEye) {
    const { first, last } = gradesOfGroup(1);
    const digit = Number(bale.color[0]);
    return {
      kind: 'boxes',
      name: own.scales.eye,
      value: bale.colorName,
      boxes: last - first + 1,
      at: digit - first + 1,
      best: named(`${first}1`).colorName,
      worst: named(`${last}1`).colorName,
    };
  }
  const pima = lot.fibre.kind === 'pima';
  const grades = (count: number, group: string) => Array.from({ length: count }, (_, i) => `${i + 1}${group}`);
  const place = ({ reading }: ClassedBale) => ({ rd: reading.reflectanceRd, b: reading.yellownessB });
  return {
    kind: 'chart',
    name: own.scales.color,
    value: pima ? bale.colorName : `${bale.color} ${bale.colorName}`,
    short: bale.color,
    groups: pima
      ? []
      : colourGroups.rows.map(({ belowB, leans }) => ({
          b: belowB,
          perRd: leans ? chartLean.perRd.value : 0,
          fromRd: chartLean.fromRd.value,
        })),
    steps: pima
      ? {
          rd: pimaColourSteps.rows,
          weight: -pimaLean.yellownessWeight.value,
          fromB: pimaLean.soundB.value,
          codes: grades(pimaColourSteps.rows.length + 1, ''),
        }
      : {
          rd: colourSteps.rows,
          weight: chartLean.yellownessWeight.value,
          fromB: chartLean.yellownessFrom.value,
          codes: grades(colourSteps.rows.length, '1'),
        },
    at: place(bale),
    others: classed.slice(1).map(place),
  };
}

const paysOf = { discountLow: -1, base: 0, premium: 1, discountHigh: -1 } as const;

export function micronaireOf({ season, bale, own, words: { formats } }: Told): MicronaireScale | null {
  if (bale.byEye) return null;
  const others = season.classing!.classed.slice(1).map(({ reading }) => reading.micronaire);
  const edges = micronaireClasses.rows.slice(1).map(({ from }) => from);
  const all = [...others, bale.reading.micronaire];
  const pima = season.classing!.lot.fibre.kind === 'pima';
  return {
    name: own.scales.micronaire,
    value: formats.micronaire(bale.reading.micronaire).text,
    from: Math.min(2.9, ...all.map((each) => each - 0.2)),
    to: Math.max(5.6, ...all.map((each) => each + 0.2)),
    // The published classes are the upland market's: Pima has none in the model.
    classes: pima
      ? [{ from: 0, pays: 0 }]
      : micronaireClasses.rows.map(({ from, word }) => ({ from, pays: paysOf[word] })),
    ticks: (pima ? [3, 4, 5] : edges).map((at) => ({ at, text: formats.number(at, 1) })),
    at: bale.reading.micronaire,
    others,
  };
}

export function leafOf({ season, bale, own, words: { formats } }: Told): LeafScale | null {
  if (bale.byEye) return null;
  const { classed, lot } = season.classing!;
  const grades = leafEdges[lot.fibre.kind].rows.length + 1;
  return {
    name: own.scales.leaf,
    value: formats.count(bale.leaf),
    grades,
    at: bale.leaf,
    bales: Array.from({ length: grades }, (_, i) => classed.filter(({ leaf }) => leaf === i + 1).length),
  };
}

/** The sum as the model makes it: points are hundredths of a cent a pound. */
export function priceOf(told: Told): PriceSlip {
  const { season, bale, own, words } = told;
  const { formats, messages } = words;
  const { price } = own;
  const year = String(bale.priceYear);
  const cents = (value: number) => `${value > 0 ? '+' : ''}${formats.number(value, 2)}`;
  const detail: Readonly<Record<ClassedBale['points'][number]['item'], string>> = {
    grade: fill(price.grade, { grade: gradeText(told) }),
    micronaire: fill(price.micronaire, { value: formats.micronaire(bale.reading.micronaire).text }),
    strength: fill(price.strength, { value: formats.strength(bale.reading.strengthGPerTex).number }),
    uniformity: fill(price.uniformity, { value: formats.number(bale.reading.uniformityPercent, 1) }),
    extraneous:
      bale.extraneous
        .map(({ kind, level }) => fill(own.extraneous[kind], { level: own.levels[level === 1 ? 'light' : 'heavy'] }))
        .join('; ') || price.clean,
  };
  const { market } = season.scenario.decisions.classing;
  const title = {
    market: fill(price.market, { market: messages.decisions.classing.market.options[market], year }),
    loanRate: fill(price.loanRate, { year }),
    seasonAverage: fill(price.seasonAverage, { year }),
  }[bale.basis];
  const note = {
    market: bale.heldAtZero ? price.heldAtZero : '',
    loanRate: price.noPima,
    seasonAverage: price.noThirties,
  };
  return {
    title,
    lines: [
      {
        label: bale.basis === 'market' ? price.base : price.flat,
        text: formats.centsPerPound(bale.baseCentsPerLb).text,
        cents: 0,
      },
      ...bale.points.map(
        ({ item, points }): PriceLine => ({
          label: detail[item],
          text: cents(points / POINTS_PER_CENT),
          cents: points / POINTS_PER_CENT,
        }),
      ),
    ],
    total: totalText(told),
    value: valueText(told),
    note: note[bale.basis],
  };
}
