import type { Language } from '../language/language.ts';

export const selfTestParts = ['graphics', 'storage', 'offline', 'touch', 'sound'] as const;
export type SelfTestPart = (typeof selfTestParts)[number];

/** What the device was found to have. */
export interface Probed {
  /** How pictures are drawn: by the graphics chip, by the processor in its stead, on a plain canvas, or not at all. */
  readonly graphics: 'chip' | 'processor' | 'canvas' | 'none';
  /** Whether a value that was written came back, and whether the browser promised to keep it. */
  readonly storage: 'promised' | 'kept' | 'none';
  /** Files in the copy for use offline, and whether it serves this page. */
  readonly keptFiles: number;
  readonly served: boolean;
  /** Fingers that the screen can tell apart. */
  readonly fingers: number;
  /** Languages for which the device has a voice of its own. */
  readonly voices: readonly Language[];
}

/** One line of the result. */
export interface SelfTestLine {
  readonly part: SelfTestPart;
  /** Good; enough, with something missing that is said; or missing. */
  readonly grade: 'good' | 'enough' | 'missing';
  /** Which line says it. */
  readonly says: string;
}

/**
 * Judges what was found, a line for each part in a fixed order.
 * @param wanted languages that the kiosk offers
 */
export function judgeDevice(probed: Probed, wanted: readonly Language[]): readonly SelfTestLine[] {
  const { graphics, storage, keptFiles, served, fingers, voices } = probed;
  const spoken = wanted.filter((language) => voices.includes(language)).length;
  const offline = keptFiles === 0 ? 'none' : served ? 'whole' : 'notYet';
  const sound = spoken === wanted.length ? 'all' : spoken > 0 ? 'some' : 'none';
  const touch = fingers > 0 ? 'touch' : 'none';
  return [
    {
      part: 'graphics',
      says: graphics,
      grade: graphics === 'chip' ? 'good' : graphics === 'none' ? 'missing' : 'enough',
    },
    {
      part: 'storage',
      says: storage,
      grade: storage === 'promised' ? 'good' : storage === 'kept' ? 'enough' : 'missing',
    },
    {
      part: 'offline',
      says: offline,
      grade: offline === 'whole' ? 'good' : offline === 'notYet' ? 'enough' : 'missing',
    },
    { part: 'touch', says: touch, grade: touch === 'touch' ? 'good' : 'missing' },
    { part: 'sound', says: sound, grade: sound === 'all' ? 'good' : sound === 'some' ? 'enough' : 'missing' },
  ];
}
