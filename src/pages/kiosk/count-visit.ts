import type { SnapshotFrom } from 'xstate';
import type { Tally } from '../../kiosk/tallies.ts';
import type { kioskMachine } from '../../statechart/kiosk.ts';
import { screenOf } from './screen-of.ts';
import { guidedOrder } from './stop-figures.ts';

type Snapshot = SnapshotFrom<typeof kioskMachine>;

/** The station that is looked at, if one is. */
function stationAt(snapshot: Snapshot): string | null {
  const screen = screenOf(snapshot);
  if (screen === 'guided') return guidedOrder[snapshot.context.stop]!;
  return screen === 'looking' || screen === 'comparing' || screen === 'lesson' ? snapshot.context.station : null;
}

/**
 * Counts visits as they pass: begun, finished, in which language, and how long each station was looked at.
 * @param nowMs a clock that only rises
 * @returns what to call with every state of the kiosk
 */
export function visitCounter(count: (event: Tally, seconds?: number) => void, nowMs: () => number) {
  let before: Snapshot | null = null;
  let sinceMs = 0;
  let finished = false;
  return (snapshot: Snapshot) => {
    const last = before;
    before = snapshot;
    if (!last) return;
    const [from, to] = [screenOf(last), screenOf(snapshot)];
    if (from === 'attract' && to !== 'attract') {
      count('visit');
      finished = false;
    }
    // Asked for once a visit: the language that the first stop is read in.
    if ((from === 'language' || from === 'attract') && to === 'guided') count(`language:${snapshot.context.language}`);
    if (to === 'keepsake' && from !== 'keepsake' && !finished) {
      count('finished');
      finished = true;
    }
    const [left, reached] = [stationAt(last), stationAt(snapshot)];
    if (left === reached) return;
    if (left) count(`station:${left}`, (nowMs() - sinceMs) / 1000);
    sinceMs = nowMs();
  };
}
