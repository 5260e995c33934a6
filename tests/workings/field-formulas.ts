import fc from 'fast-check';
import { fieldCounts } from '../../src/model/field/field-counts.ts';
import { plantsStanding, rowFeetPerAcre } from '../../src/model/field/stand.ts';
import { lintFromBolls } from '../../src/model/field/yield-estimate.ts';
import { harvestFacts } from '../../src/model/harvest/facts.ts';
import { harvest } from '../../src/model/harvest/harvest.ts';
import { partMasses, totalKg } from '../../src/model/lot.ts';
import { standingField } from '../model/field/hand-made-field.ts';
import { ordinary } from '../model/field/plans.ts';
import { mediumFibre } from '../model/lots.ts';
import { type FormulaModel, from, letters, whole } from './formula-model.ts';

const { pickerAcresPerHour, stripperAcresPerHour, handPoundsPerDay } = harvestFacts;

/** A harvest of so much lint standing open on so many acres. */
const harvestOf = (lintKg: number, acres: number, method: 'hand' | 'spindle' | 'stripper') =>
  harvest(
    {
      grown: {
        dryKg: partMasses({ lint: lintKg, seed: 1.5 * lintKg }),
        waterKg: { lint: 0.08 * lintKg, seed: 0.15 * lintKg, trash: 0 },
        fibre: mediumFibre,
      },
      weatheredFraction: 0.03,
      leafRemaining: 0.2,
      acres,
      lintLbPerAcre: 800,
    },
    { method, moisturePercent: 10, daysToHarvest: 0, pickings: 1 },
  );

/** The formulas of the field and the harvest. */
export const fieldFormulas = {
  stand: {
    inputs: letters({ r: from(15, 40), s: from(1, 8), e: from(0, 1) }),
    compute: ({ r, s, e }) => plantsStanding(rowFeetPerAcre(r!) * s!, e!),
  },
  seedsSown: {
    inputs: letters({ r: from(15, 40), s: from(1, 8), A: from(1, 2000) }),
    compute: ({ r, s, A }) => {
      const plan = { ...ordinary.midSouth, rowInches: r!, seedsPerFoot: s!, acres: A! };
      return fieldCounts(standingField(plan), 0).find(({ station }) => station === 'planting')!.whole.count;
    },
  },
  lintYield: {
    inputs: letters({ P: from(5000, 150_000), b: from(0, 40), g: from(0, 4) }),
    compute: ({ P, b, g }) => lintFromBolls(P!, b!, g!),
  },
  personDays: {
    // What the scale reads is the model's own answer, so the letter takes it from there.
    inputs: from(1, 200_000).map((standing) => ({
      S: totalKg(harvestOf(standing, 1, 'hand').lot),
      h: handPoundsPerDay.value,
      standing,
    })),
    compute: ({ standing }) => harvestOf(standing!, 1, 'hand').labour.personDays!,
  },
  machineHours: {
    inputs: fc.record({ stripper: whole(0, 1), A: from(1, 2000) }).map(({ stripper, A }) => ({
      A,
      a: (stripper ? stripperAcresPerHour : pickerAcresPerHour).value,
      stripper,
    })),
    compute: ({ A, stripper }) => harvestOf(1000, A!, stripper ? 'stripper' : 'spindle').labour.machineHours!,
  },
} satisfies Readonly<Record<string, FormulaModel>>;
