/** An event on the ribbon that may be named below it. */
export interface Nameable {
  readonly at: number;
  readonly label: string;
}

/** About how wide a letter of the ribbon's small words is, px. */
const letterPx = 6.3;
const gapPx = 8;

/**
 * Which events have room for their names: the weightiest first, none over another.
 * @param events weightiest first
 * @param placeOf px from the left
 * @param width of the ribbon, px
 * @returns the events to name with the middle of each name, px
 */
export function roomForLabels<Event extends Nameable>(
  events: readonly Event[],
  placeOf: (at: number) => number,
  width: number,
): { readonly event: Event; readonly middle: number }[] {
  const taken: { from: number; to: number }[] = [];
  const named: { event: Event; middle: number }[] = [];
  for (const event of events) {
    const half = (event.label.length * letterPx) / 2;
    if (half * 2 > width) continue;
    const middle = Math.min(width - half, Math.max(half, placeOf(event.at)));
    const [from, to] = [middle - half - gapPx / 2, middle + half + gapPx / 2];
    if (taken.some((other) => from < other.to && to > other.from)) continue;
    taken.push({ from, to });
    named.push({ event, middle });
  }
  return named;
}
