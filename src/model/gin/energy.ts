import { dryingFacts, energyFacts as facts } from './facts.ts';
import type { StandKind } from './machine-facts.ts';

/** What decides a gin's energy for a bale. */
export interface EnergyUse {
  readonly stand: StandKind;
  /** 0 to 2. */
  readonly dryers: number;
  readonly dryerAirF: number;
  /** Whether damp air put moisture back, before the stand or at the lint slide. */
  readonly moistureRestored: boolean;
}

/** Energy for one bale. */
export interface GinEnergy {
  readonly electricityKwh: number;
  readonly propaneLitres: number;
  readonly heatMj: number;
}

/** Published use per bale; the dryers' fuel goes with how far the air is heated above the outside. */
export function ginEnergy({ stand, dryers, dryerAirF, moistureRestored }: EnergyUse): GinEnergy {
  const outsideF = dryingFacts.outsideF.value;
  const heating = Math.max(0, dryerAirF - outsideF) / (facts.ordinaryDryerF.value - outsideF);
  const first = dryers >= 1 ? facts.firstDryerLitres.value * heating : 0;
  const second = dryers >= 2 ? facts.secondDryerLitres.value * heating : 0;
  const propaneLitres = first + second + (moistureRestored ? facts.restorationLitres.value : 0);
  return {
    electricityKwh: stand === 'saw' ? facts.sawKwh.value : facts.rollerKwh.value,
    propaneLitres,
    heatMj: propaneLitres * facts.propaneMjPerLitre.value,
  };
}

/** Bales as a share of what an average American gin pressed in the season of 1994/95. */
export const shareOfAverageGin = (bales: number): number =>
  bales / (facts.nationalBales.value / facts.nationalGins.value);
