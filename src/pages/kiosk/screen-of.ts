import type { SnapshotFrom } from 'xstate';
import type { kioskMachine } from '../../statechart/kiosk.ts';

export type Screen = 'attract' | 'language' | 'guided' | 'keepsake' | 'looking' | 'comparing' | 'lesson';

/** The screen of a state of the kiosk. */
export function screenOf({ value }: SnapshotFrom<typeof kioskMachine>): Screen {
  if (typeof value === 'string') return 'attract';
  const { place } = value.visit as { place: unknown };
  if (typeof place === 'object' && place !== null)
    return (place as { explore: 'looking' | 'comparing' | 'lesson' }).explore;
  return place as 'language' | 'guided' | 'keepsake';
}

/** Whether somebody is asked if they are still there. */
export const isAsking = (snapshot: SnapshotFrom<typeof kioskMachine>): boolean =>
  snapshot.matches({ visit: { watch: 'warned' } }) || snapshot.matches({ visit: { watch: 'rescued' } });
