/** What went wrong: an error that nothing caught, or a drawing context that was taken away twice. */
export type TroubleKind = 'error' | 'graphics';

interface Counted {
  readonly count: number;
  readonly lastMs: number;
}
export type Troubles = Readonly<Record<TroubleKind, Counted>>;

/** Waits before the page is loaded anew: the first, the second and every further time. The steps are an assumption. */
const waitsMs = [5000, 30_000, 120_000] as const;
/** After this long without trouble the next one counts as the first. An assumption. */
export const calmMs = 600_000;
/** After this many reloads for lost graphics the pictures stand still until the night's reload finds calm. */
const mostGraphicsReloads = 3;

const none: Troubles = { error: { count: 0, lastMs: 0 }, graphics: { count: 0, lastMs: 0 } };
const kinds = Object.keys(none) as readonly TroubleKind[];

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;

/** Counts one more trouble. */
export function withTrouble(before: Troubles, kind: TroubleKind, nowMs: number): Troubles {
  const { count, lastMs } = before[kind];
  // A clock that was set back makes no calm.
  const calm = nowMs - lastMs > calmMs;
  return { ...before, [kind]: { count: calm ? 1 : count + 1, lastMs: nowMs } };
}

/** How long to wait before the page is loaded anew, ms. */
export function waitMs(troubles: Troubles, kind: TroubleKind): number {
  const step = Math.min(waitsMs.length, Math.max(1, troubles[kind].count)) - 1;
  return waitsMs[step] ?? waitsMs[0];
}

/** Whether the living pictures are given up for now. */
export const graphicsGone = (troubles: Troubles, nowMs: number): boolean =>
  troubles.graphics.count > mostGraphicsReloads && nowMs - troubles.graphics.lastMs <= calmMs;

/** The troubles in a kept text; junk counts as none. */
export function readTroubles(text: string | null): Troubles {
  try {
    const kept = JSON.parse(text ?? '{}') as Readonly<Record<string, Partial<Counted> | undefined>>;
    const read = kinds.map((kind) => {
      const { count, lastMs } = kept[kind] ?? {};
      return [kind, isCount(count) && isCount(lastMs) ? { count, lastMs } : none[kind]] as const;
    });
    return Object.fromEntries(read) as Record<TroubleKind, Counted>;
  } catch {
    return none;
  }
}

/** It outlives a reload and not the browser: a browser that was started anew begins without troubles. */
const place = 'seamfield.kiosk.troubles.1';

/** The troubles since the browser was started; none where storage is shut. */
export function keptTroubles(): Troubles {
  try {
    return readTroubles(sessionStorage.getItem(place));
  } catch {
    return none;
  }
}

/** Whether this page is to leave the graphics alone: they failed too often, and not long ago. */
export const picturesStandStill = (): boolean => graphicsGone(keptTroubles(), Date.now());

/** Keeps them for the page that comes next. */
export function keepTroubles(troubles: Troubles): void {
  try {
    sessionStorage.setItem(place, JSON.stringify(troubles));
  } catch {
    // Then every trouble is the first, and is waited for as one.
  }
}
