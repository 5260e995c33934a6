import { runSeason } from '../model/chain.ts';
import { farms } from '../model/farms.ts';
import type { ChainAverages } from '../model/trace/chain-averages.ts';
import { clothNames, clothOunces } from '../model/trace/cloth-weights.ts';
import { countLimits, ownClothLimits, projectFacts } from '../model/trace/facts.ts';
import type { TraceRequest } from '../model/trace/need.ts';
import { projectIds } from '../model/trace/project-facts.ts';
import { seasonAverages, seasonClothOunces } from '../model/trace/season-chain.ts';
import { type TraceCases, traceInCases } from '../model/trace/trace-cases.ts';
import { type Forward, startIds, traceForward } from '../model/trace/trace-forward.ts';
import { badInput, problemsError } from './input-error.ts';
import type { Io } from './main.ts';
import { type Options, readChoice, readOptions, textOf } from './options.ts';
import { clothWeightUnits, inchUnits, readInteger, readQuantity, yardUnits } from './quantity.ts';
import { readScenario } from './season-command.ts';

const kinds = {
  project: 'value',
  count: 'value',
  yards: 'value',
  width: 'value',
  weight: 'value',
  from: 'value',
  scenario: 'value',
  seed: 'value',
  averages: 'flag',
  json: 'flag',
} as const;

/** Whose field, gin and mill the way leads through. */
interface Through {
  readonly scenario: string | null;
  readonly seed: number | null;
  readonly averages: Partial<ChainAverages>;
  readonly clothOunces: number | null;
}

/** Follows a project, or a length of cloth, back to the field; or bolls forward to cloth. */
export function traceCommand(args: readonly string[], io: Io): void {
  const options = readOptions(args, kinds);
  const from = textOf(options, 'from');
  const request = from === undefined ? requestOf(options) : null;
  const through = throughOf(options, io);
  const { scenario, seed } = through;
  if (request === null) {
    const traced = traceForward(
      {
        start: readChoice('from', from!, startIds),
        count: readCount(options),
        ouncesPerSquareYard: through.clothOunces ?? projectFacts.quiltingOunces.value,
      },
      through.averages,
    );
    if (!traced.ok) throw problemsError(traced.problems);
    io.out(options.json ? JSON.stringify({ scenario, seed, ...traced.value }, null, 2) : forwardText(traced.value));
    return;
  }
  const traced = traceInCases(request, through.averages);
  if (!traced.ok) throw problemsError(traced.problems);
  const { low, middle, high } = traced.value;
  io.out(
    options.json
      ? JSON.stringify({ scenario, seed, ...middle, low, high }, null, 2)
      : [throughText(through), traceText(traced.value)].join('\n'),
  );
}

/** The season that is traced through, the default farm's first one unless said; or the stated averages. */
function throughOf(options: Options, io: Io): Through {
  const asked = ['scenario', 'seed'].find((name) => options[name] !== undefined);
  if (options.averages) {
    if (asked) throw badInput(`--${asked}`, String(options[asked]), 'only without --averages');
    return { scenario: null, seed: null, averages: {}, clothOunces: null };
  }
  const scenario = readScenario(textOf(options, 'scenario') ?? farms[0]!.id, io);
  const seed = readInteger('seed', textOf(options, 'seed') ?? '1', 0, 999_999);
  const season = runSeason(scenario, seed, null);
  return {
    scenario: scenario.id,
    seed,
    averages: seasonAverages(season),
    clothOunces: seasonClothOunces(season),
  };
}

const readCount = (options: Options): number =>
  readInteger('count', textOf(options, 'count') ?? '1', countLimits.low, countLimits.high);

function requestOf(options: Options): TraceRequest {
  const project = textOf(options, 'project');
  const own = ['yards', 'width', 'weight'].filter((name) => options[name] !== undefined);
  if (project !== undefined) {
    if (own.length > 0) throw badInput(`--${own[0]}`, String(options[own[0]!]), 'only without --project');
    return { project: readChoice('project', project, projectIds), count: readCount(options) };
  }
  const yards = textOf(options, 'yards');
  if (yards === undefined) {
    throw badInput('--project', 'nothing', `${projectIds.join(', ')}; or --yards, --width and --weight; or --from`);
  }
  if (options.count !== undefined) throw badInput('--count', String(options.count), 'only with --project or --from');
  const { widthInches, ouncesPerSquareYard } = ownClothLimits;
  const weight = textOf(options, 'weight') ?? String(ouncesPerSquareYard.usual);
  const named = clothOunces(weight);
  if (named === undefined && /^[a-z]+$/i.test(weight)) throw badInput('--weight', weight, clothNames.join(', '));
  return {
    yards: readQuantity('yards', yards, yardUnits, ownClothLimits.yards),
    widthInches: readQuantity(
      'width',
      textOf(options, 'width') ?? String(widthInches.usual),
      inchUnits,
      ownClothLimits.widthInches,
    ),
    ouncesPerSquareYard: named ?? readQuantity('weight', weight, clothWeightUnits, ouncesPerSquareYard),
  };
}

const throughText = ({ scenario, seed }: Through): string =>
  scenario === null ? 'Through the stated averages' : `Through ${scenario}, season ${seed}`;

/** A number with its low and high. */
function inCases(cases: TraceCases, pick: (of: TraceCases['middle']) => number, decimals: number): string {
  const [middle, low, high] = (['middle', 'low', 'high'] as const).map((at) => pick(cases[at]).toFixed(decimals));
  return low === high ? middle! : `${middle} (${low} to ${high})`;
}

function traceText(cases: TraceCases): string {
  const say = (pick: (of: TraceCases['middle']) => number, decimals: number) => inCases(cases, pick, decimals);
  return [
    `Cloth ${say((t) => t.clothKg, 2)} kg, batting ${say((t) => t.battingKg, 2)} kg`,
    `Yarn ${say((t) => t.yarnKg, 2)} kg, ${say((t) => t.yarnKilometres, 1)} km of it`,
    `Lint ${say((t) => t.lintKg, 2)} kg, ${say((t) => 100 * t.baleShare, 2)} % of a bale`,
    `Seed cotton ${say((t) => t.seedCottonKg, 2)} kg`,
    `${say((t) => t.bolls, 0)} bolls on ${say((t) => t.plants, 0)} plants, ${say((t) => t.squareMetres, 1)} m2 of field`,
    `Rain on it ${say((t) => t.rainLitres, 0)} L, irrigation ${say((t) => t.irrigationLitres, 0)} L`,
    `Along with it ${say((t) => t.seedKg, 2)} kg of seed, with ${say((t) => t.oilKg, 2)} kg of oil, and ${say((t) => t.ginWasteKg, 2)} kg of gin waste`,
    `By hand, ${say((t) => t.handPickingDays, 2)} days of picking; by machine, ${say((t) => t.machinePickingMinutes, 2)} minutes`,
  ].join('\n');
}

const forwardText = ({ bolls, lintKg, clothKg, clothSquareYards, squareSideInches }: Forward): string =>
  [
    `${bolls.toFixed(0)} bolls, ${lintKg.toPrecision(4)} kg of lint`,
    `Cloth ${clothKg.toPrecision(4)} kg, ${clothSquareYards.toPrecision(4)} yd2: a square of ${squareSideInches.toFixed(2)} in`,
  ].join('\n');
