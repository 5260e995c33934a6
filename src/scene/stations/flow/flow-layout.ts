import { partMasses } from '../../../model/lot.ts';
import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import { loudestOf } from '../machines/draw-machine.ts';
import {
  type FlowMachine,
  type InAccount,
  less,
  type Masses,
  type MassFlow,
  massOf,
  type OutAccount,
  plus,
} from './flow-input.ts';

/** The main band between two machines. */
interface MainStretch {
  readonly from: number;
  readonly to: number;
  readonly masses: Masses;
}
/** What one machine took out, on its way to its account's row. */
interface SideBand {
  readonly machine: number;
  readonly account: OutAccount;
  readonly masses: Masses;
  readonly path: readonly Point[];
}
interface InBand {
  readonly account: InAccount;
  readonly masses: Masses;
  readonly path: readonly Point[];
}
/** A row at the right edge where an account's bands end, side by side. */
interface AccountRow {
  readonly account: OutAccount;
  readonly y: number;
  readonly width: number;
  readonly rises: boolean;
}
export interface FlowLayout {
  readonly pxPerKg: number;
  readonly bandTop: number;
  readonly main: readonly MainStretch[];
  readonly mainIn: InAccount;
  readonly mainOut: OutAccount | null;
  readonly boxes: readonly Box[];
  readonly loud: number;
  readonly side: readonly SideBand[];
  readonly inBands: readonly InBand[];
  readonly rows: readonly AccountRow[];
  readonly roomy: boolean;
}

/** These rise: they leave as air or vapour. */
const rising: readonly OutAccount[] = ['evaporated', 'invisibleLoss'];
/** Room between rows for a line of words, px. */
const wordsPx = (roomy: boolean): number => (roomy ? 27 : 23);
const LEAST_ROW_PX = 6;
/** A line at the foot of the page for the caption. */
const captionPx = (flow: MassFlow, roomy: boolean): number =>
  flow.labels.caption ? (roomy ? 34 : 26) : roomy ? 14 : 10;

/** Places bands, machines and rows. One scale for the whole scene. */
export function layFlow(given: MassFlow): FlowLayout {
  const loud = loudestOf(given.machines.map((machine) => machine.kind));
  const mainOut = mainOutOf(given);
  const flow = allAssigned(given, mainOut, loud);
  const { width, height } = flow.size;
  const roomy = width > 560;
  const entered = [...flow.inflow].sort((a, b) => massOf(b) - massOf(a));
  if (flow.machines.length === 0) throw new RangeError('a flow needs a machine');
  const first = entered[0] ?? { account: 'lot' as const, ...nothing };
  const accounts = sideAccounts(flow, mainOut);
  const falling = accounts.filter((account) => !rising.includes(account));
  const total = entered.reduce((sum, entry) => sum + massOf(entry), 0);
  const sideTotal = falling.reduce((sum, account) => sum + massOf(sumOf(flow.machines, account)), 0);
  const others = entered.slice(1).filter((entry) => massOf(entry) > 0).length;
  const top = (roomy ? 92 : 74) + Math.max(0, others - 1) * (roomy ? 34 : 28);
  const below = falling.length * (wordsPx(roomy) + LEAST_ROW_PX) + captionPx(flow, roomy) + (roomy ? 74 : 40);
  const fits = (height - top - below) / (total + sideTotal);
  const widest = (falling.length > 1 ? 0.36 : 0.44) * height;
  const pxPerKg = flow.pxPerKg ?? (total > 0 ? Math.min(Math.max(fits, (0.05 * height) / total), widest / total) : 0);

  // What is left over of the height lifts the main band towards the middle of the page.
  const bandTop =
    top + Math.min(height * 0.11, Math.max(0, (height - top - below - (total + sideTotal) * pxPerKg) * 0.4));
  const boxes = machineBoxes(flow, loud, bandTop, bandWidths(flow, entered, pxPerKg), pxPerKg, roomy);
  const main = mainStretches(flow, entered, boxes, width);
  const rows = rowsOf(flow, accounts, pxPerKg, roomy);
  return {
    pxPerKg,
    bandTop,
    main,
    mainIn: first.account,
    mainOut,
    boxes,
    loud,
    side: sideBands(flow, accounts, rows, boxes, bandTop, pxPerKg),
    inBands: inBands(entered.slice(1), boxes[0]!, bandTop, pxPerKg, roomy),
    rows,
    roomy,
  };
}

/** What goes on: the lot, or the heaviest thing made when nothing goes on. */
function mainOutOf(flow: MassFlow): OutAccount | null {
  const removed = new Set(flow.machines.flatMap((machine) => Object.keys(machine.removedByAccount)));
  const left = flow.outflow.filter((entry) => !removed.has(entry.account));
  const lot = left.find((entry) => entry.account === 'lot');
  if (lot) return 'lot';
  const heaviest = [...left].sort((a, b) => massOf(b) - massOf(a))[0];
  return heaviest?.account ?? null;
}

/** Whatever the machines do not account for leaves at the loud one, so that every entry of the ledger is on the page. */
function allAssigned(flow: MassFlow, mainOut: OutAccount | null, loud: number): MassFlow {
  const rest: Partial<Record<OutAccount, Masses>> = {};
  for (const entry of flow.outflow) {
    if (entry.account === mainOut) continue;
    const left = less(entry, sumOf(flow.machines, entry.account));
    if (massOf(left) > massOf(entry) * 1e-9) rest[entry.account] = left;
  }
  if (Object.keys(rest).length === 0) return flow;
  const machines = flow.machines.map((machine, i) => {
    if (i !== loud) return machine;
    const removedByAccount = { ...machine.removedByAccount };
    for (const [account, masses] of Object.entries(rest) as [OutAccount, Masses][])
      removedByAccount[account] = plus(removedByAccount[account] ?? nothing, masses);
    return { ...machine, removedByAccount };
  });
  return { ...flow, machines };
}

/** Accounts other than the main one, in the order of the machines they leave first. */
function sideAccounts(flow: MassFlow, mainOut: OutAccount | null): OutAccount[] {
  const seen: OutAccount[] = [];
  for (const machine of flow.machines)
    for (const account of Object.keys(machine.removedByAccount) as OutAccount[])
      if (account !== mainOut && !seen.includes(account) && massOf(sumOf(flow.machines, account)) > 0)
        seen.push(account);
  return seen;
}

function sumOf(machines: readonly FlowMachine[], account: OutAccount): Masses {
  const all = machines.flatMap((machine) => machine.removedByAccount[account] ?? []);
  return all.reduce(plus, nothing);
}
const nothing: Masses = { dryKg: partMasses({}), waterKg: 0 };

/** Width of the main band as it reaches each machine, px. */
function bandWidths(flow: MassFlow, entered: MassFlow['inflow'], pxPerKg: number): number[] {
  let kg = entered.reduce((sum, entry) => sum + massOf(entry), 0);
  return flow.machines.map((machine) => {
    const here = kg * pxPerKg;
    for (const taken of Object.values(machine.removedByAccount) as Masses[]) kg -= massOf(taken);
    return here;
  });
}

/** One loud box, the others narrow; all stand across the band. */
function machineBoxes(
  flow: MassFlow,
  loud: number,
  bandTop: number,
  widths: readonly number[],
  pxPerKg: number,
  roomy: boolean,
): Box[] {
  const { width } = flow.size;
  const tallest = Math.max(...widths);
  const side = flow.machines[loud]!.removedByAccount;
  const sideWidth = (Object.values(side) as Masses[]).reduce(
    (sum, masses) => sum + Math.max(LEAST_ROW_PX, massOf(masses) * pxPerKg) + 8,
    24,
  );
  const loudWide = Math.max(roomy ? 250 : 138, sideWidth);
  const loudTall = Math.max(tallest + (roomy ? 72 : 40), roomy ? 250 : 150);
  const others = flow.machines.length - 1;
  // Where the loud machine stands first or last, more of the band is left bare on that side.
  const bare = (isLoud: boolean) => (roomy ? (isLoud ? 176 : 122) : isLoud ? 74 : 54);
  const left = bare(loud === 0);
  const slot = others > 0 ? (width - left - bare(loud === others) - loudWide) / others : 0;
  const narrow = Math.min(roomy ? 84 : 36, slot * 0.62);
  let x = others > 0 ? left : (width - loudWide) * (roomy ? 0.42 : 0.44);
  const middle = bandTop + tallest / 2;
  return flow.machines.map((_, i) => {
    const isLoud = i === loud;
    const wide = isLoud ? loudWide : narrow;
    const local = widths[i]!;
    const tall = isLoud ? loudTall : local + (roomy ? 34 : 18);
    const room = isLoud ? loudWide : slot;
    const box: Box = {
      x: x + (room - wide) / 2,
      y: isLoud ? Math.max(roomy ? 40 : 34, middle - tall / 2) : bandTop - (roomy ? 17 : 9),
      width: wide,
      height: tall,
    };
    x += room;
    return box;
  });
}

function mainStretches(flow: MassFlow, entered: MassFlow['inflow'], boxes: readonly Box[], width: number) {
  const centre = (box: Box) => box.x + box.width / 2;
  let masses: Masses = entered[0] ?? nothing;
  const main: MainStretch[] = [{ from: -4, to: centre(boxes[0]!), masses }];
  for (const entry of entered.slice(1)) masses = plus(masses, entry);
  flow.machines.forEach((machine, i) => {
    for (const taken of Object.values(machine.removedByAccount) as Masses[]) masses = less(masses, taken);
    main.push({ from: centre(boxes[i]!), to: i + 1 < boxes.length ? centre(boxes[i + 1]!) : width + 4, masses });
  });
  return main;
}

/** Rows from the bottom up, the account that leaves first lowest, so that bands do not cross. */
function rowsOf(flow: MassFlow, accounts: readonly OutAccount[], pxPerKg: number, roomy: boolean): AccountRow[] {
  let bottom = flow.size.height - captionPx(flow, roomy);
  let risen = 0;
  return accounts.map((account) => {
    const width = massOf(sumOf(flow.machines, account)) * pxPerKg;
    if (rising.includes(account)) {
      risen++;
      return { account, y: roomy ? 30 + (risen - 1) * 24 : 26 + (risen - 1) * 22, width, rises: true };
    }
    const y = bottom - Math.max(width, LEAST_ROW_PX) / 2;
    bottom -= Math.max(width, LEAST_ROW_PX) + wordsPx(roomy);
    return { account, y, width, rises: false };
  });
}

function sideBands(
  flow: MassFlow,
  accounts: readonly OutAccount[],
  rows: readonly AccountRow[],
  boxes: readonly Box[],
  bandTop: number,
  pxPerKg: number,
): SideBand[] {
  const { width } = flow.size;
  const lane = new Map<OutAccount, number>();
  const bands: SideBand[] = [];
  flow.machines.forEach((machine, index) => {
    const box = boxes[index]!;
    const leaving = accounts.filter((account) => massOf(machine.removedByAccount[account] ?? nothing) > 0);
    const down = leaving.filter((account) => !rising.includes(account));
    const roomOf = (account: OutAccount) =>
      Math.max(LEAST_ROW_PX, massOf(machine.removedByAccount[account]!) * pxPerKg);
    const gap = Math.min(
      12,
      Math.max(
        2,
        (box.width - 12 - down.reduce((sum, account) => sum + roomOf(account), 0)) / Math.max(1, down.length),
      ),
    );
    const needed = down.reduce((sum, account) => sum + roomOf(account) + gap, -gap);
    let x = box.x + (box.width - needed) / 2;
    for (const account of leaving) {
      const masses = machine.removedByAccount[account]!;
      const bandPx = massOf(masses) * pxPerKg;
      const row = rows.find((candidate) => candidate.account === account)!;
      const taken = lane.get(account) ?? 0;
      lane.set(account, taken + bandPx);
      if (row.rises) {
        const cx = box.x + box.width * 0.7;
        bands.push({
          machine: index,
          account,
          masses,
          path: [
            [cx, bandTop + 20],
            [cx, row.y],
            [width + 4, row.y],
          ],
        });
        continue;
      }
      // Lanes of one row are filled from its bottom, so that each drop lands inside the one before it.
      const y = row.y + row.width / 2 - taken - bandPx / 2;
      const cx = x + roomOf(account) / 2;
      bands.push({
        machine: index,
        account,
        masses,
        path: [
          [cx, box.y + box.height * 0.6],
          [cx, y],
          [width + 4, y],
        ],
      });
      x += roomOf(account) + gap;
    }
  });
  return bands;
}

/** Whatever else comes in drops on to the band at the first machine, from above; the highest lands farthest to the right. */
function inBands(entries: MassFlow['inflow'], box: Box, bandTop: number, pxPerKg: number, roomy: boolean): InBand[] {
  let y = roomy ? 26 : 22;
  let x = box.x + box.width * 0.62;
  return entries
    .filter((entry) => massOf(entry) > 0)
    .map((entry): InBand => {
      const bandPx = massOf(entry) * pxPerKg;
      y += bandPx / 2;
      x -= bandPx / 2;
      const path: Point[] = [
        [-4, y],
        [x, y],
        [x, bandTop + 20],
      ];
      y += bandPx / 2 + (roomy ? 25 : 20);
      x -= bandPx / 2 + 12;
      return { account: entry.account, masses: entry, path };
    });
}
