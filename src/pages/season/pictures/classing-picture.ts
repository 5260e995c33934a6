import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
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
import type { Season } from '../../../model/season.ts';
import {
  inchesFromMillimetres,
  kilogramsFromPounds,
  MM_PER_INCH,
  THIRTY_SECONDS_PER_INCH,
} from '../../../model/units.ts';
import type {
  ClassingScene,
  ColourScale,
  LeafScale,
  LengthScale,
  MicronaireScale,
  PriceLine,
  PriceSlip,
  ScaleTick,
  StandardBoxes,
} from '../../../scene/stations/classing/classing-input.ts';
import { classingScene, tuftKgOf } from '../../../scene/stations/classing/classing-scene.ts';
import type { BaleKey } from '../../../workings/bale.ts';
import { above, atStation } from '../../../workings/steps.ts';
import type { Step } from '../../../workings/working.ts';
import { type ClassingWords, classingWords } from './classing-words.ts';
import { type PictureLedger, pictureLedger } from './ledger-words.ts';
import type { PictureMoment, PictureSize, StationPicture, TwinRow } from './picture.ts';
import { drawnStep, said } from './row-steps.ts';

const POINTS_PER_CENT = 100;
/** Fibres of the lot that the sample is drawn with, at most. */
const fibresShown = 120;

interface Told {
  readonly season: Season;
  readonly words: Words;
  readonly own: ClassingWords;
  readonly bale: ClassedBale;
  readonly ledger: PictureLedger;
}

/** What the picture is about: the season's first bale; null where no bale was classed. */
function toldOf(season: Season, words: Words): Told | null {
  const ledger = pictureLedger(season, 'classing', words);
  const bale = season.classing?.classed[0];
  if (!ledger || !bale || !ledger.inflow.has('lot') || !ledger.outflow.has('lot')) return null;
  return { season, words, own: classingWords(words.language), bale, ledger };
}

const lengthText = ({ words }: Told, inches: number): string => words.formats.fibreLength(inches * MM_PER_INCH).text;
const stapleText = ({ bale, own }: Told): string =>
  bale.byEye
    ? fill(own.staple, { staple: bale.byEye.staple.sixteenthsName })
    : `${bale.staple32nds}/${THIRTY_SECONDS_PER_INCH}`;
const gradeText = ({ bale }: Told): string => `${bale.color}-${bale.leaf}-${bale.staple32nds}`;
const weightText = ({ words, bale }: Told): string => words.formats.mass(kilogramsFromPounds(bale.paidLb), 0).text;
const totalText = ({ words, bale }: Told): string => words.formats.centsPerPound(bale.priceCentsPerLb).text;
const valueText = (told: Told): string =>
  fill(told.own.price.value, { weight: weightText(told), money: told.words.formats.money(told.bale.valueUsd) });
const balesText = ({ season, words }: Told): string =>
  words.formats.plural(season.classing?.classed.length ?? 0, words.messages.cloth.bale.bales);

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
function lengthOf(told: Told): LengthScale {
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
function colourOf({ season, bale, own }: Told): ColourScale | StandardBoxes {
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

function micronaireOf({ season, bale, own, words: { formats } }: Told): MicronaireScale | null {
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

function leafOf({ season, bale, own, words: { formats } }: Told): LeafScale | null {
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
function priceOf(told: Told): PriceSlip {
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

/** Digits of a tag's gin code; the bale's running number follows. */
const GIN_CODE_DIGITS = 5;

function sceneOf(told: Told, size: PictureSize): ClassingScene {
  const { season, words, own, bale, ledger } = told;
  const { formats } = words;
  const roomy = size.width > 700;
  const { tag, mark } = bale;
  return {
    size,
    unitKg: ledger.unitKg,
    wrap: season.scenario.era === 'thirties' ? 'jute' : 'bag',
    inflow: ledger.inflow.get('lot')!,
    onward: ledger.outflow.get('lot')!,
    length: lengthOf(told),
    colour: colourOf(told),
    micronaire: micronaireOf(told),
    leaf: leafOf(told),
    price: priceOf(told),
    labels: {
      inflow: fill(own.in, { mass: ledger.massIn('lot') }),
      coupon: tag === null ? [mark ?? ''] : [tag.slice(0, GIN_CODE_DIGITS), tag.slice(GIN_CODE_DIGITS)],
      couponNote: tag === null ? own.ginMark : fill(own.inventedCode, { code: tag.slice(0, GIN_CODE_DIGITS) }),
      sample: (progress) => fill(own.sample, { mass: ledger.massOut('classingSample', progress) }),
      onward: (progress) => fill(own.onward, { mass: ledger.massOut('lot', progress) }),
      caption: (kg) =>
        fill(bale.byEye ? own.captionEye : roomy ? own.caption : own.captionShort, {
          tuft: formats.mass(kg, 0).text,
          number: formats.count(bale.number),
          bales: balesText(told),
        }),
    },
  };
}

/** The classing room: a bale sampled from both sides, read on its scales, priced line by line. */
export const classingPicture: StationPicture = {
  layOut(season, words, size) {
    const told = toldOf(season, words);
    if (!told) return () => null;
    const frameAt = classingScene(sceneOf(told, size));
    return ({ progress }: PictureMoment) => frameAt(progress);
  },
  see(season, words) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { own, bale, ledger } = told;
    const { formats } = words;
    const number = formats.count(bale.number);
    const sample = ledger.massOut('classingSample');
    const money = { weight: weightText(told), money: formats.money(bale.valueUsd), total: totalText(told) };
    const flat = [fill(own.seeFlat, money)];
    if (bale.byEye)
      return [
        fill(own.seeThirties, { number, sample }),
        fill(own.seeEye, { staple: stapleText(told), grade: bale.colorName }),
        own.fibers,
        ...flat,
      ];
    const { reading, ownReading } = bale;
    const averaged = reading.lengthIn !== ownReading.lengthIn || reading.micronaire !== ownReading.micronaire;
    return [
      fill(own.see, { number, sample }),
      fill(own.seeRead, {
        length: lengthText(told, reading.lengthIn),
        color: bale.colorName,
        micronaire: formats.micronaire(reading.micronaire).text,
        leaf: formats.count(bale.leaf),
      }),
      ...(averaged
        ? [
            fill(own.seeAveraged, {
              length: lengthText(told, ownReading.lengthIn),
              micronaire: formats.micronaire(ownReading.micronaire).text,
            }),
          ]
        : []),
      ...(bale.basis === 'market'
        ? [fill(own.seePrice, { ...money, base: formats.centsPerPound(bale.baseCentsPerLb).text })]
        : flat),
      fill(own.seeScale, { bales: balesText(told) }),
      `${own.seeChart} ${own.fibers}`,
    ];
  },
  rows(season, words, { progress }) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { own, bale, ledger } = told;
    const { formats } = words;
    const row = (key: keyof typeof own.rows, text: string, steps: readonly Step[] = [], of?: BaleKey): TwinRow => ({
      key,
      label: own.rows[key],
      text,
      steps: steps.length > 0 || !of ? steps : [said(own.rows[key], { as: 'text', text }, atStation('classing'))],
      ...(of ? { after: { topic: 'bale', number: bale.number, key: of } } : {}),
    });
    const tuftKg = tuftKgOf({ inflow: ledger.inflow.get('lot')!, unitKg: ledger.unitKg });
    const read = bale.byEye
      ? [row('staple', stapleText(told), [], 'staple'), row('grade', bale.colorName)]
      : [
          row('length', `${lengthText(told, bale.reading.lengthIn)}, ${stapleText(told)}`, [], 'staple'),
          row('color', colourOf(told).value, [], 'color'),
          row('micronaire', formats.micronaire(bale.reading.micronaire).text, [], 'micronaire'),
          row('leaf', formats.count(bale.leaf), [], 'leaf'),
        ];
    return [
      row('bale', bale.tag ?? bale.mark ?? '', [
        said(own.rows.bale, { as: 'text', text: bale.tag ?? bale.mark ?? '' }, atStation('pressing')),
      ]),
      row('in', ledger.massIn('lot'), ledger.steps('in', 'lot')),
      row('sample', ledger.massOut('classingSample', progress), ledger.steps('out', 'classingSample', progress)),
      row('onward', ledger.massOut('lot', progress), ledger.steps('out', 'lot', progress)),
      ...read,
      ...priceOf(told).lines.map(
        ({ label, text }, i): TwinRow => ({
          key: `price${i}`,
          label,
          text,
          steps: [said(label, { as: 'text', text }, i === 0 ? { at: 'sale' } : above)],
          ...(i === 0 ? {} : { after: { topic: 'bale', number: bale.number, key: 'premium' } }),
        }),
      ),
      row('total', totalText(told), [
        ...priceOf(told).lines.map(({ label, text }) => said(label, { as: 'text', text }, { at: 'sale' })),
        said(own.rows.total, { as: 'centsPerPound', value: bale.priceCentsPerLb }, above),
      ]),
      row('value', formats.money(bale.valueUsd), [], 'value'),
      row('tuft', formats.mass(tuftKg, 0).text, [drawnStep(own.rows.tuft, { as: 'mass', value: tuftKg, decimals: 0 })]),
    ];
  },
  said(season, words) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { bale, own } = told;
    const { formats } = words;
    const value = (key: string, label: string, text: string, of: BaleKey): TwinRow => ({
      key,
      label,
      text,
      steps: [said(label, { as: 'text', text }, atStation('classing'))],
      after: { topic: 'bale', number: bale.number, key: of },
    });
    return [
      {
        key: 'number',
        label: own.rows.bale,
        text: formats.count(bale.number),
        steps: [said(own.rows.bale, { as: 'count', value: bale.number }, atStation('pressing'))],
      },
      value('weight', own.rows.weight, weightText(told), 'net'),
      value('ownLength', own.rows.length, lengthText(told, bale.ownReading.lengthIn), 'staple'),
      value('recordLength', own.rows.length, lengthText(told, bale.reading.lengthIn), 'staple'),
      value('ownMicronaire', own.rows.micronaire, formats.micronaire(bale.ownReading.micronaire).text, 'micronaire'),
      {
        key: 'bales',
        label: own.rows.bale,
        text: balesText(told),
        steps: [said(balesText(told), { as: 'count', value: season.classing!.classed.length }, atStation('pressing'))],
      },
    ];
  },
};
