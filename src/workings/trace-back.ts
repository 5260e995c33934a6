import type { Fact } from '../model/fact.ts';
import { atCase, type TraceCase } from '../model/trace/chain-averages.ts';
import { projectFacts } from '../model/trace/facts.ts';
import { type FamiliarId, familiarOf } from '../model/trace/familiar.ts';
import { familiarFacts } from '../model/trace/familiar-facts.ts';
import { quiltInputs } from '../model/trace/need.ts';
import { projects } from '../model/trace/project-facts.ts';
import { exact, formula, input, read } from './steps.ts';
import { type ChainInputs, chainInput, joined, type TraceAccount } from './trace-chain.ts';
import type { TraceFormulaId } from './trace-formula-texts.ts';
import type { UnitKey } from './unit-key.ts';
import type { FormulaWorking, Input, Origin } from './working.ts';

/** The numbers of the way back. */
export const traceKeys = [
  'cloth',
  'clothArea',
  'batting',
  'yarn',
  'yarnLength',
  'lint',
  'bale',
  'fibres',
  'seedCotton',
  'bolls',
  'plants',
  'field',
  'familiar',
  'row',
  'rain',
  'irrigation',
  'seed',
  'oil',
  'meal',
  'hulls',
  'linters',
  'ginWaste',
  'handDays',
  'machineMinutes',
] as const;
export type TraceKey = (typeof traceKeys)[number];

const stepBefore: Origin = { at: 'traceStep' };
const asked: Origin = { at: 'traceAsked' };
const from = (symbol: string, name: string, value: number, unit: UnitKey): ChainInputs => ({
  inputs: [input(symbol, name, exact(value, unit), stepBefore)],
  first: [],
});
const given = (inputs: readonly Input[]): ChainInputs => ({ inputs, first: [] });
const constant = (symbol: string, name: string, value: number, unit: UnitKey, fact: Pick<Fact, 'source' | 'mark'>) =>
  input(symbol, name, exact(value, unit), read(fact));

/** Pieces asked for. */
const pieces = (count: number): Input => input('n', 'tracePieces', exact(count), asked);

function clothAreaWorking({ request, cases }: TraceAccount, at: TraceCase) {
  const { clothSquareYards, count, project } = cases[at];
  const value = exact(clothSquareYards, 'squareYards');
  if (!('project' in request)) {
    return {
      id: 'ownCloth' as const,
      value,
      from: given([
        input('y', 'traceOwnYards', exact(request.yards, 'yards'), asked),
        input('w', 'traceOwnWidth', exact(request.widthInches, 'inches'), asked),
      ]),
    };
  }
  const of = projects[project!];
  if (of.kind === 'cloth') {
    const area = atCase({ value: of.squareYards, range: of.squareYardsRange }, at);
    return {
      id: 'pieceCloth' as const,
      value,
      from: given([pieces(count), constant('a', 'tracePieceArea', area, 'squareYards', of)]),
    };
  }
  const { piecing, overInches, bindingYards, usableInches } = quiltInputs(at);
  const { piecingFactor, backingOverInches, bindingYards: binding, usableWidthInches } = projectFacts;
  return {
    id: 'quiltCloth' as const,
    value,
    from: given([
      pieces(count),
      constant('w', 'traceTopWidth', of.top[0], 'inches', of),
      constant('l', 'traceTopLength', of.top[1], 'inches', of),
      constant('p', 'tracePiecing', piecing, 'none', piecingFactor),
      constant('b', 'traceBackingOver', overInches, 'inches', backingOverInches),
      constant('u', 'traceUsable', usableInches, 'inches', usableWidthInches),
      constant('y', 'traceBinding', bindingYards, 'yards', binding),
    ]),
  };
}

function battingWorking({ cases }: TraceAccount, at: TraceCase) {
  const { project, count, battingOunces, battingKg } = cases[at];
  const of = projects[project!];
  const [width, length] = of.kind === 'quilt' ? of.batting : [0, 0];
  return {
    id: 'battingMass' as const,
    value: exact(battingKg, 'kilograms'),
    from: given([
      pieces(count),
      constant('w', 'traceBattingWidth', width, 'inches', of),
      constant('l', 'traceBattingLength', length, 'inches', of),
      constant('o', 'traceBattingOunces', battingOunces, 'ouncesPerSquareYard', projectFacts.battingOunces),
    ]),
  };
}

/** Where the weight of the cloth was read. */
function clothOunces({ request, cases }: TraceAccount, at: TraceCase): Input {
  const { ouncesPerSquareYard, project } = cases[at];
  const of = project === null ? null : projects[project];
  if (!('project' in request) || !of)
    return input('o', 'traceClothOunces', exact(ouncesPerSquareYard, 'ouncesPerSquareYard'), asked);
  const fact = of.kind === 'quilt' ? projectFacts.quiltingOunces : of;
  return constant('o', 'traceClothOunces', ouncesPerSquareYard, 'ouncesPerSquareYard', fact);
}

function familiarInputs(id: FamiliarId): readonly Input[] {
  const { width, length } = familiarFacts[id];
  return [
    constant('w', 'traceFamiliarWidth', width.value, 'feet', width),
    constant('l', 'traceFamiliarLength', length.value, 'feet', length),
  ];
}

interface Closed {
  readonly id: TraceFormulaId | 'personDays' | 'crushed';
  readonly value: ReturnType<typeof exact>;
  readonly from: ChainInputs;
}

function closedForm(account: TraceAccount, at: TraceCase, key: TraceKey, familiar: FamiliarId): Closed {
  const trace = account.cases[at];
  const link = (name: Parameters<typeof chainInput>[2], symbol: string, unit?: UnitKey) =>
    chainInput(account, at, name, symbol, unit);
  const lint = from('L', 'traceLint', trace.lintKg, 'kilograms');
  const field = from('F', 'traceField', trace.squareMetres, 'squareMetres');
  const crushed = (
    name: 'oilPerSeed' | 'mealPerSeed' | 'hullsPerSeed' | 'lintersPerSeed',
    kilograms: number,
  ): Closed => ({
    id: 'crushed',
    value: exact(kilograms, 'kilograms'),
    from: joined(from('M', 'traceSeed', trace.seedKg, 'kilograms'), link(name, 'f')),
  });
  switch (key) {
    case 'clothArea':
      return clothAreaWorking(account, at);
    case 'batting':
      return battingWorking(account, at);
    case 'cloth':
      return {
        id: 'clothMass',
        value: exact(trace.clothKg, 'kilograms'),
        from: joined(
          from('A', 'traceClothArea', trace.clothSquareYards, 'squareYards'),
          given([clothOunces(account, at)]),
        ),
      };
    case 'yarn':
      return {
        id: 'yarnForCloth',
        value: exact(trace.yarnKg, 'kilograms'),
        from: joined(
          from('C', 'traceCloth', trace.clothKg, 'kilograms'),
          link('finishingYield', 'f'),
          link('weavingYield', 'v'),
        ),
      };
    case 'yarnLength':
      return {
        id: 'yarnLength',
        value: exact(trace.yarnKilometres, 'kilometres'),
        from: joined(from('Y', 'traceYarn', trace.yarnKg, 'kilograms'), link('yarnNe', 'N', 'ne')),
      };
    case 'lint': {
      const spun = joined(from('Y', 'traceYarn', trace.yarnKg, 'kilograms'), link('yarnRealisation', 'r'));
      const value = exact(trace.lintKg, 'kilograms');
      if (trace.battingKg === 0) return { id: 'lintForYarn', value, from: spun };
      const batting = from('B', 'traceBatting', trace.battingKg, 'kilograms');
      return { id: 'lintForProject', value, from: joined(spun, batting, link('battingYield', 'b')) };
    }
    case 'bale':
      return { id: 'shareOfBale', value: exact(100 * trace.baleShare, 'percent'), from: lint };
    case 'fibres':
      return {
        id: 'fibresInLint',
        value: exact(trace.fibres, 'fibres'),
        from: joined(lint, link('fibreMtex', 'H', 'millitex'), link('fibreLengthMm', 'm', 'millimetres')),
      };
    case 'seedCotton':
      return {
        id: 'seedCottonForLint',
        value: exact(trace.seedCottonKg, 'kilograms'),
        from: joined(lint, link('ginTurnout', 't')),
      };
    case 'bolls':
      return {
        id: 'bollsForSeedCotton',
        value: exact(trace.bolls, 'bolls'),
        from: joined(
          from('S', 'traceSeedCotton', trace.seedCottonKg, 'kilograms'),
          link('deliveredPerGrown', 'd'),
          link('bollGrams', 'g', 'grams'),
        ),
      };
    case 'plants':
      return {
        id: 'plantsForBolls',
        value: exact(trace.plants, 'plants'),
        from: joined(from('n', 'traceBolls', trace.bolls, 'bolls'), link('bollsPerPlant', 'b', 'bolls')),
      };
    case 'field':
      return {
        id: 'fieldForPlants',
        value: exact(trace.squareMetres, 'squareMetres'),
        from: joined(from('P', 'tracePlants', trace.plants, 'plants'), link('plantsPerAcre', 'p', 'plantsPerAcre')),
      };
    case 'familiar': {
      return {
        id: 'familiarTimes',
        value: exact(trace.squareMetres / familiarOf(familiar).squareMetres),
        from: joined(field, given(familiarInputs(familiar))),
      };
    }
    case 'row':
      return {
        id: 'rowOnField',
        value: exact(trace.rowFeet, 'feet'),
        from: joined(field, link('rowInches', 'r', 'inches')),
      };
    case 'rain':
    case 'irrigation': {
      const litres = key === 'rain' ? trace.rainLitres : trace.irrigationLitres;
      return {
        id: 'waterOnField',
        value: exact(litres, 'litres'),
        from: joined(field, link(key === 'rain' ? 'rainInches' : 'irrigationInches', 'h', 'inches')),
      };
    }
    case 'seed':
      return {
        id: 'alongLint',
        value: exact(trace.seedKg, 'kilograms'),
        from: joined(lint, link('seedPerLint', 's')),
      };
    case 'ginWaste':
      return {
        id: 'alongLint',
        value: exact(trace.ginWasteKg, 'kilograms'),
        from: joined(lint, link('ginWastePerLint', 's')),
      };
    case 'oil':
      return crushed('oilPerSeed', trace.oilKg);
    case 'meal':
      return crushed('mealPerSeed', trace.mealKg);
    case 'hulls':
      return crushed('hullsPerSeed', trace.hullsKg);
    case 'linters':
      return crushed('lintersPerSeed', trace.lintersKg);
    case 'handDays':
      return {
        id: 'personDays',
        value: exact(trace.handPickingDays, 'personDays'),
        from: joined(
          from('S', 'traceSeedCotton', trace.seedCottonKg, 'kilograms'),
          link('handPickPoundsPerDay', 'h', 'poundsPerDay'),
        ),
      };
    case 'machineMinutes':
      return {
        id: 'machineMinutes',
        value: exact(trace.machinePickingMinutes, 'minutes'),
        from: joined(field, link('machineAcresPerHour', 'a', 'acresPerHour')),
      };
  }
}

/**
 * The working of a number of the way back.
 * @param familiar what the field is laid beside
 * @param text the number as the page prints it
 */
export function traceWorking(
  account: TraceAccount,
  at: TraceCase,
  key: TraceKey,
  familiar: FamiliarId,
  text: string,
): FormulaWorking {
  const { id, value, from: uses } = closedForm(account, at, key, familiar);
  return formula(id, uses.inputs, value, { as: 'text', text }, uses.first);
}
