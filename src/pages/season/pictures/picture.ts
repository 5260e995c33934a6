import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import type { SceneFrame } from '../../../scene/scene-frame.ts';
import type { Asked } from '../../../workings/work-out.ts';
import type { Step } from '../../../workings/working.ts';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** When a picture is looked at. */
export interface PictureMoment {
  /** The day shown, for the stations in the field; 1 is January 1. */
  readonly dayOfYear: number;
  /** Share of the station's work that is done, 0 to 1. */
  readonly progress: number;
}

/** One line of the table that stands for a picture. */
export interface TwinRow {
  /** Unique in its station, and the same in every language. */
  readonly key: string;
  readonly label: string;
  /** The value with its unit, as the picture shows it. */
  readonly text: string;
  /**
   * How it was come by: lines among whose values every number of the text stands (row-steps.ts); or the station's reading that
   * prints the same number, by its key. No lines where there is no number.
   */
  readonly steps: readonly Step[] | { readonly reading: string };
  /** A number that is worked out first, by the steps of its own working. */
  readonly after?: Asked;
}

/** How a station is shown: as a picture, and the same in words and numbers. */
export interface StationPicture {
  /** Lays the picture out once; frames of one layout share what stands still, so that only what changes is painted anew. */
  layOut(season: Season, words: Words, size: PictureSize): (moment: PictureMoment) => SceneFrame | null;
  /** What is seen, in sentences. */
  see(season: Season, words: Words, moment: PictureMoment): readonly string[];
  /** The values in the picture, as a table. */
  rows(season: Season, words: Words, moment: PictureMoment): readonly TwinRow[];
  /** Values that its sentences say and its table does not. */
  said?(season: Season, words: Words, moment: PictureMoment): readonly TwinRow[];
}
