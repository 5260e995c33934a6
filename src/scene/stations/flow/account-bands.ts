import type { LintForm } from '../../cloth/piece.ts';
import { pathLength } from '../../cloth/point.ts';
import { leader, type Slot, slip, tag } from '../../cloth/slot-words.ts';
import type { Mark, Point } from '../../display-list.ts';
import type { MovingPiece } from '../../scene-frame.ts';
import type { InEntry, LabelledEntry, OutEntry } from './labelled-entry.ts';
import { bandPx, type FlowScale, stripBand } from './strip-band.ts';

/** Where the band of an account runs. Bands of one account on both sides are told apart: 'in/lot', 'out/lot'. */
export interface AccountPath {
  readonly path: readonly Point[];
  /** The lengths that pieces can be seen on, px; left out, all of it. */
  readonly visible?: readonly (readonly [from: number, to: number])[];
  readonly form?: LintForm;
}
export type AccountPaths = Readonly<Partial<Record<string, AccountPath>>>;

export interface Entries {
  readonly inflow: readonly InEntry[];
  readonly outflow: readonly OutEntry[];
}

/** The width of an account's band, px; 0 where the season has none. */
export const widthOf = (entry: LabelledEntry<string> | undefined, scale: FlowScale): number =>
  entry ? bandPx(entry.masses, scale) : 0;

/** Every entry with its side. */
const sidesOf = ({ inflow, outflow }: Entries) => [
  ...inflow.map((entry) => ({ key: `in/${entry.account}`, entry })),
  ...outflow.map((entry) => ({ key: `out/${entry.account}`, entry })),
];

/** The bands of a ledger where they run, the later above the earlier, and the pieces that ride them. */
export function accountBands(scene: string, entries: Entries, paths: AccountPaths, scale: FlowScale) {
  const marks: Mark[] = [];
  const pieces: MovingPiece[] = [];
  const sides = sidesOf(entries);
  for (const [key, run] of Object.entries(paths)) {
    const found = sides.find((side) => side.key === key);
    if (!found || !run) continue;
    const { path, visible = [[0, pathLength(path)]], form = 'tuft' } = run;
    const band = stripBand(scene, { band: key, masses: found.entry.masses, path, visible, form }, scale);
    marks.push(...band.marks);
    pieces.push(...band.pieces);
  }
  return { marks, pieces };
}

/** Names and amounts of accounts on slips, as far as the work is done. */
export function accountTags(
  scene: string,
  entries: Entries,
  slots: Readonly<Partial<Record<string, Slot>>>,
  share: number,
  textPx: number,
): Mark[] {
  return sidesOf(entries).flatMap(({ key, entry }) => {
    const slot = slots[key];
    return slot ? tag(`${scene}/tag/${key}`, { text: entry.name, amount: entry.amount(share) }, slot, textPx) : [];
  });
}

/** A machine's name on a slip beside it, with a thread to what it names. */
export interface NamePlace {
  readonly text: string;
  readonly slot: Slot;
  readonly to: Point;
}

export function nameSlips(scene: string, places: readonly NamePlace[], textPx: number): Mark[] {
  return places.flatMap(({ text, slot, to }, i) => {
    const x =
      slot.anchor === 'end'
        ? slot.x + slot.width - 10
        : slot.anchor === 'start'
          ? slot.x + 10
          : slot.x + slot.width / 2;
    const y = slot.stands === 'bottom' ? slot.y + slot.height - 10 : slot.y + 10;
    return [leader([x, y], to), ...slip(`${scene}/name/${i}`, text, slot, { size: textPx, italic: true })];
  });
}
