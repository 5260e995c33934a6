import { leafGrade, trashAreaOfReading } from '../model/classing/leaf.ts';
import type { InstrumentReading } from '../model/classing/reading.ts';
import { trashAreaPercent } from '../model/classing/trash-area.ts';
import { weatheredColour } from '../model/field/weathering.ts';
import type { Check } from './check.ts';
import { between, near } from './expected.ts';
import {
  baleMasses,
  classedCrop,
  classedLot,
  cropBales,
  pimaFarm,
  type TrashName,
  uplandFarm,
} from './fixtures/class-lots.ts';
import { once } from './fixtures/once.ts';
import { correlation, mean, standardDeviation } from './fixtures/sample-statistics.ts';

const area = (trash: TrashName) => trashAreaPercent(baleMasses(trash));
const crop = once(() => classedCrop(uplandFarm));
const pimaCrop = once(() => classedCrop(pimaFarm, 'pimaRoller'));
const field = once(() => classedLot({ micronaire: 4.6 }, 66, 'picked2', 8, 1).filter(({ called }) => !called));
type Channel = keyof InstrumentReading;
const channelOf = (bales: readonly { readonly reading: InstrumentReading }[], channel: Channel) =>
  bales.map(({ reading }) => reading[channel]);

const good = new Set(['11', '21', '31', '41', '12', '22', '32']);
/** Percent of bales at 41/32 or better when rain took some Rd and added some +b on every farm. */
const goodPercent = (rdLost: number, yellowed: number) => {
  const bales = classedCrop((normal) => {
    const cotton = uplandFarm(normal);
    return {
      ...cotton,
      reflectanceRd: cotton.reflectanceRd - rdLost,
      yellownessB: cotton.yellownessB + yellowed,
    };
  });
  return (100 * bales.filter(({ classed }) => good.has(classed.color)).length) / bales.length;
};
/** What three quarters of an inch of rain on open bolls does to the colour of the lint. */
function rained() {
  const [dry, wet] = [0, 0.75].map((inches) => weatheredColour('upland', inches, 0, 1));
  return goodPercent(dry!.reflectanceRd - wet!.reflectanceRd, wet!.yellownessB - dry!.yellownessB);
}

/** Weighted mean over a published distribution, percent of bales in each class. */
const weighted = (shares: readonly number[], value: (index: number) => number): number =>
  shares.reduce((sum, share, i) => sum + share * value(i), 0) / shares.reduce((sum, share) => sum + share, 0);
/** Percent of bales at trash readings 1 to 12. */
const trashOf = {
  Arkansas: [0.2, 4.1, 15.2, 24.4, 23.3, 16.2, 9.0, 4.4, 1.9, 0.8, 0.3, 0.1],
  Georgia: [2.4, 18.9, 27.0, 22.5, 14.5, 8.0, 3.8, 1.7, 0.7, 0.3, 0.1, 0.1],
} as const;
const meanLeaf = (shares: readonly number[]) => weighted(shares, (i) => leafGrade('upland', trashAreaOfReading(i + 1)));
const meanTrash = (shares: readonly number[]) => weighted(shares, (i) => trashAreaOfReading(i + 1));

const row = (check: Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>): Check => ({ link: 'classing', ...check });

const mp109 = 'USDA AMS MP_CN109, 7 February 2013';
const ge = 'Ge et al. 2008, Precision Agriculture';
const farmPress2011 = 'USDA AMS data in farm press, 2011';
const assumed = `a crop of ${cropBales} upland bales whose farms differ by assumption`;

/** Trash and leaf, crops of many bales, one field. */
export const classingCropChecks: readonly Check[] = [
  row({
    id: 'classing/trash-picked-2',
    kind: 'calibrated',
    what: 'trash area of picked lint behind two saw lint cleaners',
    source: 'USDA AMS MP_CN109 2013, Georgia .384; MP_CN103 2019, Abilene .430',
    unit: '% of the surface',
    expected: between(0.36, 0.45),
    ours: () => area('picked2'),
  }),
  ...(['picked1', 'picked2', 'picked3'] as const).map((trash, i) =>
    row({
      id: `classing/leaf-${trash}`,
      // The area for a mass was fitted to two lint cleaners.
      kind: trash === 'picked2' ? 'calibrated' : 'notTuned',
      what: `leaf grade of hairy picked cotton behind ${i + 1} saw lint ${i === 0 ? 'cleaner' : 'cleaners'}`,
      source: 'Mangialardi 1989, Beltwide 2232: the gain of a grade shrinks with each stage',
      unit: 'leaf grade',
      expected: near(i === 0 ? 4 : 3, 0),
      ours: () => leafGrade('upland', area(trash)),
    }),
  ),
  row({
    id: 'classing/trash-gain-shrinks',
    kind: 'notTuned',
    what: 'trash taken by the third saw lint cleaner over that taken by the second',
    source: 'Mangialardi 1989, Beltwide 2232: the gain of a grade shrinks with each stage',
    unit: 'ratio',
    expected: between(0, 0.999),
    ours: () => (area('picked2') - area('picked3')) / (area('picked1') - area('picked2')),
  }),
  row({
    id: 'classing/leaf-pima',
    kind: 'calibrated',
    what: 'leaf grade of roller-ginned Pima behind two roller-type lint cleaners',
    source: 'USDA AMS MP_CN104, 24 January 2019: leaf 2 was the commonest',
    unit: 'leaf grade',
    expected: near(2, 0),
    ours: () => leafGrade('pima', area('pimaRoller')),
  }),
  row({
    id: 'C12.trash',
    kind: 'plainSum',
    what: 'mean trash area of the Arkansas crop of 2012 from its published distribution of trash readings',
    source: mp109,
    unit: '% of the surface',
    expected: near(0.494, 0.005),
    ours: () => meanTrash(trashOf.Arkansas),
  }),
  row({
    id: 'C12.trash-Georgia',
    kind: 'plainSum',
    what: 'mean trash area of the Georgia crop of 2012 from its published distribution of trash readings',
    source: mp109,
    unit: '% of the surface',
    expected: near(0.384, 0.005),
    ours: () => meanTrash(trashOf.Georgia),
  }),
  row({
    id: 'C12.leaf',
    kind: 'notTuned',
    what: 'mean leaf grade of the Arkansas crop of 2012, from its published distribution of trash readings',
    source: 'USDA AMS Dumas office, farm press 2012; distribution: MP_CN109, 7 February 2013',
    unit: 'leaf grade',
    expected: near(4.11, 0.3),
    ours: () => meanLeaf(trashOf.Arkansas),
  }),
  row({
    id: 'C12.leaf-Georgia',
    kind: 'notTuned',
    what: 'mean leaf grade of the Georgia crop of 2012, from its published trash, against the Southeast of 2011',
    source: `${farmPress2011}: Southeast 3.2; distribution: MP_CN109, 7 February 2013`,
    unit: 'leaf grade',
    expected: near(3.2, 0.3),
    ours: () => meanLeaf(trashOf.Georgia),
  }),
  row({
    id: 'classing/crop-micronaire-sd',
    kind: 'calibrated',
    what: `standard deviation of micronaire in ${assumed}`,
    source: 'USDA AMS MP_CN103 and MP_CN109, season distributions of 2009 to 2018',
    unit: 'micronaire',
    expected: between(0.26, 0.57),
    ours: () => standardDeviation(channelOf(crop(), 'micronaire')),
  }),
  row({
    id: 'classing/crop-uniformity-sd',
    kind: 'calibrated',
    what: `standard deviation of uniformity in ${assumed}`,
    source: 'USDA AMS MP_CN103, 4 February 2010: 1.2 to 1.4 fitted to partial distributions, +/- .1',
    unit: 'points',
    expected: between(1.1, 1.5),
    ours: () => standardDeviation(channelOf(crop(), 'uniformityPercent')),
  }),
  row({
    id: 'classing/crop-trash-cv',
    kind: 'calibrated',
    what: `coefficient of variation of trash area in ${assumed}; one kind of gin`,
    source: 'USDA AMS MP_CN109 2013: .33 to .59 in whole states with all their gins',
    unit: 'ratio',
    expected: between(0.25, 0.59),
    ours: () => {
      const trash = channelOf(crop(), 'trashAreaPercent');
      return standardDeviation(trash) / mean(trash);
    },
  }),
  row({
    id: 'classing/crop-leaf',
    kind: 'notTuned',
    what: `mean leaf grade in ${assumed}`,
    source: `${farmPress2011}: Southeast`,
    unit: 'leaf grade',
    expected: near(3.2, 0.3),
    ours: () => mean(crop().map(({ classed }) => classed.leaf)),
  }),
  row({
    id: 'classing/crop-staple',
    kind: 'notTuned',
    what: `mean staple of farms that average 1.11 in, ${assumed}`,
    source: 'USDA AMS data in farm press, 2012: crop of 2012',
    unit: '1/32 in',
    expected: near(35.7, 0.5),
    ours: () => mean(crop().map(({ classed }) => classed.staple32nds)),
  }),
  row({
    id: 'classing/crop-extraneous',
    kind: 'calibrated',
    what: `bales called for extraneous matter in ${assumed}`,
    source: 'Quality of the 2002 crop, Beltwide 2003, and farm press 2011: 3 to 6 %; so few bales may draw 1 to 8',
    unit: '%',
    expected: between(1, 8),
    ours: () => (100 * crop().filter(({ called }) => called).length) / crop().length,
  }),
  row({
    id: 'classing/crop-colour',
    kind: 'calibrated',
    what: `bales at color 41/32 or better in ${assumed}`,
    source: 'Quality of the crop, Beltwide 1998 to 2002, and farm press to 2011: 85.2 to 96 % without 2002, +/- 3',
    unit: '%',
    expected: between(82.2, 99),
    ours: () => goodPercent(0, 0),
  }),
  row({
    id: 'C39',
    kind: 'notTuned',
    what: 'points of bales at 41/32 or better that a wet harvest costs, taken as three quarters of an inch of rain on open bolls',
    source: 'Quality of the 2002 crop, Beltwide 2003: 87 to 74 %',
    unit: 'points',
    expected: near(13, 10),
    ours: () => goodPercent(0, 0) - rained(),
  }),
  row({
    id: 'C16.mean',
    kind: 'plainSum',
    what: `mean uniformity of ${cropBales} Pima bales whose farms average as published`,
    source: 'USDA AMS MP_CN104, 24 January 2019',
    unit: '%',
    expected: near(86.3, 0.25),
    ours: () => mean(channelOf(pimaCrop(), 'uniformityPercent')),
  }),
  row({
    id: 'C16.sd',
    kind: 'calibrated',
    what: `standard deviation of uniformity of ${cropBales} Pima bales`,
    source: 'USDA AMS MP_CN104, 24 January 2019',
    unit: 'points',
    expected: near(0.84, 0.15),
    ours: () => standardDeviation(channelOf(pimaCrop(), 'uniformityPercent')),
  }),
  row({
    id: 'C36.range',
    kind: 'notTuned',
    what: 'prices of 66 samples of one field differ by, at the Southeast differences',
    source: `${ge}: 9.1 c/lb of loan value`,
    unit: 'c/lb',
    expected: between(3, 10),
    ours: () => {
      const prices = field().map(({ classed }) => classed.priceCentsPerLb);
      return Math.max(...prices) - Math.min(...prices);
    },
  }),
  ...(['lengthIn', 'uniformityPercent', 'strengthGPerTex', 'micronaire'] as const).map((channel) =>
    row({
      id: `C36.cv-${channel}`,
      kind: 'calibrated',
      what: `coefficient of variation of ${channel.replace(/[A-Z].*/, '')} over 66 samples of one field`,
      source: ge,
      unit: '%',
      expected: between(0, 10),
      ours: () => {
        const values = channelOf(field(), channel);
        return (100 * standardDeviation(values)) / mean(values);
      },
    }),
  ),
  row({
    id: 'C36.brighter-less-yellow',
    kind: 'calibrated',
    what: 'correlation of Rd with +b over 66 samples of one field: its sign',
    source: ge,
    unit: 'correlation',
    expected: between(-1, -0.01),
    ours: () => correlation(channelOf(field(), 'reflectanceRd'), channelOf(field(), 'yellownessB')),
  }),
  row({
    id: 'C36.longer-stronger',
    kind: 'calibrated',
    what: 'correlation of length with strength over 66 samples of one field: its sign',
    source: ge,
    unit: 'correlation',
    expected: between(0.01, 1),
    ours: () => correlation(channelOf(field(), 'lengthIn'), channelOf(field(), 'strengthGPerTex')),
  }),
];
