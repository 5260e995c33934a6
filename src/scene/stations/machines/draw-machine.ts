import { finishing, knitting, loom, sewingTable } from './cloth-machines.ts';
import {
  conventionalModule,
  fieldCleaner,
  handSack,
  moduleFeeder,
  roundModule,
  spindlePicker,
  stripperRolls,
  wagon,
} from './field-machines.ts';
import {
  airLintCleaner,
  classingTable,
  cylinderCleaner,
  distributor,
  dryer,
  feeder,
  press,
  rollerStand,
  sawLintCleaner,
  sawStand,
  stickMachine,
} from './gin-machines.ts';
import type { DrawMachine } from './machine-parts.ts';
import { card, comber, opener, rotor, spindle } from './mill-machines.ts';

const machines = {
  handSack,
  spindlePicker,
  stripperRolls,
  fieldCleaner,
  roundModule,
  conventionalModule,
  wagon,
  moduleFeeder,
  dryer,
  cylinderCleaner,
  stickMachine,
  distributor,
  feeder,
  sawStand,
  rollerStand,
  sawLintCleaner,
  airLintCleaner,
  press,
  classingTable,
  opener,
  card,
  comber,
  spindle,
  rotor,
  loom,
  knitting,
  finishing,
  sewingTable,
} satisfies Record<string, DrawMachine>;

export type MachineKind = keyof typeof machines;

/** Which machine of a station is the loud one, the first of these found; the rest keep quiet. */
const loudness: readonly MachineKind[] = [
  'sawStand',
  'rollerStand',
  'stickMachine',
  'card',
  'loom',
  'knitting',
  'press',
  'classingTable',
  'sewingTable',
  'spindlePicker',
  'stripperRolls',
  'handSack',
  'roundModule',
  'conventionalModule',
  'wagon',
  'cylinderCleaner',
  'spindle',
  'rotor',
  'dryer',
];

export const drawMachine = (kind: MachineKind): DrawMachine => machines[kind];

/** The place in a row of machines of the one loud piece. */
export function loudestOf(kinds: readonly MachineKind[]): number {
  for (const kind of loudness) {
    const at = kinds.indexOf(kind);
    if (at >= 0) return at;
  }
  return 0;
}
