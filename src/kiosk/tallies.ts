/** What is counted: whole numbers and nothing that could tell who it was. */
export type Tally = 'visit' | 'finished' | `language:${string}` | `station:${string}`;

/** Counts, and for stations how long they were looked at, by what was counted. */
export type Tallies = Readonly<Record<string, { readonly count: number; readonly seconds: number }>>;

export const talliesPlace = 'seamfield.kiosk.tallies.1';

const whole = (value: unknown): number =>
  Number.isSafeInteger(value) && (value as number) >= 0 ? (value as number) : 0;

/** What this device has counted; junk counts as nothing. */
export function keptTallies(): Tallies {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(talliesPlace) ?? '{}');
    if (typeof kept !== 'object' || kept === null || Array.isArray(kept)) return {};
    return Object.fromEntries(
      Object.entries(kept as Record<string, unknown>).flatMap(([name, value]) => {
        const { count, seconds } = (value ?? {}) as Readonly<Record<string, unknown>>;
        return whole(count) > 0 ? [[name, { count: whole(count), seconds: whole(seconds) }]] : [];
      }),
    );
  } catch {
    return {};
  }
}

/** Counts one more. @param seconds how long it was looked at, for a station */
export function tally(event: Tally, seconds = 0): void {
  const kept = keptTallies();
  const before = kept[event] ?? { count: 0, seconds: 0 };
  const after = { count: before.count + 1, seconds: before.seconds + Math.round(seconds) };
  try {
    localStorage.setItem(talliesPlace, JSON.stringify({ ...kept, [event]: after }));
  } catch {
    // A count is lost, a visit is not.
  }
}

/** Starts counting anew. */
export function resetTallies(): void {
  try {
    localStorage.removeItem(talliesPlace);
  } catch {
    // Storage that is shut has counted nothing.
  }
}
