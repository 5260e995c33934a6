import { chainFacts } from '../../model/trace/facts.ts';
import { traceProject } from '../../model/trace/trace-project.ts';
import { INCHES_PER_YARD } from '../../model/units.ts';
import { lessonSeason } from '../lesson-season.ts';
import { oneBoll } from '../one-boll.ts';
import type { Computed } from './computed.ts';

const boll = () => oneBoll(lessonSeason());
const metresPerKilometre = 1000;

/** Bolls behind a bed quilt and its batting, by the averages of the trade. */
function bollsPerQuilt(): number {
  const traced = traceProject({ project: 'twin-quilt' });
  if (!traced.ok) throw new Error('no project of this name');
  return traced.value.bolls;
}

export const bollQuantities = {
  'patch-per-boll': { as: 'length', value: () => boll().patchInches, decimals: 1 },
  'sewn-patch-per-boll': { as: 'length', value: () => lessonSeason().sewing?.sewnPatchInches ?? 0, decimals: 1 },
  'lint-per-boll': { as: 'smallMass', value: () => boll().lintGrams },
  'seed-cotton-per-boll': { as: 'smallMass', value: () => boll().seedCottonGrams },
  'fibers-per-boll': { as: 'plain', value: () => Math.round(boll().fibres / 10_000) * 10_000 },
  'fiber-length-per-boll': { as: 'distance', value: () => boll().fibreMetres / metresPerKilometre },
  'yarn-per-boll': { as: 'clothLength', value: () => boll().yarnYards, decimals: 0 },
  'patch-weight': { as: 'smallMass', value: () => boll().patchGrams },
  'bolls-per-plant': { as: 'plain', value: () => lessonSeason().field.bollsPerPlant, decimals: 0 },
  'bolls-per-square-yard': { as: 'plain', value: () => (INCHES_PER_YARD / boll().patchInches) ** 2, decimals: 0 },
  'bolls-per-twin-quilt': { as: 'plain', value: () => Math.round(bollsPerQuilt() / 100) * 100 },
  'plants-per-twin-quilt': {
    as: 'plain',
    value: () => Math.round(bollsPerQuilt() / chainFacts.bollsPerPlant.value / 10) * 10,
  },
} as const satisfies Readonly<Record<string, Computed>>;
