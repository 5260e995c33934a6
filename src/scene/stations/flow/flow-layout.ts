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
export interface MainStretch {
  readonly from: number;
  readonly to: number;
  readonly masses: Masses;
}
/** What one machine took out, on its way to its account's row. */
export interface SideBand {
  readonly machine: number;
  readonly account: OutAccount;
  readonly masses: Masses;
  readonly path: readonly Point[];
}
export interface InBand {
  readonly account: InAccount;
  readonly masses: Masses;
  readonly path: readonly Point[];
}
/** A row at the right edge where an account's bands end, side by side. */
export interface AccountRow {
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
export function layFlow(flow: MassFlow): FlowLayout {
  const { width, height } = flow.size;
  const roomy = width > 560;
  const entered = [...flow.inflow].sort((a, b) => massOf(b) - massOf(a));
  const first = entered[0];
  if (!first || flow.machines.length === 0) throw new RangeError('a flow needs something that enters and a machine');
  const mainOut = mainOutOf(flow);
  const accounts = sideAccounts(flow, mainOut);
  const falling = accounts.filter((account) => !rising.includes(account));
  const total = entered.reduce((sum, entry) => sum + massOf(entry), 0);
  const sideTotal = falling.reduce((sum, account) => sum + massOf(sumOf(flow.machines, account)), 0);
  const others = entered.slice(1).filter((entry) => massOf(entry) > 0).length;
  const top = (roomy ? 92 : 74) + Math.max(0, others - 1) * (roomy ? 34 : 28);
  const below = falling.length * (wordsPx(roomy) + LEAST_ROW_PX) + captionPx(flow, roomy) + (roomy ? 74 : 40);
  const fits = (height - top - below) / (total + sideTotal);
  const widest = (falling.length > 1 ? 0.36 : 0.44) * height;
  const pxPerKg = flow.pxPerKg ?? Math.min(fits, widest / total);

  const loud = loudestOf(flow.machines.map((machine) => machine.kind));
  // What is left over of the height lifts the main band towards the middle of the page.
  const bandTop =
    top + Math.min(height * 0.11, Math.max(0, (height - top - below - (total + sideTotal) * pxPerKg) * 0.4));
  const boxes = machineBoxes(flow, loud, bandTop, bandWidths(flow, entered, pxPerKg), pxPerKg, roomy);
  const { main, before } = mainStretches(flow, entered, boxes, width);
  const rows = rowsOf(flow, accounts, pxPerKg, roomy);
  return {
    pxPerKg,
    bandTop,
    main,
    mainIn: first.account,
    mainOut,
    boxes,
    loud,
    side: sideBands(flow, accounts, rows, boxes, bandTop, before, pxPerKg),
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

/** Accounts other than the main one, from the machine they leave first; an account no machine names leaves at the last. */
function sideAccounts(flow: MassFlow, mainOut: OutAccount | null): OutAccount[] {
  const seen: OutAccount[] = [];
  for (const machine of flow.machines)
    for (const account of Object.keys(machine.removedByAccount) as OutAccount[])
      if (account !== mainOut && !seen.includes(account) && massOf(sumOf(flow.machines, account)) > 0)
        seen.push(account);
  return seen;
}

const nothing = (like: Masses): Masses => less(like, like);

function sumOf(machines: readonly FlowMachine[], account: OutAccount): Masses {
  const all = machines.flatMap((machine) => machine.removedByAccount[account] ?? []);
  return all.slice(1).reduce(plus, all[0] ?? { dryKg: emptyDry, waterKg: 0 });
}
const emptyDry = { lint: 0, seed: 0, burs: 0, sticks: 0, leaf: 0, motes: 0, dirt: 0, size: 0, finish: 0 };

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
  let masses: Masses = entered[0]!;
  const main: MainStretch[] = [{ from: -4, to: centre(boxes[0]!), masses }];
  for (const entry of entered.slice(1)) masses = plus(masses, entry);
  const before: Masses[] = [];
  flow.machines.forEach((machine, i) => {
    before.push(masses);
    for (const taken of Object.values(machine.removedByAccount) as Masses[]) masses = less(masses, taken);
    main.push({ from: centre(boxes[i]!), to: i + 1 < boxes.length ? centre(boxes[i + 1]!) : width + 4, masses });
  });
  return { main, before };
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
  before: readonly Masses[],
  pxPerKg: number,
): SideBand[] {
  const { width } = flow.size;
  const lane = new Map<OutAccount, number>();
  const bands: SideBand[] = [];
  flow.machines.forEach((machine, index) => {
    const box = boxes[index]!;
    const leaving = accounts.filter((account) => massOf(machine.removedByAccount[account] ?? nothing(before[0]!)) > 0);
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
