import type { ClassedBale } from '../model/classing/class-bales.ts';
import type { DestinationAccount } from '../model/ledger.ts';
import { totalDryKg, totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { millWaste, type OutcomeKey, usualColour } from '../model/season-outcomes.ts';
import { bloomWorkings } from './bloom.ts';
import { classingWorkings, leftWorking } from './classing.ts';
import { type FibreKey, fibreWorking } from './fibre.ts';
import { ginningWorkings } from './ginning.ts';
import { harvestWorkings } from './harvest.ts';
import { outcomePrinted } from './outcome-style.ts';
import { pressingWorkings } from './pressing.ts';
import { sewingWorkings } from './sewing.ts';
import {
  accountWorking,
  atStation,
  count,
  decided,
  exact,
  inLedger,
  mass,
  procedure,
  type StationWorkings,
  step,
} from './steps.ts';
import type { Step, Working } from './working.ts';

/** What stations sent to some accounts, ledger by ledger. */
function sentWorking({ ledgers }: Season, accounts: readonly DestinationAccount[]): Working {
  const steps = ledgers.flatMap(({ station, out }) =>
    out.flatMap(({ account, dryKg, waterKg }) =>
      account !== 'lot' && accounts.includes(account)
        ? [step({ account, side: 'out' }, mass(totalDryKg(dryKg) + waterKg), inLedger(station))]
        : [],
    ),
  );
  const sum = steps.reduce((all, { value }) => all + ('value' in value ? value.value : 0), 0);
  return procedure(steps, mass(sum, 0));
}

/** The mean of something over the bales: how many were given each value, where it is a grade; else its least, most and sum. */
function meanOfBales(
  { classing }: Season,
  read: (bale: ClassedBale) => number,
  code: ((value: number) => string) | null,
): Working | null {
  const values = (classing?.classed ?? []).map(read);
  if (values.length === 0) return null;
  const at = atStation('classing');
  const sum = values.reduce((all, value) => all + value, 0);
  const grades = [...new Set(values)].sort((a, b) => a - b);
  const spread: Step[] = code
    ? grades.map((grade) =>
        step({ code: code(grade) }, exact(values.filter((value) => value === grade).length, 'bales'), at),
      )
    : [step('lowestOfBales', exact(grades[0]!), at), step('highestOfBales', exact(grades.at(-1)!), at)];
  return procedure([...spread, step('sumOfBales', exact(sum), at), step('balesPressed', count(values.length), at)], {
    as: 'number',
    value: sum / values.length,
  });
}

/** The fibre in the bale: behind the last machine of the gin. */
function inBale(season: Season, key: FibreKey): Working | null {
  if (!season.classing?.classed.length) return null;
  const ginned = season.fibreTrail.filter(({ after }) => after !== 'card' && after !== 'comber');
  return fibreWorking(season, ginned.length - 1, key);
}

const from = (workings: StationWorkings, key: string) => (season: Season) => workings[key]!(season);
const readings: Readonly<Record<OutcomeKey, (season: Season) => Working | null>> = {
  seedCottonKg: from(harvestWorkings, 'seedCotton'),
  rainInches: from(bloomWorkings, 'rain'),
  irrigationInches: from(bloomWorkings, 'irrigation'),
  leftInFieldKg: from(harvestWorkings, 'leftInField'),
  weatheredKg: from(harvestWorkings, 'weathered'),
  moduleLossKg: ({ module }) => module && accountWorking(module.ledger, 'moduleLoss', 0),
  ginTrashKg: (season) => sentWorking(season, ['ginTrash']),
  seedKg: ({ ginning }) => ginning && accountWorking(ginning.ledger, 'seedHouse', 0),
  motesKg: from(ginningWorkings, 'lintCleanerWaste'),
  lintKg: ({ pressing }) =>
    pressing &&
    procedure(
      [
        step('lintPressed', mass(totalKg(pressing.lot)), inLedger('pressing')),
        step('balesPressed', count(pressing.bales.length), atStation('pressing')),
      ],
      mass(
        pressing.bales.reduce((sum, { netKg }) => sum + netKg, 0),
        0,
      ),
    ),
  turnoutPercent: (season) => (season.classing?.classed.length ? ginningWorkings.turnout!(season) : null),
  bales: from(pressingWorkings, 'balesPressed'),
  staple32nds: (season) =>
    meanOfBales(
      season,
      (bale) => bale.staple32nds,
      (code) => `${code}/32`,
    ),
  lengthMm: (season) => inBale(season, 'upperHalfMeanMm'),
  uniformityPercent: (season) => inBale(season, 'uniformityPercent'),
  shortFibrePercent: (season) => inBale(season, 'shortFibrePercentByWeight'),
  strengthGPerTex: (season) => inBale(season, 'strengthGPerTex'),
  micronaire: (season) => inBale(season, 'micronaire'),
  reflectanceRd: (season) => meanOfBales(season, ({ reading }) => reading.reflectanceRd, null),
  yellownessB: (season) => meanOfBales(season, ({ reading }) => reading.yellownessB, null),
  leafGrade: (season) => meanOfBales(season, ({ leaf }) => leaf, String),
  centsPerLb: (season) => (season.classing?.classed.length ? classingWorkings.price!(season) : null),
  usdPerBale: (season) => meanOfBales(season, ({ valueUsd }) => valueUsd, null),
  lintUsd: from(classingWorkings, 'value'),
  leftToFarmUsd: leftWorking,
  millWasteKg: (season) => sentWorking(season, millWaste),
  clothSquareMetres: (season) => {
    const { sewing, weaving } = season;
    return sewing && weaving?.cloth
      ? procedure(
          [
            step('clothArea', exact(weaving.cloth.squareMetres, 'squareMetres'), atStation('weaving')),
            ...(season.scenario.decisions.sewing.prewash
              ? [step('takenByWash', { as: 'both', ...weaving.cloth.shrinkLeftPercent }, decided('sewing'))]
              : []),
          ],
          { as: 'clothArea', value: sewing.squareMetres },
        )
      : null;
  },
  patchInches: from(sewingWorkings, 'patch'),
};

/** Outcomes of which a season that came to nothing has none, and none is nought: they are weighed, counted or paid. */
const mayBeNought: readonly OutcomeKey[] = [
  'seedCottonKg',
  'leftInFieldKg',
  'weatheredKg',
  'moduleLossKg',
  'ginTrashKg',
  'seedKg',
  'motesKg',
  'lintKg',
  'bales',
  'lintUsd',
  'leftToFarmUsd',
  'millWasteKg',
  'clothSquareMetres',
];

/** How a season came by what it is compared by; null where it has no such thing. */
export function outcomeWorking(season: Season, key: OutcomeKey): Working | null {
  const working = readings[key](season);
  const value = working && 'value' in working.result ? working.result.value : 0;
  const lines = working?.kind === 'formula' ? working.inputs.length : (working?.steps.length ?? 0);
  if (working && lines > 0) return { ...working, result: outcomePrinted(key, value) };
  if (!mayBeNought.includes(key)) return null;
  const weighed = step('stationsWeighed', count(season.ledgers.length), { at: 'ledgers' });
  return procedure([weighed], outcomePrinted(key, 0));
}

/** The color grade of most bales: how many were given each. */
export function colourWorking(season: Season): Working | null {
  const usual = usualColour(season);
  if (usual === null || !season.classing) return null;
  const colours = season.classing.classed.map(({ color }) => color);
  const steps = [...new Set(colours)]
    .sort()
    .map((code) =>
      step({ code }, exact(colours.filter((each) => each === code).length, 'bales'), atStation('classing')),
    );
  return procedure(steps, { as: 'text', text: usual });
}
