import type { MassEntry } from '../../src/model/ledger.ts';
import { type PartMasses, partMasses } from '../../src/model/lot.ts';
import type { StationId } from '../../src/model/station.ts';
import { KG_PER_POUND } from '../../src/model/units.ts';
import {
  type FlowMachine,
  type InAccount,
  less,
  type Masses,
  type MassFlow,
  massOf,
  type OutAccount,
  plus,
} from '../../src/scene/stations/flow/flow-input.ts';
import type { MachineKind } from '../../src/scene/stations/machines/draw-machine.ts';

/** Invented masses, lb, for looking and testing: they close, and they are nobody's measurements. */
type Pounds = Partial<Record<keyof PartMasses | 'water', number>>;
const masses = ({ water = 0, ...dry }: Pounds): Masses => ({
  dryKg: partMasses(Object.fromEntries(Object.entries(dry).map(([part, lb]) => [part, lb! * KG_PER_POUND]))),
  waterKg: water * KG_PER_POUND,
});
type Step = readonly [id: string, kind: MachineKind, removed: Partial<Record<OutAccount, Pounds>>];

function flow(
  station: StationId,
  inflow: Partial<Record<InAccount, Pounds>>,
  steps: readonly Step[],
  main: OutAccount,
): Omit<MassFlow, 'size' | 'labels'> {
  const entries = Object.entries(inflow).map(([account, lb]) => ({ account: account as InAccount, ...masses(lb!) }));
  let left: Masses = entries.map((entry): Masses => entry).reduce(plus);
  const totals = new Map<OutAccount, Masses>();
  const machines = steps.map(([id, kind, removed]): FlowMachine => {
    const taken = Object.fromEntries(Object.entries(removed).map(([account, lb]) => [account, masses(lb!)])) as Partial<
      Record<OutAccount, Masses>
    >;
    for (const [account, amount] of Object.entries(taken) as [OutAccount, Masses][]) {
      left = less(left, amount);
      const sofar = totals.get(account);
      totals.set(account, sofar ? plus(sofar, amount) : amount);
    }
    return { id, kind, removedByAccount: taken };
  });
  totals.set(main, left);
  const outflow: MassEntry<OutAccount>[] = [...totals].map(([account, amount]) => ({ account, ...amount }));
  return { station, machines, inflow: entries, outflow, unitKg: KG_PER_POUND };
}

const seedCotton = { lint: 496, seed: 671, burs: 25, sticks: 10, leaf: 46, motes: 12, dirt: 8, water: 110 };
const atStand = { lint: 492.6, seed: 666.7, burs: 5.4, sticks: 3, leaf: 24.4, motes: 9.1, dirt: 2.3, water: 88 };
const lint = { lint: 470.2, seed: 0.2, burs: 0.4, sticks: 0.4, leaf: 7.2, motes: 1.3, dirt: 0.3, water: 28 };

const flows: Partial<Record<StationId, Omit<MassFlow, 'size' | 'labels'>>> = {
  harvest: flow(
    'harvest',
    {
      grown: { lint: 548, seed: 741, motes: 13, water: 118 },
      takenAlong: { burs: 25, sticks: 10, leaf: 46, dirt: 8, water: 6 },
    },
    [
      [
        'picker',
        'spindlePicker',
        { leftInField: { lint: 38, seed: 52, motes: 1, water: 9 }, weathered: { lint: 14, seed: 18, water: 3 } },
      ],
    ],
    'lot',
  ),
  module: flow(
    'module',
    { lot: seedCotton, moistureTakenUp: { water: 12 } },
    [['module', 'roundModule', { moduleLoss: { lint: 4, seed: 5.4, leaf: 0.4, water: 1 } }]],
    'lot',
  ),
  cleaning: flow(
    'cleaning',
    { lot: seedCotton },
    [
      ['moduleFeeder', 'moduleFeeder', { ginTrash: { leaf: 1.4, dirt: 1.2, burs: 0.5, sticks: 0.3, water: 0.3 } }],
      ['dryer1', 'dryer', { evaporated: { water: 22 } }],
      [
        'cylinder1',
        'cylinderCleaner',
        { ginTrash: { leaf: 5.3, dirt: 2.1, burs: 1.3, sticks: 0.7, lint: 0.2, seed: 0.2, water: 1 } },
      ],
      [
        'stick',
        'stickMachine',
        { ginTrash: { burs: 12.3, sticks: 4.2, leaf: 3.1, dirt: 0.5, motes: 0.6, lint: 2, seed: 2.7, water: 3 } },
      ],
      [
        'cylinder2',
        'cylinderCleaner',
        { ginTrash: { leaf: 4.3, dirt: 1.3, burs: 0.5, sticks: 0.4, lint: 0.2, seed: 0.2, water: 0.8 } },
      ],
      ['distributor', 'distributor', { ginTrash: { leaf: 0.2, lint: 0.1 } }],
      [
        'feeder',
        'feeder',
        { ginTrash: { burs: 5.4, sticks: 1.6, leaf: 6.9, motes: 1.6, dirt: 0.7, lint: 0.9, seed: 1.3, water: 2 } },
      ],
    ],
    'lot',
  ),
  ginning: flow(
    'ginning',
    { lot: atStand, moistureAdded: { water: 4 } },
    [
      [
        'stand',
        'sawStand',
        {
          ginTrash: { lint: 4, seed: 0.9, burs: 2.7, sticks: 1.3, leaf: 4.9, motes: 3.2, dirt: 0.9, water: 1.4 },
          seedHouse: { lint: 3, seed: 665.4, burs: 1.3, sticks: 0.7, leaf: 2.4, motes: 2.3, dirt: 0.7, water: 57 },
        },
      ],
      [
        'lc1',
        'sawLintCleaner',
        {
          lintCleanerWaste: {
            lint: 9.7,
            seed: 0.1,
            burs: 0.7,
            sticks: 0.4,
            leaf: 6.9,
            motes: 1.6,
            dirt: 0.3,
            water: 1.4,
          },
        },
      ],
      [
        'lc2',
        'sawLintCleaner',
        {
          lintCleanerWaste: {
            lint: 5.7,
            seed: 0.1,
            burs: 0.3,
            sticks: 0.2,
            leaf: 3,
            motes: 0.7,
            dirt: 0.1,
            water: 0.7,
          },
        },
      ],
    ],
    'lot',
  ),
  pressing: flow('pressing', { lot: lint, moistureAdded: { water: 8 } }, [['press', 'press', {}]], 'lot'),
  classing: flow(
    'classing',
    { lot: lint },
    [['table', 'classingTable', { classingSample: { lint: 0.48, leaf: 0.01, water: 0.03 } }]],
    'lot',
  ),
  spinning: flow(
    'spinning',
    { lot: lint },
    [
      [
        'opener',
        'opener',
        { millTrash: { leaf: 5, motes: 1, dirt: 0.3, burs: 0.4, sticks: 0.4, seed: 0.2, lint: 5, water: 0.7 } },
      ],
      ['card', 'card', { cardStrips: { lint: 21, leaf: 2, motes: 0.3, water: 1.4 } }],
      ['comber', 'comber', { comberNoil: { lint: 66, water: 4.4 } }],
      ['spindle', 'spindle', { hardWaste: { lint: 7.5, water: 0.5 }, invisibleLoss: { lint: 5, water: 6 } }],
    ],
    'lot',
  ),
  weaving: flow(
    'weaving',
    { lot: { lint: 366, water: 22 }, warpSize: { size: 20 }, finish: { finish: 9 } },
    [
      ['loom', 'loom', { hardWaste: { lint: 9, size: 0.6, water: 0.6 } }],
      ['vat', 'finishing', { effluent: { size: 19, lint: 6, water: 1 } }],
    ],
    'lot',
  ),
  sewing: flow(
    'sewing',
    { lot: { lint: 351, finish: 9, water: 20 } },
    [['table', 'sewingTable', { offcuts: { lint: 52, finish: 1.3, water: 3 } }]],
    'cloth',
  ),
};

const words: Record<string, string> = {
  lot: 'To the next',
  grown: 'Grown',
  takenAlong: 'Taken along',
  moistureTakenUp: 'Moisture taken up',
  moistureAdded: 'Moisture added',
  warpSize: 'Warp size',
  finish: 'Finish',
  leftInField: 'Left in the field',
  weathered: 'Weathered',
  moduleLoss: 'Module loss',
  ginTrash: 'Gin trash',
  lintCleanerWaste: 'Motes from the lint cleaners',
  seedHouse: 'Seed, to the seed house',
  evaporated: 'Evaporated',
  classingSample: 'Sample',
  millTrash: 'Mill trash',
  cardStrips: 'Card strips',
  comberNoil: 'Comber noil',
  hardWaste: 'Hard waste',
  invisibleLoss: 'Into the air',
  effluent: 'To effluent',
  offcuts: 'Offcuts',
  cloth: 'Cloth',
};
const say = (prefix: string, entries: readonly MassEntry[]) =>
  Object.fromEntries(
    entries.map((entry) => [
      entry.account,
      `${entry.account === 'lot' ? prefix : words[entry.account]} ${(massOf(entry) / KG_PER_POUND).toLocaleString('en-US', { minimumFractionDigits: 1, maximumFractionDigits: 1 })} lb`,
    ]),
  );

export const flowStations = Object.keys(flows) as StationId[];

export function sampleFlow(station: StationId, width: number, height: number): MassFlow {
  const base = flows[station]!;
  const lb = (kg: number) => Math.round((kg / KG_PER_POUND) * 100) / 100;
  return {
    ...base,
    size: { width, height },
    labels: {
      in: say('In', base.inflow),
      out: say('On', base.outflow),
      machines: Object.fromEntries(
        base.machines.map((machine) => [machine.id, machine.kind.replace(/([A-Z])/g, ' $1').toLowerCase()]),
      ),
      caption: (legend) =>
        width > 560
          ? `A tuft, seed or drop: ${lb(legend.tuftKg)} lb. A bit: ${lb(legend.bitKg)} lb. Row to row: ${lb(legend.rowKg)} lb.`
          : `tuft, seed ${lb(legend.tuftKg)} lb, bit ${lb(legend.bitKg)} lb`,
    },
  };
}
