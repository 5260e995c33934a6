import type { DestinationAccount, MassEntry } from '../../model/ledger.ts';
import type { Season } from '../../model/season.ts';
import { type StationId, stationIds } from '../../model/station.ts';

/** A place where seed cotton ended, and its share of all that came to the gin or was added after, 0 to 1. */
export interface Ended {
  readonly account: DestinationAccount;
  readonly share: number;
}

const from: StationId = 'cleaning';

const massKg = ({ dryKg, waterKg }: MassEntry): number =>
  Object.values(dryKg).reduce((sum, kg) => sum + kg, 0) + waterKg;

/** Where the seed cotton of a season went from the gin's door to the sewing table, water and size with it; the largest first. */
export function whereItWent({ ledgers }: Pick<Season, 'ledgers'>): readonly Ended[] {
  const after = ledgers.filter(({ station }) => stationIds.indexOf(station) >= stationIds.indexOf(from));
  const ended = new Map<DestinationAccount, number>();
  for (const { out } of after)
    for (const entry of out)
      if (entry.account !== 'lot') ended.set(entry.account, (ended.get(entry.account) ?? 0) + massKg(entry));
  const cameIn = after.flatMap((ledger, at) => ledger.in.filter(({ account }) => at === 0 || account !== 'lot'));
  const allKg = cameIn.reduce((sum, entry) => sum + massKg(entry), 0);
  return [...ended]
    .filter(([, kg]) => kg > 0)
    .map(([account, kg]) => ({ account, share: kg / allKg }))
    .sort((a, b) => b.share - a.share);
}
