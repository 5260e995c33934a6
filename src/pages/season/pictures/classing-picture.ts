import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import { kilogramsFromPounds, MM_PER_INCH, THIRTY_SECONDS_PER_INCH } from '../../../model/units.ts';
import type { ClassingScene, PriceLine } from '../../../scene/stations/classing/classing-input.ts';
import { classingScene, tuftKgOf } from '../../../scene/stations/classing/classing-scene.ts';
import type { BaleKey } from '../../../workings/bale.ts';
import { above, atStation } from '../../../workings/steps.ts';
import type { Printed, Step } from '../../../workings/working.ts';
import { printed } from '../printed.ts';
import { colourOf, leafOf, lengthOf, micronaireOf, priceOf } from './classing-scales.ts';
import { balesText, lengthText, stapleText, type Told, toldOf, totalText, weightText } from './classing-told.ts';
import type { PictureMoment, PictureSize, StationPicture, TwinRow } from './picture.ts';
import { drawnStep, said } from './row-steps.ts';

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

const lengthValue = (inches: number) => ({ as: 'fibreLength', value: inches * MM_PER_INCH }) as const;

/** A line of the price: the base as it is quoted, what is added or taken off in cents a pound. */
const priceStep = ({ bale }: Told, { label, cents }: PriceLine, i: number): Step =>
  i === 0
    ? said(label, { as: 'centsPerPound', value: bale.baseCentsPerLb }, { at: 'sale' })
    : said(label, { as: 'number', value: cents, decimals: 2 }, above);

/** The scene of a season: null where no bale was classed. */
export function classingInput(season: Season, words: Words, size: PictureSize): ClassingScene | null {
  const told = toldOf(season, words);
  return told && sceneOf(told, size);
}

/** The classing room: a bale sampled from both sides, read on its scales, priced line by line. */
export const classingPicture: StationPicture = {
  layOut(season, words, size) {
    const input = classingInput(season, words, size);
    if (!input) return () => null;
    const frameAt = classingScene(input);
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
      own.seeMicronaire,
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
    const row = (key: keyof typeof own.rows, text: string, steps: readonly Step[], of?: BaleKey): TwinRow => ({
      key,
      label: own.rows[key],
      text,
      steps,
      ...(of ? { after: { topic: 'bale', number: bale.number, key: of } } : {}),
    });
    const recorded = (key: keyof typeof own.rows, value: Printed): Step =>
      said(own.rows[key], value, atStation('classing'));
    const code = (key: keyof typeof own.rows, text: string) => [recorded(key, { as: 'text', text })];
    const tuftKg = tuftKgOf({ inflow: ledger.inflow.get('lot')!, unitKg: ledger.unitKg });
    const read = bale.byEye
      ? [
          row('staple', stapleText(told), code('staple', stapleText(told)), 'staple'),
          row('grade', bale.colorName, code('grade', bale.colorName)),
        ]
      : [
          row(
            'length',
            `${lengthText(told, bale.reading.lengthIn)}, ${stapleText(told)}`,
            [
              recorded('length', lengthValue(bale.reading.lengthIn)),
              recorded('staple', { as: 'count', value: bale.staple32nds }),
              said(own.rows.staple, { as: 'count', value: THIRTY_SECONDS_PER_INCH }, { at: 'definition' }),
            ],
            'staple',
          ),
          row('color', colourOf(told).value, code('color', colourOf(told).value), 'color'),
          row(
            'micronaire',
            formats.micronaire(bale.reading.micronaire).text,
            [recorded('micronaire', { as: 'micronaire', value: bale.reading.micronaire })],
            'micronaire',
          ),
          row('leaf', formats.count(bale.leaf), [recorded('leaf', { as: 'count', value: bale.leaf })], 'leaf'),
        ];
    return [
      row('bale', bale.tag ?? bale.mark ?? '', code('bale', bale.tag ?? bale.mark ?? '')),
      row('in', ledger.massIn('lot'), ledger.steps('in', 'lot')),
      row('sample', ledger.massOut('classingSample', progress), ledger.steps('out', 'classingSample', progress)),
      row('onward', ledger.massOut('lot', progress), ledger.steps('out', 'lot', progress)),
      ...read,
      ...priceOf(told).lines.map(
        (line, i): TwinRow => ({
          key: `price${i}`,
          label: line.label,
          text: line.text,
          steps: [priceStep(told, line, i)],
          ...(i === 0 ? {} : { after: { topic: 'bale', number: bale.number, key: 'premium' } }),
        }),
      ),
      row('total', totalText(told), [
        ...priceOf(told).lines.map((line, i) => priceStep(told, line, i)),
        said(own.rows.total, { as: 'centsPerPound', value: bale.priceCentsPerLb }, above),
      ]),
      row('value', formats.money(bale.valueUsd), [recorded('value', { as: 'money', value: bale.valueUsd })], 'value'),
      row('tuft', formats.mass(tuftKg, 0).text, [drawnStep(own.rows.tuft, { as: 'mass', value: tuftKg, decimals: 0 })]),
    ];
  },
  said(season, words) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { bale, own } = told;
    const { formats } = words;
    const value = (key: string, label: string, from: Exclude<Printed, { as: 'exact' }>, of: BaleKey): TwinRow => ({
      key,
      label,
      text: printed(from, words),
      steps: [said(label, from, atStation('classing'))],
      after: { topic: 'bale', number: bale.number, key: of },
    });
    return [
      {
        key: 'number',
        label: own.rows.bale,
        text: formats.count(bale.number),
        steps: [said(own.rows.bale, { as: 'count', value: bale.number }, atStation('pressing'))],
      },
      value('weight', own.rows.weight, { as: 'mass', value: kilogramsFromPounds(bale.paidLb), decimals: 0 }, 'net'),
      value('ownLength', own.rows.length, lengthValue(bale.ownReading.lengthIn), 'staple'),
      value('recordLength', own.rows.length, lengthValue(bale.reading.lengthIn), 'staple'),
      value(
        'ownMicronaire',
        own.rows.micronaire,
        { as: 'micronaire', value: bale.ownReading.micronaire },
        'micronaire',
      ),
      {
        key: 'bales',
        label: own.rows.bale,
        text: balesText(told),
        steps: [said(balesText(told), { as: 'count', value: season.classing!.classed.length }, atStation('pressing'))],
      },
    ];
  },
};
