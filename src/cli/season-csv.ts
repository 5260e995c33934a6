import { csvFormat } from 'd3-dsv';
import { chainLedger, type MassEntry } from '../model/ledger.ts';
import { parts, totalDryKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';

const row = (station: string, side: string, entry: MassEntry) => ({
  station,
  side,
  account: entry.account,
  ...Object.fromEntries(parts.map((part) => [`${part}Kg`, entry.dryKg[part]])),
  waterKg: entry.waterKg,
  allKg: totalDryKg(entry.dryKg) + entry.waterKg,
});

/** The ledgers as comma-separated values: one row an account, station by station, then the whole chain. Masses in kg, dry by part. */
export function seasonCsv(season: Season): string {
  const whole = chainLedger(season.ledgers);
  const rows = [...season.ledgers, { station: 'all', ...whole }].flatMap((ledger) => [
    ...ledger.in.map((entry) => row(ledger.station, 'in', entry)),
    ...ledger.out.map((entry) => row(ledger.station, 'out', entry)),
  ]);
  const columns = ['station', 'side', 'account', ...parts.map((part) => `${part}Kg`), 'waterKg', 'allKg'];
  return csvFormat(rows, columns as (keyof (typeof rows)[number])[]);
}
