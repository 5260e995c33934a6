import { fill } from '../../../language/fill.ts';
import { machineName } from '../../../language/machine-name.ts';
import type { Words } from '../../../language/words.ts';
import type { MassEntry, MassLedger } from '../../../model/ledger.ts';
import { scaleMasses, totalWaterKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import type { StationId } from '../../../model/station.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import type { SceneFrame } from '../../../scene/scene-frame.ts';
import {
  type FlowMachine,
  type InAccount,
  less,
  type Masses,
  massOf,
  type OutAccount,
  plus,
} from '../../../scene/stations/flow/flow-input.ts';
import type { MachineKind } from '../../../scene/stations/machines/draw-machine.ts';
import { massFlowScene } from '../../../scene/stations/mass-flow.ts';
import { type LedgerRow, ledgerRows } from '../../../ui/ledger-rows.ts';
import { ledgerOf, oneBaleShare } from '../ledger-panel.tsx';
import type { PictureSize } from './picture.ts';

/** A mass that would be written as 0.0 gets no band and no words: kg for one bale's worth. */
const leastKg = 0.02;

/** A machine as the model reports it. */
interface Step {
  readonly machine: string;
  readonly removed: readonly { readonly account: string; readonly masses: Parameters<typeof scaleMasses>[0] }[];
}

const kinds: Readonly<Record<string, MachineKind>> = {
  moduleFeeder: 'moduleFeeder',
  dryer: 'dryer',
  cylinderCleaner: 'cylinderCleaner',
  stickMachine: 'stickMachine',
  distributor: 'distributor',
  extractorFeeder: 'feeder',
  conditioner: 'dryer',
  lintSlide: 'press',
  blowroom: 'opener',
  card: 'card',
  comber: 'comber',
};

/** What a machine of the model looks like. */
function kindOf(machine: string, season: Season): MachineKind {
  const { ginning, spinning } = season.scenario.decisions;
  const base = machine.replace(/\d+$/, '');
  if (base === 'sawStand' || base === 'rollerStand') return base;
  if (base.startsWith('lintCleaner')) return ginning.lintCleaner === 'saw' ? 'sawLintCleaner' : 'airLintCleaner';
  if (base === 'spinningFrame') return spinning.system === 'rotor' ? 'rotor' : 'spindle';
  return kinds[base] ?? 'feeder';
}

/** The one machine of a station that has only one to show. */
function soleMachine(season: Season, station: StationId): { id: string; kind: MachineKind } {
  const { harvest, module, weaving } = season.scenario.decisions;
  switch (station) {
    case 'harvest':
      return harvest.method === 'hand'
        ? { id: 'hand', kind: 'handSack' }
        : harvest.method === 'spindle'
          ? { id: 'picker', kind: 'spindlePicker' }
          : { id: 'stripper', kind: 'stripperRolls' };
    case 'module':
      return module.kind === 'wagon'
        ? { id: 'wagon', kind: 'wagon' }
        : { id: 'module', kind: module.kind === 'round' ? 'roundModule' : 'conventionalModule' };
    case 'pressing':
      return { id: 'press', kind: 'press' };
    case 'classing':
      return { id: 'sampler', kind: 'classingTable' };
    case 'weaving':
      return weaving.structure === 'jersey' ? { id: 'knitting', kind: 'knitting' } : { id: 'loom', kind: 'loom' };
    default:
      return { id: 'scissors', kind: 'sewingTable' };
  }
}

const stepsOf = (season: Season, station: StationId): readonly Step[] =>
  station === 'cleaning'
    ? (season.cleaning?.machines ?? [])
    : station === 'ginning'
      ? (season.ginning?.machines ?? [])
      : station === 'spinning'
        ? (season.spinning?.steps ?? [])
        : [];

/** Entries of one account put together. */
function byAccount<Account extends string>(entries: readonly MassEntry<Account>[]): Map<Account, Masses> {
  const sums = new Map<Account, Masses>();
  for (const { account, dryKg, waterKg } of entries) {
    const sofar = sums.get(account);
    sums.set(account, sofar ? plus(sofar, { dryKg, waterKg }) : { dryKg, waterKg });
  }
  return sums;
}

/** The machines of a station with what each took out; what no machine is known to have taken leaves at the last. */
function machinesOf(season: Season, station: StationId, ledger: MassLedger): FlowMachine[] {
  const share = oneBaleShare(season);
  const left = byAccount(ledger.out);
  left.delete('lot');
  const machines = stepsOf(season, station).map(({ machine, removed }) => {
    const byName: Partial<Record<OutAccount, Masses>> = {};
    for (const { account, masses } of removed) {
      const scaled = scaleMasses(masses, share);
      const taken: Masses = { dryKg: scaled.dryKg, waterKg: totalWaterKg(scaled.waterKg) };
      const name = account as OutAccount;
      byName[name] = byName[name] ? plus(byName[name], taken) : taken;
      const rest = left.get(name);
      if (rest) left.set(name, less(rest, taken));
    }
    return { id: machine, kind: kindOf(machine, season), removedByAccount: byName };
  });
  if (machines.length === 0) machines.push({ ...soleMachine(season, station), removedByAccount: {} });
  const last = machines.at(-1)!;
  for (const [account, masses] of left) {
    if (massOf(masses) < leastKg) continue;
    const sofar = last.removedByAccount[account];
    last.removedByAccount[account] = sofar ? plus(sofar, masses) : masses;
  }
  return machines;
}

/** The mass flow of a station as a picture, for one bale's worth; null in the field. */
export function flowPicture(season: Season, station: StationId, words: Words, size: PictureSize): SceneFrame | null {
  const whole = ledgerOf(season, station, 'bale');
  if (!whole) return null;
  const ledger: MassLedger = {
    station,
    in: whole.in.filter((entry) => massOf(entry) >= leastKg),
    out: whole.out.filter((entry) => massOf(entry) >= leastKg),
  };
  const { messages, formats, unitSystem } = words;
  const { sources, destinations } = messages.accounts;
  // The numbers on the bands are those of the table, rounded with it so that they add.
  const rows = ledgerRows(whole, unitSystem);
  const sign = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'].sign;
  const labelled = (side: readonly LedgerRow[], lot: string, names: object) =>
    Object.fromEntries(
      side.map(({ account, all }) => [
        account,
        `${account === 'lot' ? lot : ((names as Record<string, string>)[account] ?? account)} ${formats.number(all, rows.decimals)}\u00a0${sign}`,
      ]),
    );
  const entriesOf = <Account extends string>(entries: readonly MassEntry<Account>[]) =>
    [...byAccount(entries)].map(([account, masses]) => ({ account, ...masses }));
  const machines = machinesOf(season, station, ledger);
  return massFlowScene({
    station,
    machines,
    inflow: entriesOf<InAccount>(ledger.in),
    outflow: entriesOf<OutAccount>(ledger.out),
    unitKg: unitSystem === 'us' ? KG_PER_POUND : 1,
    size,
    labels: {
      in: labelled(rows.in, messages.readings.in, sources),
      out: labelled(rows.out, messages.readings.on, destinations),
      machines: Object.fromEntries(machines.map(({ id }) => [id, machineName(id, messages)])),
      caption: ({ tuftKg, bitKg, rowKg }) =>
        fill(messages.readings.flowCaption, {
          tuft: formats.mass(tuftKg, 0).text,
          bit: formats.mass(bitKg).text,
          row: formats.mass(rowKg, 0).text,
        }),
    },
  });
}
