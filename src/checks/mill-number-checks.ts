import { meanLinearDensity } from '../model/cloth/weight.ts';
import { fibresInSection, limitNeOfClassCard, stapleLimitNe } from '../model/mill/limits.ts';
import { parseYarnNumber, yarnNumbers } from '../model/mill/yarn-number.ts';
import { asNe, asTex, nominalMtexFromMicronaire, texFromNe } from '../model/units.ts';
import type { Check, OutsideTool } from './check.ts';
import { near } from './expected.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'mill', ...check });

/** A yarn number read as a visitor types it. */
function yarn(text: string) {
  const read = parseYarnNumber(text);
  if (!read.ok) throw new RangeError(text);
  return { ...read.value, numbers: yarnNumbers(read.value.resultantTex) };
}

const units = 'GNU units 2.22';
const gate = 'Graduate Aptitude Test in Engineering (Indian Institutes of Technology)';
const rieter = 'Rieter encyclopaedia (The Rieter Manual of Spinning, W. Klein)';
const texcoms = 'Texcoms Textile Technical Handbook 2023';
const committee = 'Indian Central Cotton Committee spinning-value formula';

const conversions: readonly (readonly [string, string, number, number, OutsideTool, string, () => number])[] = [
  [
    'mill/1',
    '30s cotton',
    19.684708,
    2e-5,
    { name: 'units', from: '1/(30 cottonyarncount)', to: 'tex' },
    'tex',
    () => yarn('30Ne').singleTex,
  ],
  [
    'mill/2',
    '40/2 cotton',
    29.527,
    1e-3,
    { name: 'units', from: '1/(40|2 cottonyarncount)', to: 'tex' },
    'tex',
    () => yarn('40/2Ne').resultantTex,
  ],
  [
    'mill/3',
    '50/3 cotton',
    318.892,
    1e-3,
    { name: 'units', from: '1/(50|3 cottonyarncount)', to: 'denier' },
    'denier',
    () => yarn('50/3Ne').numbers.denier,
  ],
  [
    'mill/4',
    '1s cotton in metric count',
    1.6933618,
    1e-6,
    { name: 'units', from: 'cottonyarncount', to: 'metricyarncount' },
    'Nm',
    () => yarnNumbers(texFromNe(asNe(1))).nm,
  ],
];

/** Yarn numbers, fibres in the section, and the finest count they allow. */
export const millNumberChecks: readonly Check[] = [
  ...conversions.map(([id, what, value, tolerance, tool, unit, ours]) =>
    row({ id, kind: 'exact', what, source: units, unit, expected: near(value, tolerance), tool, ours }),
  ),
  ...(
    [
      ['ne', 29.5],
      ['denier', 180],
      ['nm', 50],
    ] as const
  ).map(([system, value]) =>
    row({
      id: `mill/5.${system}`,
      kind: 'exact',
      what: `20 tex in ${system}`,
      source: `${gate} 1992`,
      unit: system,
      expected: near(value, 0.002 * value),
      ours: () => yarn('20tex').numbers[system],
    }),
  ),
  ...(
    [
      ['80/2Nm', 120],
      ['60/2Nm', 90],
    ] as const
  ).map(([text, ticket]) =>
    row({
      id: `mill/ticket-${ticket}`,
      kind: 'exact',
      what: `sewing thread ${text}: metric ticket`,
      source: 'thread-numbering table, Enumerator blog',
      unit: 'ticket',
      expected: near(ticket, 1e-9),
      ours: () => yarn(text).numbers.metricTicket,
    }),
  ),
  row({
    id: 'mill/plies-divide',
    kind: 'definition',
    what: 'two plies of 40s: resultant count',
    source: 'Coats Bulletin 05, Thread Numbering',
    unit: 'Ne',
    expected: near(20, 1e-9),
    ours: () => yarn('40/2Ne').numbers.ne,
  }),
  row({
    id: 'mill/plies-multiply',
    kind: 'definition',
    what: 'two plies of 20 tex: resultant',
    source: 'Coats Bulletin 05, Thread Numbering',
    unit: 'tex',
    expected: near(40, 1e-9),
    ours: () => yarn('20x2tex').resultantTex,
  }),
  row({
    id: 'mill/7',
    kind: 'exact',
    what: 'a lea of 120 yd that weighs 20 grains, 1.29598 g: count',
    source: 'Taylor, Cotton Weaving and Designing, p. 429: 1000 over the grains',
    unit: 'Ne',
    expected: near(50, 0.1),
    ours: () => yarnNumbers(asTex((1000 * 1.2959782) / (120 * 0.9144))).ne,
  }),
  row({
    id: 'mill/8',
    kind: 'exact',
    what: 'micronaire 4.2 in dtex',
    source: `${rieter}, rotor fibre count`,
    unit: 'dtex',
    expected: near(1.65, 0.01),
    ours: () => nominalMtexFromMicronaire(4.2) / 100,
  }),
  row({
    id: 'mill/9',
    kind: 'exact',
    what: '67 % of 1.3 dtex and 33 % of 1.65 dtex by mass: mean',
    source: `${rieter}, rotor fibre count`,
    unit: 'dtex',
    expected: near(1.4, 0.01),
    ours: () =>
      meanLinearDensity([
        { density: 1.3, mass: 67 },
        { density: 1.65, mass: 33 },
      ]),
  }),
  row({
    id: 'mill/10',
    kind: 'exact',
    what: 'micronaire 4.3 at 30s: fibers in the section',
    source: `${texcoms}: 15000 / (micronaire x Ne)`,
    unit: 'fibers',
    expected: near(116.3, 0.2),
    ours: () => fibresInSection(yarn('30').singleTex, nominalMtexFromMicronaire(4.3)),
  }),
  row({
    id: 'mill/11',
    kind: 'plainSum',
    what: 'carded limit at micronaire 4.3, from 75 fibers',
    source: `${rieter}, number of fibres in the yarn cross-section`,
    unit: 'Ne',
    expected: near(46.5, 0.1),
    ours: () => limitNeOfClassCard(4.3).ringCarded,
  }),
  row({
    id: 'mill/12',
    kind: 'plainSum',
    what: 'combed limit at micronaire 3.8, from 33 fibers',
    source: `${rieter}, number of fibres in the yarn cross-section`,
    unit: 'Ne',
    expected: near(119.6, 0.2),
    ours: () => limitNeOfClassCard(3.8).ringCombed,
  }),
  row({
    id: 'mill/rotor-limit',
    kind: 'plainSum',
    what: 'rotor limit at micronaire 4.2, from 100 fibers',
    source: `${rieter}, number of fibres in the yarn cross-section`,
    unit: 'Ne',
    expected: near(35.7, 0.1),
    ours: () => limitNeOfClassCard(4.2).rotor,
  }),
  ...(
    [
      [1.1, 3.8, 50.6, 0.2],
      [0.85, 4.5, 29, 1],
      [0.9, 4.3, 34, 1],
      [1.0, 4.0, 42, 1],
      [1.2, 3.5, 59, 1],
    ] as const
  ).map(([inches, micronaire, ne, tolerance]) =>
    row({
      id: inches === 1.1 ? 'mill/13' : `mill/staple-limit-${inches}`,
      kind: 'definition',
      what: `mean length ${inches} in, micronaire ${micronaire}: highest standard warp count`,
      source: committee,
      unit: 'Ne',
      expected: near(ne, tolerance),
      ours: () => stapleLimitNe(inches, nominalMtexFromMicronaire(micronaire)),
    }),
  ),
  row({
    id: 'mill/22',
    kind: 'exact',
    what: 'card sliver of 4.0 ktex: count',
    source: `${gate} 2009 Q51, key 0.15`,
    unit: 'Ne',
    expected: near(0.1476, 0.0015),
    ours: () => yarnNumbers(asTex(4000)).ne,
  }),
];
