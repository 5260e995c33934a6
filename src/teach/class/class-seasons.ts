import type { SavedRun } from '../../statechart/saved-run.ts';

/** The largest class a link is made for. */
export const mostPupils = 60;
/** Season numbers of a link run from 0 to this one less. */
export const seedCount = 1_000_000;

/** A pupil's own season: the same farm and decisions, the teacher's season number and the pupil's number added. */
export const seasonOfPupil = (run: SavedRun, pupil: number): SavedRun => ({
  ...run,
  seed: (run.seed + pupil) % seedCount,
});

/** A pupil's number as it stands in a link or a field; null for what is none. */
export const pupilNumber = (text: string): number | null => {
  const number = Number(text);
  return /^\d{1,2}$/.test(text.trim()) && number >= 1 && number <= mostPupils ? number : null;
};

/** Why pupils cannot reach a page at an address; null where they may. */
export function unreachable(protocol: string, host: string): 'file' | 'thisMachine' | null {
  if (protocol === 'file:') return 'file';
  return /^(localhost|127(\.\d{1,3}){3}|\[?::1\]?|0\.0\.0\.0)$/.test(host) ? 'thisMachine' : null;
}
