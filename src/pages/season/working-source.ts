import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { Asked } from '../../workings/work-out.ts';

/** One key for each number that can be asked for. */
function keyOf(asked: Asked): string {
  switch (asked.topic) {
    case 'reading':
      return `${asked.station}/${asked.key}`;
    case 'fibre':
      return `fibre/${asked.index}/${asked.key}`;
    case 'bale':
      return `bale/${asked.number}/${asked.key}`;
    case 'money':
      return `money/${asked.key}/${asked.perBale ? 'bale' : 'field'}`;
    case 'seed':
      return `seed/${asked.key}`;
    case 'ledger':
      return `ledger/${asked.station}/${asked.at}`;
    case 'count':
      return `count/${asked.place.station}/${asked.place.whole}/${asked.place.of}`;
    case 'array':
      return `array/${asked.index}/${asked.share}`;
    case 'practice':
      return `practice/${asked.id}`;
    case 'seen':
      return asked.at;
    case 'outcome':
      return `outcome/${asked.key}`;
    case 'difference':
      return `difference/${asked.key}`;
    case 'journey':
      return `journey/${asked.part}/${asked.station}/${asked.of}`;
  }
}

/**
 * What a number of the season page needs to open its working. The workings themselves are fetched with the first one opened.
 * @param name what the number is called on the page
 * @param where tells two numbers apart that have the same working
 */
export const workingSource = (season: Season, words: Words, asked: Asked, name: string, where = ''): WorkingSource => ({
  key: `${where}${keyOf(asked)}`,
  name,
  on: season,
  load: () => import('./working-text.ts').then(({ workingText }) => workingText(season, asked, words)),
});
