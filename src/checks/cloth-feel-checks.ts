import { describeInterlock } from '../model/cloth/describe-interlock.ts';
import { feelFacts } from '../model/cloth/facts.ts';
import { bendingFloorMm, flameExempt, flexuralRigidity } from '../model/cloth/feel.ts';
import { needleFor } from '../model/cloth/needle.ts';
import { stripTenacity } from '../model/cloth/strip.ts';
import { gsmFromOuncesPerSquareYard, nominalMtexFromMicronaire } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, is, near } from './expected.ts';
import { plain, sett, yarns } from './fixtures/cloths.ts';
import { quilting } from './fixtures/yarn-lots.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'cloth', ...check });

const gate = 'Graduate Aptitude Test in Engineering (Indian Institutes of Technology)';
const flame = '16 CFR 1610.1(d)';
const said = (exempt: boolean) => (exempt ? 'exempt' : 'is tested');
const flames = [
  ['lawn', 90, 88, 60, false],
  ['voile', 60, 56, 60, false],
  ['gauze', 32, 28, 40, false],
  ['quilting base', 68, 68, 30, true],
] as const;

/** What a sewist notices: drape, flame, needle, regain and shrinkage. */
export const clothFeelChecks: readonly Check[] = [
  row({
    id: 'cloth/45',
    kind: 'exact',
    what: '250 g/m2 with a bending length of 48.23 mm: flexural rigidity',
    source: `${gate} 2020 Q51, key 46 to 50 mm for 275`,
    unit: 'uN m',
    expected: near(275, 1),
    ours: () => flexuralRigidity(250, 48.23),
  }),
  row({
    id: 'cloth/43',
    kind: 'definition',
    what: 'interlock: courses times wales, with loops of 3 mm',
    source: 'Roy, Varshney & Kothari, Indian Journal of Fibre & Textile Research',
    unit: 'ratio',
    expected: near(22.56, 0.01),
    ours: () => describeInterlock(20, 3).loopsPerSquareCm * 0.3 ** 2,
  }),
  row({
    id: 'cloth/43-shape',
    kind: 'definition',
    what: 'interlock: courses over wales',
    source: 'Roy, Varshney & Kothari, Indian Journal of Fibre & Textile Research',
    unit: 'ratio',
    expected: near(1.41, 0.01),
    ours: () => {
      const { coursesPerInch, walesPerInch } = describeInterlock(20, 3);
      return coursesPerInch / walesPerInch;
    },
  }),
  row({
    id: 'cloth/48',
    kind: 'exact',
    what: 'strip of 5 cm of a cloth of 300 g/m2 that breaks at 900 N',
    source: `${gate} 2021 Q52`,
    unit: 'cN/tex',
    expected: near(6, 1e-9),
    ours: () => stripTenacity(900, 50, 300),
  }),
  row({
    id: 'cloth/twice-the-length',
    kind: 'exact',
    what: 'twice the bending length: rigidity grows',
    source: `${gate} 2018`,
    unit: 'times',
    expected: near(8, 1e-9),
    ours: () => flexuralRigidity(120, 40) / flexuralRigidity(120, 20),
  }),
  ...(
    [
      [3.5, 15.5],
      [4.9, 17.3],
    ] as const
  ).map(([micronaire, mm]) =>
    row({
      id: `cloth/floor-${micronaire}`,
      kind: 'plainSum',
      what: `fiber of micronaire ${micronaire}: bending length that the fibers alone give`,
      source: 'Morton & Hearle, specific flexural rigidity (from memory), by hand',
      unit: 'mm',
      expected: near(mm, 0.1),
      ours: () => bendingFloorMm(nominalMtexFromMicronaire(micronaire) / 1000, 0.5),
    }),
  ),
  row({
    id: 'cloth/41',
    kind: 'plainSum',
    what: 'the line of the flame rule in g/m2, which the rule rounds to 88.2',
    source: `${flame}; GNU units 2.22`,
    unit: 'g/m2',
    expected: near(88.15, 0.1),
    ours: () => gsmFromOuncesPerSquareYard(feelFacts.flameOunces.value),
  }),
  ...(
    [
      [2.6, 'exempt'],
      [2.59, 'is tested'],
    ] as const
  ).map(([ounces, word]) =>
    row({
      id: `cloth/41.${ounces}`,
      kind: 'definition',
      what: `plain-surface cloth of ${ounces} oz/yd2 under the flame rule`,
      source: flame,
      unit: '',
      expected: is(word),
      ours: () => said(flameExempt(gsmFromOuncesPerSquareYard(ounces))),
    }),
  ),
  ...flames.map(([name, ends, picks, ne, exempt]) =>
    row({
      id: `cloth/flame-${name.replace(' ', '-')}`,
      kind: 'notTuned',
      what: `${name}, ${ends} x ${picks} of ${ne}s, under the flame rule`,
      source: `${flame}; constructions from memory`,
      unit: '',
      expected: is(said(exempt)),
      ours: () => said(flameExempt(plain({ ...yarns(ne, ne), ...sett(ends, picks) }).gramsPerSquareMetre)),
    }),
  ),
  row({
    id: 'cloth/60',
    kind: 'definition',
    what: 'regain of cotton cloth as sold',
    source: 'ASTM D1909 in Shuvo, Bioresources & Bioprocessing 7 (2020), table 10',
    unit: '%',
    expected: near(8.5, 1e-7),
    ours: () => {
      const { lot } = quilting('bleached');
      return (100 * lot.waterKg.lint) / lot.dryKg.lint;
    },
  }),
  row({
    id: 'cloth/shrink-length',
    kind: 'calibrated',
    what: 'finished quilting cotton: shrinkage left lengthwise',
    source: 'popular pages, weak: 2 to 5 %',
    unit: '%',
    expected: between(2, 5),
    ours: () => quilting('printed').cloth!.shrinkLeftPercent.length,
  }),
  row({
    id: 'cloth/shrink-width',
    kind: 'calibrated',
    what: 'finished quilting cotton: shrinkage left across',
    source: 'popular pages, weak: 2 to 5 %',
    unit: '%',
    expected: between(2, 5),
    ours: () => quilting('printed').cloth!.shrinkLeftPercent.width,
  }),
  row({
    id: 'cloth/needle-quilting',
    kind: 'definition',
    what: 'needle for quilting cotton of 124 g/m2',
    source: 'machine manual, Siruba HSP-68100 p. 18 (manualshive.com): medium cotton',
    unit: '',
    expected: is('75/11-90/14'),
    ours: () => needleFor(124).needles.join('-'),
  }),
  row({
    id: 'cloth/iron',
    kind: 'definition',
    what: 'hottest iron for cotton, three dots',
    source: 'ISO 3758, summary by sioen-ppc',
    unit: 'C',
    expected: near(200, 0),
    ours: () => quilting('printed').cloth!.ironCelsius,
  }),
];
