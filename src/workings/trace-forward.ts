import type { ChainAverages } from '../model/trace/chain-averages.ts';
import type { TracedSeason } from '../model/trace/season-chain.ts';
import type { Forward, StartId } from '../model/trace/trace-forward.ts';
import { exact, formula, input, procedure, step } from './steps.ts';
import { type ChainInputs, chainInput, joined } from './trace-chain.ts';
import type { TraceFormulaId } from './trace-formula-texts.ts';
import type { UnitKey } from './unit-key.ts';
import type { FormulaWorking, Origin, ProcedureWorking } from './working.ts';

/** The numbers of the way forward. */
export const forwardKeys = ['bolls', 'seedCotton', 'lint', 'yarn', 'cloth', 'clothArea', 'side'] as const;
export type ForwardKey = (typeof forwardKeys)[number];

/** What a way forward was made with. */
export interface ForwardAccount {
  readonly season: TracedSeason | null;
  readonly averages: Partial<ChainAverages>;
  readonly forward: Forward;
}

const stepBefore: Origin = { at: 'traceStep' };
const asked: Origin = { at: 'traceAsked' };
const from = (
  symbol: string,
  name: string,
  value: number,
  unit: UnitKey,
  origin: Origin = stepBefore,
): ChainInputs => ({
  inputs: [input(symbol, name, exact(value, unit), origin)],
  first: [],
});

const startFormulas: Readonly<Record<Exclude<StartId, 'boll'>, TraceFormulaId>> = {
  plant: 'bollsOfPlants',
  rowFoot: 'bollsOfRow',
  acre: 'bollsOfAcres',
  module: 'bollsOfModules',
  bale: 'bollsOfBales',
};

/** The working of a number of the way forward. @param text the number as the page prints it */
export function forwardWorking(
  account: ForwardAccount,
  key: ForwardKey,
  text: string,
): FormulaWorking | ProcedureWorking {
  const { forward } = account;
  const printed = { as: 'text', text } as const;
  const link = (name: Parameters<typeof chainInput>[2], symbol: string, unit?: UnitKey) =>
    chainInput(account, 'middle', name, symbol, unit);
  const closed = (id: TraceFormulaId, value: number, unit: UnitKey, ...uses: ChainInputs[]) => {
    const { inputs, first } = joined(...uses);
    return formula(id, inputs, exact(value, unit), printed, first);
  };
  const bolls = from('n', 'traceBolls', forward.bolls, 'bolls');
  const lint = from('L', 'traceLint', forward.lintKg, 'kilograms');
  switch (key) {
    case 'bolls': {
      if (forward.start === 'boll') return procedure([step('traceBolls', exact(forward.bolls), asked)], printed);
      const count = from('c', 'traceStartCount', forward.count, 'none', asked);
      const perPlant = link('bollsPerPlant', 'b', 'bolls');
      const perAcre = link('plantsPerAcre', 'p', 'plantsPerAcre');
      const boll = [link('bollGrams', 'g', 'grams'), link('deliveredPerGrown', 'd')];
      const uses: Readonly<Record<Exclude<StartId, 'boll'>, ChainInputs[]>> = {
        plant: [perPlant],
        rowFoot: [perPlant, perAcre, link('rowInches', 'r', 'inches')],
        acre: [perPlant, perAcre],
        module: [link('moduleLb', 'M', 'pounds'), ...boll],
        bale: [...boll, link('ginTurnout', 't')],
      };
      return closed(startFormulas[forward.start], forward.bolls, 'bolls', count, ...uses[forward.start]);
    }
    case 'seedCotton':
      return closed(
        'seedCottonOfBolls',
        forward.seedCottonKg,
        'kilograms',
        bolls,
        link('bollGrams', 'g', 'grams'),
        link('deliveredPerGrown', 'd'),
      );
    case 'lint':
      return closed(
        'lintOfSeedCotton',
        forward.lintKg,
        'kilograms',
        from('S', 'traceSeedCotton', forward.seedCottonKg, 'kilograms'),
        link('ginTurnout', 't'),
      );
    case 'yarn':
      return closed('yarnOfLint', forward.yarnKg, 'kilograms', lint, link('yarnRealisation', 'r'));
    case 'cloth':
      return closed(
        'clothOfLint',
        forward.clothKg,
        'kilograms',
        lint,
        link('yarnRealisation', 'r'),
        link('weavingYield', 'v'),
        link('finishingYield', 'f'),
      );
    case 'clothArea':
      return closed(
        'clothArea',
        forward.clothSquareYards,
        'squareYards',
        from('C', 'traceCloth', forward.clothKg, 'kilograms'),
        from('o', 'traceForwardOunces', forward.ouncesPerSquareYard, 'ouncesPerSquareYard', { at: 'ledgers' }),
      );
    case 'side':
      return closed(
        'squareSide',
        forward.squareSideInches,
        'inches',
        from('A', 'traceClothArea', forward.clothSquareYards, 'squareYards'),
      );
  }
}

/** How many of a project the lint makes. @param pieceLintKg lint of one, from its own way back */
export function piecesWorking(lintKg: number, pieceLintKg: number, text: string): FormulaWorking {
  const { inputs } = joined(
    from('L', 'traceLint', lintKg, 'kilograms'),
    from('l', 'tracePieceLint', pieceLintKg, 'kilograms'),
  );
  return formula('piecesOfLint', inputs, exact(lintKg / pieceLintKg), { as: 'text', text });
}
