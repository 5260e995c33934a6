import { office } from '../model/classing/facts.ts';
import { processFacts } from '../model/cloth/facts.ts';
import type { Fact } from '../model/fact.ts';
import { foreignMatterShares, harvestFacts } from '../model/harvest/facts.ts';
import { foreignMatterFraction, type HarvestMethod } from '../model/harvest/foreign-matter.ts';
import type { Part } from '../model/lot.ts';
import { wasteFacts } from '../model/mill/waste-facts.ts';
import type { Season } from '../model/season.ts';
import { atStation, count, exact, inField, percent, read, step } from './steps.ts';
import type { Step } from './working.ts';

/** What an account takes of each part, where the model states it as a share; a step for each constant. */
type Rates = (season: Season, column: Part | 'water') => readonly Step[];

const share = (name: string, fact: Fact): Step => step(name, percent(100 * fact.value), read(fact));

const gathererOf = (method: HarvestMethod) => (method === 'stripperFieldCleaner' ? 'stripper' : method);

function gathered({ scenario }: Season): Step[] {
  const gatherer = gathererOf(scenario.decisions.harvest.method);
  if (gatherer === 'hand') return [share('gathered', harvestFacts.handEfficiency)];
  if (gatherer === 'stripper') return [share('gathered', harvestFacts.stripperEfficiency)];
  return [share('gathered', harvestFacts.spindleEfficiency), share('notHardLocked', harvestFacts.hardLockFraction)];
}

function takenAlong({ field, scenario }: Season, column: Part | 'water'): Step[] {
  if (!field.crop) return [];
  const { method } = scenario.decisions.harvest;
  const { leafRemaining, lintLbPerAcre } = field.crop;
  const table = foreignMatterShares[gathererOf(method)];
  const ofKind = (table.shares as Readonly<Partial<Record<string, number>>>)[column];
  return [
    step('leafOnPlant', percent(100 * leafRemaining), inField),
    step(
      'foreignShare',
      percent(100 * foreignMatterFraction(method, leafRemaining, lintLbPerAcre), 2),
      atStation('harvest'),
    ),
    ...(ofKind === undefined ? [] : [step('kindShare', percent(100 * ofKind), read(table))]),
  ];
}

/** By station and account. Accounts that machines fill have their shares at the machines. */
const rates: Readonly<Record<string, Rates>> = {
  'harvest/weathered': ({ field }) =>
    field.crop ? [step('lostToRain', percent(100 * field.crop.weatheredFraction, 2), inField)] : [],
  'harvest/leftInField': gathered,
  'harvest/takenAlong': takenAlong,
  'module/moduleLoss': ({ module }) =>
    module ? [step('spoiltShare', percent(100 * module.lostFraction, 3), atStation('module'))] : [],
  'classing/classingSample': ({ classing }) => [
    step('sampleOunces', exact(office.sampleOunces.value, 'ounces'), read(office.sampleOunces)),
    step('balesPressed', count(classing?.classed.length ?? 0), atStation('pressing')),
  ],
  'spinning/invisibleLoss': () => [share('flyShare', wasteFacts.invisibleLoss)],
  'spinning/hardWaste': () => [share('sweepings', wasteFacts.sweepings), share('yarnWaste', wasteFacts.yarnWaste)],
  'weaving/warpSize': () => [share('sizeOnWarp', processFacts.sizeShare)],
  'weaving/finish': () => [share('printOnCloth', processFacts.printAddOn)],
  'weaving/hardWaste': ({ scenario }) =>
    scenario.decisions.weaving.structure === 'jersey'
      ? [share('makingWaste', processFacts.knittingWaste)]
      : [share('makingWaste', processFacts.weavingWaste)],
  'sewing/offcuts': () => [share('cutAway', processFacts.cuttingLoss)],
};

/** The constants that say what an account of a station takes. */
export const rateSteps = (season: Season, station: string, account: string, column: Part | 'water'): readonly Step[] =>
  rates[`${station}/${account}`]?.(season, column) ?? [];
