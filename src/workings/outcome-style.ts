import type { OutcomeKey } from '../model/season-outcomes.ts';
import type { Printed, QuantityKind } from './working.ts';

interface Style {
  readonly as: QuantityKind;
  readonly decimals?: number;
}
const kilograms: Style = { as: 'mass', decimals: 0 };
const share: Style = { as: 'percent' };
const dollars: Style = { as: 'money', decimals: 0 };
const tenths: Style = { as: 'number', decimals: 1 };

const styles: Readonly<Record<OutcomeKey, Style>> = {
  seedCottonKg: kilograms,
  rainInches: { as: 'rain' },
  irrigationInches: { as: 'rain' },
  leftInFieldKg: kilograms,
  weatheredKg: kilograms,
  moduleLossKg: kilograms,
  ginTrashKg: kilograms,
  seedKg: kilograms,
  motesKg: kilograms,
  lintKg: kilograms,
  turnoutPercent: share,
  bales: { as: 'count' },
  staple32nds: { as: 'thirtySeconds', decimals: 1 },
  lengthMm: { as: 'fibreLength' },
  uniformityPercent: share,
  shortFibrePercent: share,
  strengthGPerTex: { as: 'strength' },
  micronaire: tenths,
  reflectanceRd: tenths,
  yellownessB: tenths,
  leafGrade: tenths,
  centsPerLb: { as: 'centsPerPound' },
  usdPerBale: dollars,
  lintUsd: dollars,
  leftToFarmUsd: dollars,
  millWasteKg: kilograms,
  clothSquareMetres: { as: 'clothArea', decimals: 0 },
  patchInches: { as: 'length', decimals: 2 },
};

/** An outcome as a page prints it. */
export const outcomePrinted = (key: OutcomeKey, value: number): Extract<Printed, { as: QuantityKind }> => ({
  ...styles[key],
  value,
});

/** A difference of outcomes with its sign; of shares in points, not per cent of per cent. */
export function differencePrinted(key: OutcomeKey, value: number): Extract<Printed, { as: 'signed' }> {
  const { as, ...rest } = styles[key];
  return { as: 'signed', kind: as === 'percent' ? 'points' : as, value, ...rest };
}
