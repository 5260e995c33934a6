import { ownClothLimits } from '../model/trace/facts.ts';
import { projectIds } from '../model/trace/project-facts.ts';
import { type Trace, traceProject } from '../model/trace/trace-project.ts';
import { badInput, problemsError } from './input-error.ts';
import type { Io } from './main.ts';
import { type Options, readChoice, readOptions, textOf } from './options.ts';
import { clothWeightUnits, inchUnits, readQuantity, yardUnits } from './quantity.ts';

const kinds = { project: 'value', yards: 'value', width: 'value', weight: 'value', json: 'flag' } as const;

/** Follows a project, or a length of cloth, back to the field. */
export function traceCommand(args: readonly string[], io: Io): void {
  const options = readOptions(args, kinds);
  const traced = traceProject(requestOf(options));
  if (!traced.ok) throw problemsError(traced.problems);
  io.out(options.json ? JSON.stringify(traced.value, null, 2) : traceText(traced.value));
}

function requestOf(options: Options): Parameters<typeof traceProject>[0] {
  const project = textOf(options, 'project');
  const own = ['yards', 'width', 'weight'].filter((name) => options[name] !== undefined);
  if (project !== undefined) {
    if (own.length > 0) throw badInput(`--${own[0]}`, String(options[own[0]!]), 'only without --project');
    return { project: readChoice('project', project, projectIds) };
  }
  const yards = textOf(options, 'yards');
  if (yards === undefined) {
    throw badInput('--project', 'nothing', `${projectIds.join(', ')}; or --yards, --width and --weight`);
  }
  return {
    yards: readQuantity('yards', yards, yardUnits, ownClothLimits.yards),
    widthInches: readQuantity('width', textOf(options, 'width') ?? '44', inchUnits, ownClothLimits.widthInches),
    ouncesPerSquareYard: readQuantity(
      'weight',
      textOf(options, 'weight') ?? '4.3',
      clothWeightUnits,
      ownClothLimits.ouncesPerSquareYard,
    ),
  };
}

const traceText = (trace: Trace): string =>
  [
    `Cloth ${trace.clothKg.toFixed(2)} kg, batting ${trace.battingKg.toFixed(2)} kg`,
    `Yarn ${trace.yarnKg.toFixed(2)} kg, lint ${trace.lintKg.toFixed(2)} kg, seed cotton ${trace.seedCottonKg.toFixed(2)} kg`,
    `${Math.round(trace.bolls)} bolls on ${Math.round(trace.plants)} plants, ${trace.squareMetres.toFixed(1)} m2 of field`,
    `Along with it ${trace.seedKg.toFixed(2)} kg of seed, with ${trace.oilKg.toFixed(2)} kg of oil`,
    `By hand, ${trace.handPickingDays.toFixed(2)} days of picking`,
  ].join('\n');
