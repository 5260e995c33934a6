import type { decisionTable } from '../../../model/decisions.ts';

type Table = typeof decisionTable;
/** Words for every decision in the table: a label, a line of help, and a name for each option. */
export type DecisionWords = {
  readonly [Station in keyof Table]: {
    readonly [Key in keyof Table[Station]]: {
      readonly label: string;
      readonly help: string;
    } & (Table[Station][Key] extends {
      readonly options: readonly (infer Option extends string)[];
    }
      ? { readonly options: Readonly<Record<Option, string>> }
      : unknown);
  };
};

export const decisions = {
  planting: {
    plantingDayOfYear: {
      label: 'Planting date',
      help: 'Cotton wants warm soil. Too early, and seeds may rot; too late, and the last bolls may not open.',
    },
    variety: {
      label: 'Seed',
      help: 'The variety sets how long the fiber can grow and how much of the seed cotton is lint.',
      options: {
        uplandShort: 'Upland, short',
        uplandMedium: 'Upland, medium',
        uplandLong: 'Upland, long',
        pima: 'Pima, extra long',
      },
    },
    rowInches: { label: 'Row width', help: 'The distance from one row to the next.' },
    seedsPerFoot: { label: 'Seeds in the row', help: 'Crowded plants carry fewer bolls each.' },
  },
  bloom: {
    irrigationInches: {
      label: 'Irrigation',
      help: 'The most that may be given over the season, on top of rain; only what the crop needs is given, until a third of the bolls are open. Thirsty plants drop squares and young bolls.',
    },
  },
  boll: {
    harvestAid: {
      label: 'Harvest aid',
      help: 'A chemical that drops the leaves. Licensed people apply it, by the label.',
    },
    openPercent: {
      label: 'Bolls open at harvest aid',
      help: 'Earlier means less rain on the cotton, and fewer, thinner-walled fibers.',
    },
  },
  harvest: {
    method: {
      label: 'Harvest by',
      help: 'Hands and spindles take the seed cotton; strippers take the whole boll.',
      options: {
        hand: 'Hand',
        spindle: 'Spindle picker',
        stripper: 'Stripper',
        stripperFieldCleaner: 'Stripper with field cleaner',
      },
    },
    daysToHarvest: { label: 'Wait before harvest', help: 'Days after the harvest aid, or after enough bolls opened.' },
    pickings: { label: 'Times over the field', help: 'Hands can come back for the bolls that open later.' },
    moisturePercent: {
      label: 'Moisture at harvest',
      help: 'Picking in the dew takes water along. Wet spindles add about one point of their own.',
    },
  },
  module: {
    kind: {
      label: 'Store in',
      help: 'How the seed cotton waits for the gin.',
      options: { round: 'Round module', conventional: 'Long module', wagon: 'Wagon' },
    },
    cover: {
      label: 'Cover',
      help: 'Rain that gets in makes the cotton heat.',
      options: { good: 'Sound cover', poor: 'Torn cover', none: 'No cover' },
    },
    storageDays: { label: 'Days in storage', help: 'How long the cotton waits for its turn at the gin.' },
  },
  cleaning: {
    dryers: { label: 'Dryers', help: 'Drier cotton cleans better and breaks more.' },
    dryerAirF: { label: 'Dryer air', help: 'Heat of the air where it meets the cotton.' },
    cylinderCleaners: { label: 'Cylinder cleaners', help: 'Spiked rollers scrub leaf and dirt through a screen.' },
    stickMachines: { label: 'Stick machines', help: 'Saws sling off sticks and burs; stripped cotton needs them.' },
  },
  ginning: {
    stand: {
      label: 'Gin stand',
      help: 'Saws are fast. Rollers are slow and gentle, used for Pima.',
      options: { saw: 'Saw', roller: 'Roller' },
    },
    lintCleaner: {
      label: 'Kind of lint cleaner',
      help: 'What the lint meets after the stand.',
      options: { saw: 'Saw type', roller: 'Roller type', air: 'Air only' },
    },
    lintCleaners: { label: 'Lint cleaners', help: 'Each one lifts the leaf grade and takes some length and lint.' },
    moistureAddedPoints: {
      label: 'Moisture before the stand',
      help: 'A little water back keeps fibers from breaking.',
    },
  },
  pressing: {
    netPounds: { label: 'Lint in a bale', help: 'A bale of statistics holds 480 pounds; real ones vary.' },
    restoreToPercent: {
      label: 'Moisture at the press',
      help: 'Dry lint fights the press. Water added here is weighed too.',
    },
  },
  classing: {
    market: {
      label: 'Market',
      help: 'Each region publishes its own premiums and discounts.',
      options: {
        southeast: 'Southeast',
        sanJoaquin: 'San Joaquin Valley',
        eastTexas: 'East Texas and Oklahoma',
        westTexas: 'West Texas',
      },
    },
    moduleAveraging: { label: 'Average over the module', help: 'All bales of one module share their mean readings.' },
  },
  spinning: {
    system: {
      label: 'Spinning',
      help: 'Combing takes out short fibers; a rotor spins fast and bulky.',
      options: { ringCarded: 'Ring, carded', ringCombed: 'Ring, combed', rotor: 'Rotor' },
    },
    countNe: { label: 'Yarn number', help: 'Ne counts hanks of 840 yards in a pound: higher is finer.' },
    noilPercent: { label: 'Combed out', help: 'The share of short fiber the comber takes away, as noil.' },
  },
  weaving: {
    structure: {
      label: 'Cloth',
      help: 'How the threads cross, or loop.',
      options: { plain: 'Plain weave', twill: 'Twill', sateen: 'Sateen', jersey: 'Jersey knit' },
    },
    endsPerInch: { label: 'Ends per inch', help: 'Threads along the length of the cloth.' },
    picksPerInch: { label: 'Picks per inch', help: 'Threads across the cloth.' },
    finish: {
      label: 'Finish',
      help: 'What is done to the cloth off the loom.',
      options: {
        grey: 'None (greige)',
        scoured: 'Scoured',
        bleached: 'Bleached',
        mercerised: 'Mercerized',
        printed: 'Printed',
      },
    },
  },
  sewing: {
    prewash: { label: 'Prewash', help: 'Shrink it first, or let the finished piece shrink.' },
    seamInches: { label: 'Seam allowance', help: 'Cloth that stays inside the seam is not patch.' },
  },
} satisfies DecisionWords;
