import type { CottonKind } from '../fibre.ts';
import { openStream, type Random } from '../random.ts';
import { spread } from './facts.ts';
import {
  averageModule,
  depart,
  drawDeparture,
  type InstrumentReading,
  mixReadings,
  roundReading,
  testBale,
} from './reading.ts';

/** One bale on its way through the instrument line. */
export interface BaleReading {
  readonly number: number;
  /** Module the bale was pressed from, counted from 1. */
  readonly module: number;
  /** The bale's true values. */
  readonly truth: InstrumentReading;
  /** The bale's own test, rounded. */
  readonly own: InstrumentReading;
  /** What stands on the record: the module's mean where modules are averaged. */
  readonly recorded: InstrumentReading;
  /** The rest of the bale's stream, for the calls made by hand. */
  readonly random: Random;
}

/** How the bales of a lot are read. */
export interface ReadingPlan {
  readonly seed: number;
  readonly kind: CottonKind;
  readonly balesPerModule: number;
  readonly moduleAveraging: boolean;
}

/** Module of a bale, counted from 1. */
const moduleOf = (baleNumber: number, balesPerModule: number): number =>
  Math.floor((baleNumber - 1) / balesPerModule) + 1;

/**
 * Reads every bale of a lot: lot to module to bale to test. A bale's values hang on the seed, its number and the bales a
 * module makes, never on how many bales follow, so that classing again gives the same bale again.
 * @param lot what the whole lot would read without noise
 * @param numbers bale numbers, counted from 1 in the order of pressing
 */
export function readBales(lot: InstrumentReading, numbers: readonly number[], plan: ReadingPlan): BaleReading[] {
  const perModule = Math.max(1, Math.round(plan.balesPerModule));
  const modules = new Map<number, InstrumentReading>();
  const moduleTruth = (module: number): InstrumentReading => {
    // Module streams count downwards from -1, so that they never meet a bale's.
    const known =
      modules.get(module) ??
      depart(lot, drawDeparture(openStream(plan.seed, 'classing', -module)), 'module', plan.kind);
    modules.set(module, known);
    return known;
  };
  const tested = numbers.map((number) => {
    const module = moduleOf(number, perModule);
    const random = openStream(plan.seed, 'classing', number);
    const pure = blendWithNeighbour(number, module, perModule, moduleTruth);
    const truth = depart(pure, drawDeparture(random), 'bale', plan.kind);
    return { number, module, truth, test: testBale(truth, random), random };
  });
  const averaged = plan.moduleAveraging ? averageByModule(tested) : tested.map(({ test }) => test);
  return tested.map(({ number, module, truth, test, random }, i) => ({
    number,
    module,
    truth,
    own: roundReading(test),
    recorded: roundReading(averaged[i]!),
    random,
  }));
}

/** The cotton of a bale: its module's, half mixed with the module before or after at the ends. The first bale of all starts clean. */
function blendWithNeighbour(
  number: number,
  module: number,
  perModule: number,
  truthOf: (module: number) => InstrumentReading,
): InstrumentReading {
  const own = truthOf(module);
  const place = (number - 1) % perModule;
  // A module of one bale meets a neighbour once, not twice.
  if (place === 0 && module > 1) return mixReadings(own, truthOf(module - 1), spread.neighbourShare.value);
  if (place === perModule - 1 && perModule > 1)
    return mixReadings(own, truthOf(module + 1), spread.neighbourShare.value);
  return own;
}

function averageByModule(tested: readonly { readonly module: number; readonly test: InstrumentReading }[]) {
  const groups = new Map<number, number[]>();
  tested.forEach(({ module }, i) => {
    const group = groups.get(module);
    if (group) group.push(i);
    else groups.set(module, [i]);
  });
  const averaged: InstrumentReading[] = tested.map(({ test }) => test);
  for (const group of groups.values()) {
    const means = averageModule(group.map((i) => tested[i]!.test));
    group.forEach((i, k) => {
      averaged[i] = means[k]!;
    });
  }
  return averaged;
}
