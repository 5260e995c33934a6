import * as classingCardLimitFacts from './classing/card-limit-facts.ts';
import * as classingColourChartFacts from './classing/colour-chart-facts.ts';
import * as classingColourGradeFacts from './classing/colour-grade-facts.ts';
import * as classingDampFacts from './classing/damp-facts.ts';
import * as classingDescriptorFacts from './classing/descriptor-facts.ts';
import * as classingFacts from './classing/facts.ts';
import * as classingGapFacts from './classing/gap-facts.ts';
import * as classingMarketEastTexasFacts from './classing/market-east-texas-facts.ts';
import * as classingMarketSanJoaquinFacts from './classing/market-san-joaquin-facts.ts';
import * as classingMarketSoutheastFacts from './classing/market-southeast-facts.ts';
import * as classingMarketWestTexasFacts from './classing/market-west-texas-facts.ts';
import * as classingMoneyFacts from './classing/money-facts.ts';
import * as classingNormalCurveFacts from './classing/normal-curve-facts.ts';
import * as classingPriceFacts from './classing/price-facts.ts';
import * as classingStapleFacts from './classing/staple-facts.ts';
import * as clothCatalogueFacts from './cloth/catalogue-facts.ts';
import * as clothFacts from './cloth/facts.ts';
import * as clothInterlockFacts from './cloth/interlock-facts.ts';
import * as clothOverhangFacts from './cloth/overhang-facts.ts';
import * as clothTightnessFacts from './cloth/tightness-facts.ts';
import * as clothWashFacts from './cloth/wash-facts.ts';
import * as clothWeaveFacts from './cloth/weave-facts.ts';
import type { Fact, Mark } from './fact.ts';
import * as fibreFacts from './fibre-facts.ts';
import * as fieldCalendarFacts from './field/calendar-facts.ts';
import * as fieldClimateFacts from './field/climate-facts.ts';
import * as fieldFacts from './field/facts.ts';
import * as fieldRecordFacts from './field/record-facts.ts';
import * as fieldVarietyFacts from './field/variety-facts.ts';
import * as fieldWaterFacts from './field/water-facts.ts';
import * as ginFacts from './gin/facts.ts';
import * as ginMachineFacts from './gin/machine-facts.ts';
import * as ginPressFacts from './gin/press-facts.ts';
import * as ginSpeedFacts from './gin/speed-facts.ts';
import * as harvestFacts from './harvest/facts.ts';
import * as harvestLabourFacts from './harvest/labour-facts.ts';
import * as harvestMachineFacts from './harvest/machine-facts.ts';
import * as inputFacts from './input-facts.ts';
import * as lengthClassCardFacts from './length/class-card-facts.ts';
import * as lengthFacts from './length/facts.ts';
import * as lengthLatticeFacts from './length/lattice-facts.ts';
import * as lengthReadingFacts from './length/reading-facts.ts';
import * as millBenchLimitFacts from './mill/bench-limit-facts.ts';
import * as millCottonFacts from './mill/cotton-facts.ts';
import * as millFacts from './mill/facts.ts';
import * as millSpeedFacts from './mill/speed-facts.ts';
import * as millWasteFacts from './mill/waste-facts.ts';
import * as millYarnNumberFacts from './mill/yarn-number-facts.ts';
import * as moduleFacts from './module/facts.ts';
import * as problemFacts from './problem-facts.ts';
import * as roundingFacts from './rounding-facts.ts';
import * as timelineFacts from './timeline-facts.ts';
import * as traceFacts from './trace/facts.ts';
import * as traceFamiliarFacts from './trace/familiar-facts.ts';
import * as traceProjectFacts from './trace/project-facts.ts';
import * as traceTradeFacts from './trace/trade-facts.ts';

/** Every facts file of the model by its path from src/model, without its ending. A test holds the list complete. */
const files: Readonly<Record<string, object>> = {
  'classing/card-limit-facts': classingCardLimitFacts,
  'classing/colour-chart-facts': classingColourChartFacts,
  'classing/colour-grade-facts': classingColourGradeFacts,
  'classing/damp-facts': classingDampFacts,
  'classing/descriptor-facts': classingDescriptorFacts,
  'classing/facts': classingFacts,
  'classing/gap-facts': classingGapFacts,
  'classing/market-east-texas-facts': classingMarketEastTexasFacts,
  'classing/market-san-joaquin-facts': classingMarketSanJoaquinFacts,
  'classing/market-southeast-facts': classingMarketSoutheastFacts,
  'classing/market-west-texas-facts': classingMarketWestTexasFacts,
  'classing/money-facts': classingMoneyFacts,
  'classing/normal-curve-facts': classingNormalCurveFacts,
  'classing/price-facts': classingPriceFacts,
  'classing/staple-facts': classingStapleFacts,
  'cloth/catalogue-facts': clothCatalogueFacts,
  'cloth/facts': clothFacts,
  'cloth/interlock-facts': clothInterlockFacts,
  'cloth/overhang-facts': clothOverhangFacts,
  'cloth/tightness-facts': clothTightnessFacts,
  'cloth/wash-facts': clothWashFacts,
  'cloth/weave-facts': clothWeaveFacts,
  'fibre-facts': fibreFacts,
  'field/calendar-facts': fieldCalendarFacts,
  'field/climate-facts': fieldClimateFacts,
  'field/facts': fieldFacts,
  'field/record-facts': fieldRecordFacts,
  'field/variety-facts': fieldVarietyFacts,
  'field/water-facts': fieldWaterFacts,
  'gin/facts': ginFacts,
  'gin/machine-facts': ginMachineFacts,
  'gin/press-facts': ginPressFacts,
  'gin/speed-facts': ginSpeedFacts,
  'harvest/facts': harvestFacts,
  'harvest/labour-facts': harvestLabourFacts,
  'harvest/machine-facts': harvestMachineFacts,
  'input-facts': inputFacts,
  'length/class-card-facts': lengthClassCardFacts,
  'length/facts': lengthFacts,
  'length/lattice-facts': lengthLatticeFacts,
  'length/reading-facts': lengthReadingFacts,
  'mill/bench-limit-facts': millBenchLimitFacts,
  'mill/cotton-facts': millCottonFacts,
  'mill/facts': millFacts,
  'mill/speed-facts': millSpeedFacts,
  'mill/waste-facts': millWasteFacts,
  'mill/yarn-number-facts': millYarnNumberFacts,
  'module/facts': moduleFacts,
  'problem-facts': problemFacts,
  'rounding-facts': roundingFacts,
  'timeline-facts': timelineFacts,
  'trace/facts': traceFacts,
  'trace/familiar-facts': traceFamiliarFacts,
  'trace/project-facts': traceProjectFacts,
  'trace/trade-facts': traceTradeFacts,
};

/** A folder of the chain, or the core they all share. */
export type FactLink =
  | 'core'
  | 'length'
  | 'field'
  | 'harvest'
  | 'module'
  | 'gin'
  | 'classing'
  | 'mill'
  | 'cloth'
  | 'trace';

/** A fact and where it stands. */
export interface ListedFact {
  /** File and keys, such as 'field/facts.stageFacts.squareDays'. */
  readonly name: string;
  readonly link: FactLink;
  readonly fact: Fact;
}

/** What the tables of facts have in common; their numbers stand in rows or under names of their own. */
export interface CitedTable {
  readonly unit?: string;
  readonly source: string;
  readonly mark: Mark;
  readonly note?: string;
}

/** A table and where it stands. */
export interface ListedTable {
  readonly name: string;
  readonly link: FactLink;
  readonly table: CitedTable;
}

interface Found {
  readonly name: string;
  readonly cited: Fact | CitedTable;
}

/** All that cites a source below a value, with its path. What is cited is not looked into further. */
function citedBelow(value: unknown, name: string): Found[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('source' in value && 'mark' in value) return [{ name, cited: value as Fact | CitedTable }];
  return Object.entries(value).flatMap(([key, inner]) => citedBelow(inner, `${name}.${key}`));
}

const isFact = (cited: Fact | CitedTable): cited is Fact => 'value' in cited && typeof cited.value === 'number';

const linkOf = (name: string): FactLink => (name.includes('/') ? (name.split('/')[0] as FactLink) : 'core');

const found = (): Found[] => Object.entries(files).flatMap(([file, module]) => citedBelow({ ...module }, file));

/**
 * Every constant of the model, in order of files and of their texts. One that several keys share is listed under each; it
 * is the same object, not a copy.
 */
export const allFacts = (): readonly ListedFact[] =>
  found().flatMap(({ name, cited }) => (isFact(cited) ? [{ name, link: linkOf(name), fact: cited }] : []));

/** Every table of constants of the model. */
export const allTables = (): readonly ListedTable[] =>
  found().flatMap(({ name, cited }) => (isFact(cited) ? [] : [{ name, link: linkOf(name), table: cited }]));
