import type { Fact } from '../model/fact.ts';
import { harvestFacts } from '../model/harvest/facts.ts';
import { moduleFacts } from '../model/module/facts.ts';
import {
  type AverageName,
  averageFacts,
  type ChainAverages,
  statedAverages,
  type TraceCase,
} from '../model/trace/chain-averages.ts';
import type { TraceRequest } from '../model/trace/need.ts';
import { type SeasonMasses, seasonMasses, type TracedSeason } from '../model/trace/season-chain.ts';
import { isMillYield, ownAverages, type TraceCases } from '../model/trace/trace-cases.ts';
import { atStation, between, decided, exact, input, read } from './steps.ts';
import type { TraceFormulaId } from './trace-formula-texts.ts';
import type { UnitKey } from './unit-key.ts';
import type { Between, Input, Origin } from './working.ts';

/** What a trace was made with: the request, the season it leads through (null for the stated averages), and its three cases. */
export interface TraceAccount {
  readonly request: TraceRequest;
  readonly season: TracedSeason | null;
  readonly averages: Partial<ChainAverages>;
  readonly cases: TraceCases;
}

/** What stands for one link of the chain in a formula: its own inputs, and what is worked out of them first. */
export interface ChainInputs {
  readonly inputs: readonly Input[];
  readonly first: readonly Between[];
}

const inLedgers: Origin = { at: 'ledgers' };
const kg = (symbol: string, name: string, value: number): Input =>
  input(symbol, name, exact(value, 'kilograms'), inLedgers);

/** Links that a season's own masses give. */
interface MassLink {
  readonly formula: TraceFormulaId;
  readonly moved?: TraceFormulaId;
  readonly inputs: (masses: SeasonMasses) => readonly Input[];
}
const yarn = (masses: SeasonMasses) => kg('Y_1', 'traceYarnOfSeason', masses.yarnKg!);
const loomWaste = (masses: SeasonMasses) => kg('W_1', 'traceLoomWaste', masses.loomWasteKg!);
const lint = (masses: SeasonMasses) => kg('L_1', 'traceLintOfSeason', masses.lintKg);
const delivered = (masses: SeasonMasses) => kg('S_1', 'traceDelivered', masses.deliveredKg);
const grown = (masses: SeasonMasses) => kg('G_1', 'traceGrown', masses.grownKg);

const massLinks: Readonly<Partial<Record<AverageName, MassLink>>> = {
  finishingYield: {
    formula: 'ownFinishing',
    moved: 'movedFinishing',
    inputs: (masses) => [kg('C_1', 'traceClothOfSeason', masses.clothKg!), yarn(masses), loomWaste(masses)],
  },
  weavingYield: {
    formula: 'ownWeaving',
    moved: 'movedWeaving',
    inputs: (masses) => [yarn(masses), loomWaste(masses)],
  },
  yarnRealisation: {
    formula: 'ownRealisation',
    moved: 'movedRealisation',
    inputs: (masses) => [yarn(masses), lint(masses)],
  },
  battingYield: {
    formula: 'ownBatting',
    moved: 'movedBatting',
    inputs: (masses) => [kg('K_1', 'traceCarded', masses.cardedKg!), lint(masses)],
  },
  ginTurnout: { formula: 'ownTurnout', inputs: (masses) => [lint(masses), delivered(masses)] },
  deliveredPerGrown: { formula: 'ownDelivered', inputs: (masses) => [delivered(masses), grown(masses)] },
  bollGrams: {
    formula: 'ownBoll',
    inputs: (masses) => [grown(masses), input('N_1', 'bollsInField', exact(masses.bolls, 'bolls'), atStation('boll'))],
  },
  seedPerLint: {
    formula: 'ownSeed',
    inputs: (masses) => [kg('Z_1', 'traceSeedOfSeason', masses.seedKg), lint(masses)],
  },
  ginWastePerLint: {
    formula: 'ownGinWaste',
    inputs: (masses) => [kg('W_1', 'traceGinWasteOfSeason', masses.ginWasteKg), lint(masses)],
  },
};

/** Where a season's value comes from that no two masses make. */
function originOf(name: AverageName, { scenario }: TracedSeason): Origin {
  const { harvest, module } = scenario.decisions;
  switch (name) {
    case 'bollsPerPlant':
      return atStation('boll');
    case 'plantsPerAcre':
      return atStation('planting');
    case 'rowInches':
      return decided('planting');
    case 'rainInches':
      return { at: 'weather' };
    case 'irrigationInches':
      return { at: 'field' };
    case 'yarnNe':
      return decided('spinning');
    case 'machineAcresPerHour':
      return read(
        harvest.method === 'stripper' || harvest.method === 'stripperFieldCleaner'
          ? harvestFacts.stripperAcresPerHour
          : harvestFacts.pickerAcresPerHour,
      );
    case 'moduleLb':
      return read(moduleFacts[module.kind].seedCottonLb);
    default:
      return { at: 'fibre' };
  }
}

/** A link of the chain as a formula takes it, in one of the three cases. */
export function chainInput(
  { season, averages }: Pick<TraceAccount, 'season' | 'averages'>,
  at: TraceCase,
  name: AverageName,
  symbol: string,
  unit: UnitKey = 'none',
): ChainInputs {
  const word = `trace_${name}`;
  const fact: Fact = averageFacts[name];
  const own = averages[name];
  if (own === undefined || !season) {
    return { inputs: [input(symbol, word, exact(statedAverages(at)[name], unit), read(fact))], first: [] };
  }
  const link = massLinks[name];
  if (!link) return { inputs: [input(symbol, word, exact(own, unit), originOf(name, season))], first: [] };
  if (at === 'middle' || !isMillYield(name)) {
    return {
      inputs: link.inputs(seasonMasses(season)!),
      first: [between(link.formula, symbol, word, exact(own, unit))],
    };
  }
  return {
    inputs: [
      input(`${symbol}_1`, word, exact(own, unit), inLedgers),
      input(`${symbol}_2`, 'traceEnd', exact(statedAverages(at)[name], unit), read(fact)),
      input(`${symbol}_3`, 'traceStated', exact(statedAverages('middle')[name], unit), read(fact)),
    ],
    first: [between(link.moved!, symbol, word, exact(ownAverages(averages, at)[name]!, unit))],
  };
}

/** Inputs of several links together, each letter once. */
export function joined(...all: readonly ChainInputs[]): ChainInputs {
  const inputs = new Map<string, Input>();
  for (const each of all.flatMap((some) => some.inputs)) inputs.set(each.symbol, each);
  return { inputs: [...inputs.values()], first: all.flatMap(({ first }) => first) };
}
