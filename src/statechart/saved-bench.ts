import {
  baleLimits,
  type FibreNumber,
  fibreLimits,
  limitsOf,
  numberWithin,
  type SetUpNumber,
  setUpLimits,
} from '../model/bench/check-set-up.ts';
import { colourCodesOf, stapleCodesOf } from '../model/bench/printed-grades.ts';
import {
  benchFinishes,
  cardOf,
  isKnit,
  type LaidBale,
  type SetUp,
  startingSetUp,
  withStructure,
} from '../model/bench/set-up.ts';
import { type ClothName, catalogue } from '../model/cloth/catalogue-facts.ts';
import { weaveIds } from '../model/cloth/weaves.ts';
import { benchFacts } from '../model/mill/bench-limit-facts.ts';
import { type CottonName, cottons } from '../model/mill/cotton-facts.ts';
import { spinningSystems, twistTable } from '../model/mill/facts.ts';
import { parseYarnNumber } from '../model/mill/yarn-number.ts';
import type { Problem } from '../model/problem.ts';

export const benchSides = ['a', 'b'] as const;
export type BenchSide = (typeof benchSides)[number];
/** What is saved or shared of the benches: both set-ups. */
export type SavedBench = Readonly<Record<BenchSide, SetUp>>;

const version = '1';
const cottonNames = Object.keys(cottons) as CottonName[];
const clothNames = Object.keys(catalogue) as ClothName[];

/** A bench as a cotton and a cloth give it, with nothing else chosen. */
export const plainSetUp = (cotton: CottonName, cloth: ClothName): SetUp =>
  startingSetUp(cotton, cloth, benchFacts.usualNoilPercent.value);

/** Quilting cotton of middling upland, and the same of Pima: the question the bench is for. */
export const firstBenches: SavedBench = {
  a: plainSetUp('uplandMedium', 'quilting'),
  b: plainSetUp('pima', 'quilting'),
};

/** Choices by the name they have in a link. */
const choices = {
  kind: ['upland', 'pima'],
  system: spinningSystems,
  use: twistTable.rows.map(({ use }) => use),
  structure: [...weaveIds, 'jersey', 'interlock'],
  finish: benchFinishes,
} as const;
const yarns = ['warp', 'weft'] as const;
const fibreNumbers = Object.keys(fibreLimits) as FibreNumber[];
const setUpNumbers = Object.keys(setUpLimits) as SetUpNumber[];
/** Numbers that may be left to a table: no value stands for the table's. */
const mayBeNone: readonly string[] = ['twist', 'warpCrimpPercent', 'weftCrimpPercent'];
const none = 'usual';
const betweenNumbers = '_';
const betweenBales = '~';

const baleColumns = Object.keys(baleLimits) as (keyof typeof baleLimits)[];
const baleText = (bale: LaidBale): string =>
  [bale.kind, ...baleColumns.map((column) => bale[column])].join(betweenNumbers);

/** Everything of a set-up as text, by the names of the link. */
function texts(setUp: SetUp): Record<string, string> {
  return {
    ...Object.fromEntries(fibreNumbers.map((key) => [key, String(setUp.card[key])])),
    kind: setUp.card.kind,
    printedColor: setUp.printed.color ?? none,
    printedStaple: String(setUp.printed.staple32nds ?? none),
    bales: setUp.bales.map(baleText).join(betweenBales),
    system: setUp.system,
    use: setUp.use,
    warp: setUp.warp,
    weft: setUp.weft,
    structure: setUp.structure,
    finish: setUp.finish,
    preshrunk: setUp.preshrunk ? '1' : '0',
    ...Object.fromEntries(setUpNumbers.map((key) => [key, setUp[key] === null ? none : String(setUp[key])])),
  };
}

/** The query of a link that reopens both benches: the cotton and the cloth of each, and what was changed. */
export function encodeBench(saved: SavedBench): string {
  const query = new URLSearchParams({ v: version });
  for (const side of benchSides) {
    const setUp = saved[side];
    query.set(`${side}.cotton`, setUp.cotton);
    query.set(`${side}.cloth`, setUp.cloth);
    const usual = texts(plainSetUp(setUp.cotton, setUp.cloth));
    for (const [key, text] of Object.entries(texts(setUp))) if (text !== usual[key]) query.set(`${side}.${key}`, text);
  }
  return query.toString();
}

function readBales(text: string, field: string, problems: Problem[]): readonly LaidBale[] {
  const pieces = text === '' ? [] : text.split(betweenBales).slice(0, benchFacts.mostBales.value);
  return pieces.flatMap((piece, at) => {
    const [kind, ...numbers] = piece.split(betweenNumbers);
    const bale: Record<string, number | string> = {
      ...cardOf('uplandMedium'),
      kind: kind === 'pima' ? 'pima' : 'upland',
    };
    const found: Problem[] = [];
    baleColumns.forEach((column, i) => {
      const read = numberWithin(
        `${field} ${at + 1}, ${column}`,
        numbers[i] ?? '',
        baleLimits[column],
        column === 'leaf',
      );
      if ('problem' in read) found.push(read.problem);
      else bale[column] = read.value;
    });
    problems.push(...found);
    return found.length > 0 ? [] : [bale as unknown as LaidBale];
  });
}

/** One of a list, or a problem that names the list. */
function chosen<Value extends string>(
  field: string,
  text: string | null,
  options: readonly Value[],
  otherwise: Value,
  problems: Problem[],
): Value {
  if (text === null) return otherwise;
  const found = options.find((option) => option === text);
  if (found === undefined) problems.push({ field, value: text, rule: { kind: 'choice', options } });
  return found ?? otherwise;
}

const orNone = (text: string): string | null => (text === none ? null : text);
const numberOrNone = (text: string): number | null => (text === none ? null : Number(text));

function readSide(query: URLSearchParams, side: BenchSide, problems: Problem[]): SetUp {
  const get = (key: string) => query.get(`${side}.${key}`);
  const choose = <Value extends string>(key: string, options: readonly Value[], otherwise: Value) =>
    chosen(`${side}.${key}`, get(key), options, otherwise, problems);
  const first = firstBenches[side];
  const start = plainSetUp(choose('cotton', cottonNames, first.cotton), choose('cloth', clothNames, first.cloth));
  const kind = choose('kind', choices.kind, start.card.kind);
  const numbers: Record<string, number | null> = {};
  const card: Record<string, number> = {};
  for (const key of fibreNumbers) {
    const text = get(key);
    if (text === null) continue;
    const read = numberWithin(`${side}.${key}`, text, limitsOf(key, kind), key === 'leaf');
    if ('problem' in read) problems.push(read.problem);
    else card[key] = read.value;
  }
  for (const key of setUpNumbers) {
    const text = get(key);
    if (text === null || (text === '0' && start[key] === 0)) continue;
    if (text === none && mayBeNone.includes(key)) {
      numbers[key] = null;
      continue;
    }
    const read = numberWithin(`${side}.${key}`, text, setUpLimits[key]);
    if ('problem' in read) problems.push(read.problem);
    else numbers[key] = read.value;
  }
  const yarnTexts: Partial<Record<(typeof yarns)[number], string>> = {};
  for (const yarn of yarns) {
    const text = get(yarn);
    if (text === null) continue;
    const read = parseYarnNumber(text, `${side}.${yarn}`);
    if (read.ok) yarnTexts[yarn] = text;
    else problems.push(...read.problems);
  }
  const read = {
    ...start,
    ...numbers,
    ...yarnTexts,
    card: { ...start.card, ...card, kind },
    printed: {
      color: orNone(choose('printedColor', [none, ...colourCodesOf(kind)], none)),
      staple32nds: numberOrNone(choose('printedStaple', [none, ...stapleCodesOf(kind).map(String)], none)),
    },
    bales: readBales(get('bales') ?? '', `${side}.bales`, problems),
    system: choose('system', choices.system, start.system),
    use: choose('use', choices.use, start.use),
    finish: choose('finish', choices.finish, start.finish),
    preshrunk: choose('preshrunk', ['0', '1'], start.preshrunk ? '1' : '0') === '1',
  } as SetUp;
  const structure = choose('structure', choices.structure, start.structure);
  const yarn = parseYarnNumber(read.warp);
  return structure === start.structure || !yarn.ok
    ? read
    : {
        ...withStructure(read, structure, yarn.value.resultantTex),
        use: choose('use', choices.use, isKnit(structure) ? 'knitting' : 'warp'),
      };
}

const known = new Set(
  ['cotton', 'cloth', ...Object.keys(texts(firstBenches.a))].flatMap((key) =>
    benchSides.map((side) => `${side}.${key}`),
  ),
);

/**
 * Reads the query of a link. Junk never fails: what cannot be read stays as the cotton and the cloth have it.
 * @returns both benches, and a problem for each value or name that was not taken
 */
export function decodeBench(text: string): { saved: SavedBench; problems: readonly Problem[] } {
  const query = new URLSearchParams(text);
  const problems: Problem[] = [];
  const v = query.get('v');
  if (v !== null && v !== version)
    problems.push({ field: 'v', value: v, rule: { kind: 'choice', options: [version] } });
  for (const [key, value] of query)
    if (key !== 'v' && key !== 'ask' && !known.has(key))
      problems.push({
        field: key,
        value,
        rule: { kind: 'choice', options: ['a.cotton', 'a.cloth', 'b.cotton', 'b.cloth'] },
      });
  const a = readSide(query, 'a', problems);
  const b = readSide(query, 'b', problems);
  return { saved: { a, b }, problems };
}
