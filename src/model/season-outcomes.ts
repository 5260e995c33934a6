import { summariseGin } from './gin/byproducts.ts';
import type { DestinationAccount, MassLedger } from './ledger.ts';
import { shortFibrePercent } from './length/statistics.ts';
import { totalDryKg, totalKg } from './lot.ts';
import type { Season } from './season.ts';
import { millimetresFromInches } from './units.ts';

/**
 * What two seasons are compared by, in the order of the chain. A season that came to nothing has none of what is counted
 * or weighed, and no staple, grade or price to tell of.
 */
export const outcomeKeys = [
  'seedCottonKg',
  'rainInches',
  'irrigationInches',
  'leftInFieldKg',
  'weatheredKg',
  'moduleLossKg',
  'ginTrashKg',
  'seedKg',
  'motesKg',
  'lintKg',
  'turnoutPercent',
  'bales',
  'staple32nds',
  'lengthMm',
  'uniformityPercent',
  'shortFibrePercent',
  'strengthGPerTex',
  'micronaire',
  'reflectanceRd',
  'yellownessB',
  'leafGrade',
  'centsPerLb',
  'usdPerBale',
  'lintUsd',
  'leftToFarmUsd',
  'millWasteKg',
  'clothSquareMetres',
  'patchInches',
] as const;
export type OutcomeKey = (typeof outcomeKeys)[number];

/** The outcomes of a season by their key, in the unit the key names. Null where the season has no such thing. */
export type SeasonOutcomes = Readonly<Record<OutcomeKey, number | null>>;

/** What ledgers send to some accounts, kg with water. */
function sentKg(ledgers: readonly MassLedger[], accounts: readonly DestinationAccount[]): number {
  let kg = 0;
  for (const { out } of ledgers)
    for (const entry of out)
      if (entry.account !== 'lot' && accounts.includes(entry.account)) kg += totalDryKg(entry.dryKg) + entry.waterKg;
  return kg;
}

export const millWaste: readonly DestinationAccount[] = [
  'millTrash',
  'cardStrips',
  'comberNoil',
  'hardWaste',
  'invisibleLoss',
];

/** The bales' own numbers: sums where they are weighed or paid, means where they are read. */
function baleOutcomes({ classing, pressing, cleaning, ginning, payments }: Season) {
  const bales = classing?.classed ?? [];
  const first = bales.length > 0 && pressing && cleaning && ginning;
  const sum = (read: (bale: (typeof bales)[number]) => number) => bales.reduce((all, bale) => all + read(bale), 0);
  const mean = (read: (bale: (typeof bales)[number]) => number) => (first ? sum(read) / bales.length : null);
  const lintUsd = sum(({ valueUsd }) => valueUsd);
  const lint = first ? pressing.lot.fibre : null;
  return {
    lintKg: pressing?.bales.reduce((all, { netKg }) => all + netKg, 0) ?? 0,
    turnoutPercent: first ? 100 * summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger).turnout : null,
    bales: bales.length,
    staple32nds: mean(({ staple32nds }) => staple32nds),
    shortFibrePercent: lint ? shortFibrePercent(lint.lengths, 'weight') : null,
    reflectanceRd: mean(({ reading }) => reading.reflectanceRd),
    yellownessB: mean(({ reading }) => reading.yellownessB),
    leafGrade: mean(({ leaf }) => leaf),
    centsPerLb: first ? (100 * lintUsd) / sum(({ netLb }) => netLb) : null,
    usdPerBale: first ? lintUsd / bales.length : null,
    lintUsd,
    leftToFarmUsd: payments?.netToFarmUsd ?? 0,
  };
}

/** Reads the outcomes off a season. */
export function seasonOutcomes(season: Season): SeasonOutcomes {
  const { field, harvest, ginning, classing, sewing, ledgers } = season;
  const water = field.seasonWaterInches;
  const reading = classing && classing.classed.length > 0 ? classing.lotReading : null;
  return {
    seedCottonKg: harvest ? totalKg(harvest.lot) : 0,
    rainInches: water.rain,
    irrigationInches: water.irrigation,
    leftInFieldKg: sentKg(ledgers, ['leftInField']),
    weatheredKg: sentKg(ledgers, ['weathered']),
    moduleLossKg: sentKg(ledgers, ['moduleLoss']),
    ginTrashKg: sentKg(ledgers, ['ginTrash']),
    seedKg: ginning ? totalKg(ginning.seedHouse) : 0,
    motesKg: sentKg(ledgers, ['lintCleanerWaste']),
    ...baleOutcomes(season),
    lengthMm: reading ? millimetresFromInches(reading.lengthIn) : null,
    uniformityPercent: reading?.uniformityPercent ?? null,
    strengthGPerTex: reading?.strengthGPerTex ?? null,
    micronaire: reading?.micronaire ?? null,
    millWasteKg: sentKg(ledgers, millWaste),
    clothSquareMetres: sewing?.squareMetres ?? 0,
    patchInches: sewing?.patchInchesPerBoll ?? null,
  };
}

/** The color grade that most of a season's bales were given, such as '31'; null where no bale was classed. */
export function usualColour({ classing }: Season): string | null {
  const counts = new Map<string, number>();
  for (const { color } of classing?.classed ?? []) counts.set(color, (counts.get(color) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))[0]?.[0] ?? null;
}
