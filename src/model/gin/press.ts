import type { DecisionsOf } from '../decisions.ts';
import { type MassLedger, massEntry } from '../ledger.ts';
import { type Lot, totalKg } from '../lot.ts';
import type { Random } from '../random.ts';
import { roundingFacts } from '../rounding-facts.ts';
import type { Era } from '../scenario.ts';
import { kilogramsFromPounds } from '../units.ts';
import { baleMark, baleTag } from './bale-tag.ts';
import { baleWeightsKg } from './bale-weights.ts';
import type { MachineStep } from './machine-step.ts';
import { lintMoisturePercent, moistenLint } from './moisten.ts';
import { type BaleStrap, type BaleWrap, baleTareLb, pressFacts } from './press-facts.ts';
import { fullStrokeDensity, meganewtons, pressForceLb, universalDensity } from './press-force.ts';

interface Bale {
  /** Running number, from 1. */
  readonly number: number;
  readonly netKg: number;
  readonly tareKg: number;
  readonly grossKg: number;
  /** Twelve digits; null in the 1930s. */
  readonly tag: string | null;
  /** Stencilled mark; null where there is a tag. */
  readonly mark: string | null;
  /** Whether it is what was left over, lighter than half a bale: a gin holds such a remnant over for the next lot. */
  readonly remnant: boolean;
}

type PressWarning = 'baleTooDamp' | 'oddWeight';

export interface PressingOutcome {
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly machines: readonly MachineStep[];
  readonly bales: readonly Bale[];
  /** Lint moisture in the bale, % wet basis. */
  readonly moisturePercent: number;
  /** Universal Density packing of the mean whole bale; null in the 1930s, whose bales were flat. */
  readonly densityLbPerCubicFoot: number | null;
  /** Force at full stroke for the mean whole bale, MN; null in the 1930s. */
  readonly pressForceMN: number | null;
  readonly warnings: readonly PressWarning[];
}

/** Weight of wrapping and straps, kg. */
export const tareKg = (wrap: BaleWrap, strap: BaleStrap): number => kilogramsFromPounds(baleTareLb[wrap][strap]);

/**
 * Restores moisture at the lint slide and presses bales. Moisture is only added, never taken; the classing sample is cut
 * later, at the classing station.
 */
export function pressBales(lot: Lot, decisions: DecisionsOf<'pressing'>, era: Era, random: Random): PressingOutcome {
  const slide = moistenLint('lintSlide', lot, decisions.restoreToPercent);
  const pressed: Lot = { ...slide.out, fibre: lot.fibre };
  const wantedKg = kilogramsFromPounds(decisions.netPounds);
  const weights = baleWeightsKg(totalKg(pressed), wantedKg, random);
  const present = era === 'present';
  const tare = present ? tareKg('film', 'pet') : kilogramsFromPounds(pressFacts.thirtiesTareLb.value);
  const bales = weights.map((netKg, index): Bale => {
    const number = index + 1;
    return {
      number,
      netKg,
      tareKg: tare,
      grossKg: netKg + tare,
      tag: present ? baleTag(number) : null,
      mark: present ? null : baleMark(number),
      remnant: netKg < wantedKg * pressFacts.remnantShare.value,
    };
  });
  const moisturePercent = lintMoisturePercent(pressed);
  // The press packs to its mark; a light last bale says nothing about it.
  const fullest = bales.filter(({ netKg }) => netKg >= wantedKg * (1 - pressFacts.oddWeightShare.value));
  const typical = fullest.length > 0 ? fullest : bales;
  const meanKg = typical.reduce((sum, { netKg }) => sum + netKg, 0) / typical.length;
  const warnings: PressWarning[] = [];
  // A hair of tolerance: lint brought to exactly the limit is not too damp.
  const limit = pressFacts.dampestBalePercent.value * (1 + roundingFacts.hair.value);
  // No limit of moisture held in the 1930s.
  if (present && moisturePercent > limit) warnings.push('baleTooDamp');
  if (fullest.length < bales.length) warnings.push('oddWeight');
  return {
    lot: pressed,
    ledger: {
      station: 'pressing',
      in: [massEntry('lot', lot), ...slide.added.map(({ account, masses }) => massEntry(account, masses))],
      out: [massEntry('lot', pressed)],
    },
    machines: [slide],
    bales,
    moisturePercent,
    densityLbPerCubicFoot: present ? universalDensity(meanKg).lbPerCubicFoot : null,
    pressForceMN: present ? meganewtons(pressForceLb(fullStrokeDensity(meanKg), moisturePercent)) : null,
    warnings,
  };
}
