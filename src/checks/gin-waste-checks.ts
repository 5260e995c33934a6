import { wasteByGridBarsLb } from '../model/gin/lint-cleaner.ts';
import { type MachineStep, removedTo, trashRemovedFraction } from '../model/gin/machine-step.ts';
import { groupDryKg, type Lot, type Part, totalDryKg, totalKg, totalWaterKg } from '../model/lot.ts';
import type { Check } from './check.ts';
import { between, near, nearShare } from './expected.ts';
import {
  delivered,
  fieldCleanedRun,
  gathered,
  ginAll,
  onceGinned,
  picked,
  runWith,
  standardRun,
  stripped,
  strippedRun,
  twoSticks,
} from './fixtures/hand-made-lot.ts';

type Run = ReturnType<typeof ginAll>;

const ginned = (method: 'spindle' | 'stripper' | 'hand', foreignMatter: number, lintShare: number): Run =>
  onceGinned(`${method} ${foreignMatter} ${lintShare}`, () =>
    method === 'stripper'
      ? ginAll(delivered({ method, foreignMatter, lintShare }), method, twoSticks)
      : ginAll(delivered({ method, foreignMatter, lintShare }), method),
  );
const lintCleaner = (run: Run, stage: 1 | 2): MachineStep =>
  run.ginned.machines.find(({ machine }) => machine === `lintCleaner${stage}`)!;
const seedCottonStep = (run: Run, machine: string): MachineStep =>
  run.cleaned.machines.find((step) => step.machine === machine)!;
const trashShare = ({ in: before, out }: MachineStep) => trashRemovedFraction(before, out);
const beforeFeeder = (lot: Lot, run: Run) => trashRemovedFraction(lot, seedCottonStep(run, 'distributor').out);
/** Parts in the seed cotton at the stand, % of its dry weight. */
const atStand = ({ cleaned }: Run, ...parts: readonly Part[]) =>
  (100 * parts.reduce((sum, part) => sum + cleaned.lot.dryKg[part], 0)) / totalDryKg(cleaned.lot.dryKg);
const trashFrom = (method: 'stripper' | 'stripperFieldCleaner') => groupDryKg(gathered(method).dryKg, 'trash');
/** Lint thrown out with the gin trash, lb for a 480-lb bale. */
const lintInTrashLb = ({ cleaned, ginned: { machines }, pressed }: Run) =>
  (removedTo([...cleaned.machines, ...machines], 'ginTrash').dryKg.lint / totalKg(pressed.lot)) * 480;

const ers = 'USDA ERS Statistical Bulletin 929, season 1994/95';
const ashley = 'Ashley, Thomas, Holt & Valco 2018, J. Cotton Sci. 22(1):47-59';
const holt = 'Holt in deltafarmpress.com, gin waste';
const baker = 'Baker & Lalor, multistage trash extractor, Beltwide 2694';

const seedCottonChecks: readonly Check[] = [
  {
    id: 'G2',
    link: 'gin',
    kind: 'calibrated',
    what: 'picked seed cotton for a 480-lb bale, lint share .387, foreign matter .10, within 4 %',
    source: ers,
    unit: 'lb',
    expected: nearShare(1444, 0.04),
    ours: () => ginned('spindle', 0.1, 0.387).summary.seedCottonLbPer480LbBale,
  },
  {
    id: 'G3',
    link: 'gin',
    kind: 'calibrated',
    what: 'stripped seed cotton for a 480-lb bale, lint share .36, foreign matter .38, within 5 %',
    source: `${ers}: 2,153; Bulletin 877, season 1992/93: 2,234`,
    unit: 'lb',
    expected: between(2153 * 0.95, 2234 * 1.05),
    ours: () => ginned('stripper', 0.38, 0.36).summary.seedCottonLbPer480LbBale,
  },
  {
    id: 'gin/hand-picked-bale',
    link: 'gin',
    kind: 'notTuned',
    what: 'hand-picked seed cotton for a 480-lb bale, 36.5 % lint in all, 2.5 % foreign matter',
    source: 'USDA Agriculture Handbook 503 and older ERS bulletins, from memory: 1,300-1,400 lb at 35-38 % lint',
    unit: 'lb',
    expected: between(1300, 1400),
    ours: () => ginned('hand', 0.025, 0.365 / 0.975).summary.seedCottonLbPer480LbBale,
  },
  {
    id: 'G5',
    link: 'gin',
    kind: 'calibrated',
    what: 'seed of a 500-lb bale, lint share .425, within 3 %',
    source: ashley,
    unit: 'lb',
    expected: between(696 * 0.97, 700 * 1.03),
    ours: () => standardRun().summary.seedLbPer500LbBale,
  },
  {
    id: 'G6',
    link: 'gin',
    kind: 'notTuned',
    what: 'seed of a 500-lb bale, lint share .387, within 3 %',
    source: ashley,
    unit: 'lb',
    expected: nearShare(823, 0.03),
    ours: () => ginned('spindle', 0.08, 0.387).summary.seedLbPer500LbBale,
  },
  {
    id: 'gin/turnout-picked',
    link: 'gin',
    kind: 'calibrated',
    what: 'turnout of picked cotton',
    source: `${ers}: 33.2; state variety trials, from memory: 36-42`,
    unit: '%',
    expected: between(33, 42),
    ours: () => 100 * standardRun().summary.turnout,
  },
  {
    id: 'gin/turnout-stripped',
    link: 'gin',
    kind: 'calibrated',
    what: 'turnout of stripped cotton without a field cleaner',
    source: `${ers}: 22.3; Lubbock papers, from memory: to 29`,
    unit: '%',
    expected: between(22, 34),
    ours: () => 100 * strippedRun().summary.turnout,
  },
  {
    id: 'gin/turnout-field-cleaned',
    link: 'gin',
    kind: 'notTuned',
    what: 'turnout of stripped cotton with a field cleaner',
    source: 'Texas A&M and USDA-ARS Lubbock papers, from memory: 28-34',
    unit: '%',
    expected: between(28, 34),
    ours: () => 100 * fieldCleanedRun().summary.turnout,
  },
];

const wasteChecks: readonly Check[] = [
  {
    id: 'G7',
    link: 'gin',
    kind: 'calibrated',
    what: 'gin waste of a bale of picked cotton',
    source: holt,
    unit: 'lb',
    expected: between(75, 125),
    ours: () => standardRun().summary.wasteLbPer480LbBale,
  },
  {
    id: 'G8',
    link: 'gin',
    kind: 'calibrated',
    what: 'gin waste of a bale of stripped cotton with a field cleaner',
    source: holt,
    unit: 'lb',
    expected: between(300, 450),
    ours: () => fieldCleanedRun().summary.wasteLbPer480LbBale,
  },
  {
    id: 'G9',
    link: 'gin',
    kind: 'calibrated',
    what: 'gin waste of a bale of stripped cotton, within 10 %',
    source: holt,
    unit: 'lb',
    expected: nearShare(700, 0.1),
    ours: () => strippedRun().summary.wasteLbPer480LbBale,
  },
  {
    id: 'gin/waste-picked-epa',
    link: 'gin',
    kind: 'knownMiss',
    what: 'gin waste of a 500-lb bale of picked cotton, about 150 lb within 10 %',
    source: 'EPA AP-42 section 9.7, as quoted elsewhere',
    unit: 'lb',
    expected: nearShare(150, 0.1),
    recorded: { value: 118, tolerance: 6 },
    reason: 'two published figures disagree; the trash that comes along was chosen for Holt’s 75-125 lb',
    ours: () => standardRun().summary.wasteLbPer500LbBale,
  },
  {
    id: 'gin/waste-stripped-epa',
    link: 'gin',
    kind: 'knownMiss',
    what: 'gin waste of a 500-lb bale of stripped cotton, about 1,000 lb within 10 %',
    source: 'EPA AP-42 section 9.7, as quoted elsewhere',
    unit: 'lb',
    expected: nearShare(1000, 0.1),
    recorded: { value: 727, tolerance: 30 },
    reason: 'two published figures disagree; the trash that comes along was chosen for Holt’s 700 lb',
    ours: () => strippedRun().summary.wasteLbPer500LbBale,
  },
  {
    id: 'gin/lint-in-trash',
    link: 'gin',
    kind: 'knownMiss',
    what: 'fiber left in the trash of a bale: normally 10-12 lb',
    source: 'Valco in cottonfarming.com, November 2010',
    unit: 'lb',
    expected: between(10, 12),
    recorded: { value: 7.12, tolerance: 0.3 },
    reason: 'lint lost by each seed-cotton machine is assumed, and comes out a third too low',
    ours: () => lintInTrashLb(standardRun()),
  },
  {
    id: 'G10',
    link: 'gin',
    kind: 'calibrated',
    what: 'foreign matter left by a field cleaner over what the stripper takes: less than half',
    source: 'Smith, Jones & Miller, Texas Agricultural Experiment Station, cleaning mechanically harvested cotton',
    unit: 'ratio',
    expected: between(0, 0.499),
    ours: () => trashFrom('stripperFieldCleaner') / trashFrom('stripper'),
  },
  {
    id: 'G11',
    link: 'gin',
    kind: 'calibrated',
    what: 'trash of picked cotton taken out ahead of the feeder: 20-40 %, 18-43 allowed',
    source: 'van der Sluijs 2020, J. Cotton Sci., doi 10.56454/cpaz3825',
    unit: '%',
    expected: between(18, 43),
    ours: () => 100 * beforeFeeder(picked(), standardRun()),
  },
  {
    id: 'G12',
    link: 'gin',
    kind: 'notTuned',
    what: 'trash of stripped cotton taken out ahead of the feeder: about half, 40-75 % allowed with two stick machines',
    source: 'Garner 1976, USDA ARS-S-97',
    unit: '%',
    expected: between(40, 75),
    ours: () => 100 * beforeFeeder(stripped(), strippedRun()),
  },
  {
    id: 'gin/cylinder-cleaner',
    link: 'gin',
    kind: 'calibrated',
    what: 'trash taken out by one cylinder cleaner, picked cotton: 10-40 %',
    source: 'USDA Agriculture Handbook 503, from memory',
    unit: '%',
    expected: between(10, 40),
    ours: () => 100 * trashShare(seedCottonStep(standardRun(), 'cylinderCleaner1')),
  },
  {
    id: 'gin/extractor-feeder',
    link: 'gin',
    kind: 'knownMiss',
    what: 'trash taken out by the extractor-feeder, picked cotton: about 40 %, within 6',
    source: 'Read 1972, cited by USDA Agriculture Handbook 503, from memory',
    unit: '%',
    expected: near(40, 6),
    recorded: { value: 26.9, tolerance: 1 },
    reason:
      'leaf and dirt cling in the model; the classes the feeder takes were set so that waste closes on Holt’s figures',
    ours: () => 100 * trashShare(seedCottonStep(standardRun(), 'extractorFeeder')),
  },
  {
    id: 'gin/burs-at-stand',
    link: 'gin',
    kind: 'knownMiss',
    what: 'burs in stripped cotton at the stand, behind two extractors',
    source: baker,
    unit: '%',
    expected: near(2.7, 0.4),
    recorded: { value: 3.79, tolerance: 0.15 },
    reason: 'the model’s stripped crop brings 38 % foreign matter; theirs is not given and was cleaner',
    ours: () => atStand(strippedRun(), 'burs'),
  },
  {
    id: 'gin/sticks-at-stand',
    link: 'gin',
    kind: 'knownMiss',
    what: 'sticks in stripped cotton at the stand, behind two extractors',
    source: baker,
    unit: '%',
    expected: near(1, 0.15),
    recorded: { value: 1.38, tolerance: 0.06 },
    reason: 'the model’s stripped crop brings 38 % foreign matter; theirs is not given and was cleaner',
    ours: () => atStand(strippedRun(), 'sticks'),
  },
  {
    id: 'gin/fine-at-stand',
    link: 'gin',
    kind: 'knownMiss',
    what: 'fine trash (leaf and dirt) in stripped cotton at the stand, behind two extractors: 1.3-1.5 %',
    source: baker,
    unit: '%',
    expected: between(1.1, 1.7),
    recorded: { value: 2.8, tolerance: 0.12 },
    reason: 'the model’s stripped crop brings 38 % foreign matter, and its leaf is hard to shake out',
    ours: () => atStand(strippedRun(), 'leaf', 'dirt'),
  },
];

const lintCleanerChecks: readonly Check[] = [
  {
    id: 'G13',
    link: 'gin',
    kind: 'calibrated',
    what: 'waste of the first lint cleaner on a 500-lb bale: about 20 lb, 15-25 allowed',
    source: 'Anthony 2000, USDA-ARS 102070',
    unit: 'lb',
    expected: between(15, 25),
    ours: () => {
      const { masses } = lintCleaner(standardRun(), 1).removed[0]!;
      return (totalKg(masses) / totalKg(standardRun().pressed.lot)) * 500;
    },
  },
  {
    id: 'G13b',
    link: 'gin',
    kind: 'calibrated',
    what: 'fiber in the waste of the first lint cleaner: at least half, .45-.65 allowed',
    source: 'Anthony 2000, USDA-ARS 102070',
    unit: 'ratio',
    expected: between(0.45, 0.65),
    ours: () => {
      const { masses } = lintCleaner(standardRun(), 1).removed[0]!;
      return masses.dryKg.lint / (totalKg(masses) - totalWaterKg(masses.waterKg));
    },
  },
  {
    id: 'G14',
    link: 'gin',
    kind: 'calibrated',
    what: 'waste of two lint cleaners on a 500-lb bale: 28.8 lb, 13.4-38.6',
    source: 'Anthony 1997, USDA-ARS 78083; Trans. ASAE 43(2):221-229',
    unit: 'lb',
    expected: between(13.4, 38.6),
    ours: () => standardRun().summary.lintCleanerWasteLbPer500LbBale,
  },
  {
    id: 'G15',
    link: 'gin',
    kind: 'calibrated',
    what: 'mean trash efficiency of two lint cleaners: about 35 %, 30-40',
    source: 'Lint-cleaning efficiency at gins, 66 bales',
    unit: '%',
    expected: between(30, 40),
    ours: () => 50 * (trashShare(lintCleaner(standardRun(), 1)) + trashShare(lintCleaner(standardRun(), 2))),
  },
  {
    id: 'G15b',
    link: 'gin',
    kind: 'calibrated',
    what: 'trash efficiency of the second lint cleaner over the first: lower',
    source: 'Lint-cleaning efficiency at gins, 66 bales',
    unit: 'ratio',
    expected: between(0, 0.999),
    ours: () => trashShare(lintCleaner(standardRun(), 2)) / trashShare(lintCleaner(standardRun(), 1)),
  },
  {
    id: 'G16',
    link: 'gin',
    kind: 'calibrated',
    what: 'trash efficiency of an air unit over that of a saw unit',
    source: 'Mangialardi & Anthony 1997, USDA-ARS 82631',
    unit: 'ratio',
    expected: near(0.25, 0.05),
    ours: () => trashShare(lintCleaner(runWith(1, 'air'), 1)) / trashShare(lintCleaner(runWith(1), 1)),
  },
  {
    id: 'G17',
    link: 'gin',
    kind: 'calibrated',
    what: 'neps behind three lint cleaners over none, within 15 %',
    source: 'Mangialardi 1989, Beltwide 2232: 32 and 11 per 100 square inches of web',
    unit: 'ratio',
    expected: nearShare(32 / 11, 0.15),
    ours: () => runWith(3).ginned.lot.fibre.nepsRatio / runWith(0).ginned.lot.fibre.nepsRatio,
  },
  {
    id: 'gin/neps-one-cleaner',
    link: 'gin',
    kind: 'notTuned',
    what: 'neps behind one lint cleaner over none: about half more, within 10 %',
    source: 'Anthony 2000, USDA-ARS 102070',
    unit: 'ratio',
    expected: nearShare(1.5, 0.1),
    ours: () => runWith(1).ginned.lot.fibre.nepsRatio / runWith(0).ginned.lot.fibre.nepsRatio,
  },
  ...[11.7, 20.3, 21.4, 27.1, 27.6].map(
    (pounds, index): Check => ({
      id: `G41/${index + 1}`,
      link: 'gin',
      kind: 'calibrated',
      what: `waste of a lint cleaner with ${index + 1} grid bars on a 500-lb bale`,
      source: 'Anthony 1999, Beltwide 652',
      unit: 'lb',
      expected: near(pounds, 2.5),
      ours: () => wasteByGridBarsLb(index + 1),
    }),
  ),
];

export const ginWasteChecks: readonly Check[] = [...seedCottonChecks, ...wasteChecks, ...lintCleanerChecks];
