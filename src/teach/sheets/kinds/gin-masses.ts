import type { UnitSystem } from '../../../language/unit-system.ts';
import type { DestinationAccount, MassEntry, SourceAccount } from '../../../model/ledger.ts';
import { totalDryKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import { poundsFromKilograms } from '../../../model/units.ts';

/** What a gin took in and gave out for each bale it pressed, as it lay on the scale, in pounds or kilograms. */
export interface GinMasses {
  readonly load: number;
  readonly loadWater: number;
  readonly lintToPress: number;
  readonly seed: number;
  readonly trash: number;
  readonly motes: number;
  readonly dried: number;
  readonly added: number;
}

const entryKg = ({ dryKg, waterKg }: MassEntry): number => totalDryKg(dryKg) + waterKg;

/** Kilograms, or pounds, of the sheet. */
export const massIn = (units: UnitSystem, kg: number): number => (units === 'us' ? poundsFromKilograms(kg) : kg);
export const massUnit = (units: UnitSystem) => (units === 'us' ? 'lb' : 'kg');

/**
 * Reads the gin's three ledgers, shared out among its bales.
 * @throws Error when the season pressed none
 */
export function ginMasses({ cleaning, ginning, pressing }: Season, units: UnitSystem): GinMasses {
  if (!cleaning || !ginning || !pressing || pressing.bales.length === 0) throw new Error('this season pressed no bale');
  const ledgers = [cleaning.ledger, ginning.ledger, pressing.ledger];
  const each = (kg: number) => massIn(units, kg / pressing.bales.length);
  const sum = (side: 'in' | 'out', account: SourceAccount | DestinationAccount): number =>
    each(
      ledgers
        .flatMap((ledger): readonly MassEntry[] => ledger[side])
        .filter((entry) => entry.account === account)
        .reduce((total, entry) => total + entryKg(entry), 0),
    );
  const lot = cleaning.ledger.in.find(({ account }) => account === 'lot')!;
  const [trash, motes, seed] = [sum('out', 'ginTrash'), sum('out', 'lintCleanerWaste'), sum('out', 'seedHouse')];
  const [dried, added] = [sum('out', 'evaporated'), sum('in', 'moistureAdded')];
  const load = each(entryKg(lot));
  return {
    load,
    loadWater: each(lot.waterKg),
    lintToPress: load - seed - trash - motes - dried,
    seed,
    trash,
    motes,
    dried,
    added,
  };
}
