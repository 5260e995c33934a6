import type { ComputedId } from '../../lessons/computed/all-computed.ts';
import type { Fact } from '../../model/fact.ts';
import { labourFacts } from '../../model/harvest/labour-facts.ts';
import type { StationId } from '../../model/station.ts';

export const slideIds = [
  'title',
  'boll',
  'hands',
  'gin',
  'bale',
  'staple',
  'twist',
  'number',
  'weight',
  'shrink',
  'grain',
  'pounds',
  'sources',
] as const;
export type SlideId = (typeof slideIds)[number];

/** A figure: a station's of the talk's season, the number of that season's yarn, or one of the records of who picked. */
export type SlideFigure =
  | { readonly station: StationId; readonly key: string }
  | { readonly own: 'yarnNumber' | 'enslaved' | 'dayPicked' | 'paid' | 'cropper' };

/** What a slide shows: a station's scene when its work is done, or a picture of its own. */
export type SlidePicture =
  | { readonly station: StationId }
  | { readonly own: 'quilt' | 'oneBoll' | 'steelyard' | 'section' | 'cloth' | 'pounds' | 'none' };

export interface Slide {
  readonly id: SlideId;
  /** How long the speaker takes over it; common practice. */
  readonly minutes: number;
  readonly shows: SlidePicture;
  readonly figures: readonly SlideFigure[];
  /** Numbers of the lessons that its notes say; they are not the season's. */
  readonly says: readonly ComputedId[];
  /** Facts that its notes rest on beside the figures. */
  readonly facts: readonly Pick<Fact, 'source' | 'mark'>[];
}

const at = (station: StationId, ...keys: readonly string[]): readonly SlideFigure[] =>
  keys.map((key) => ({ station, key }));
const slide = (
  id: SlideId,
  minutes: number,
  shows: SlidePicture,
  more: Partial<Pick<Slide, 'figures' | 'says' | 'facts'>> = {},
): Slide => ({ id, minutes, shows, figures: more.figures ?? [], says: more.says ?? [], facts: more.facts ?? [] });

const { menPoundsPerDay, womenPoundsPerDay, enslaved1860, cropperShare, fewestBollsPerPound } = labourFacts;

/** The talk of a guild evening, from one boll to where every pound went. Its minutes add up to `talkMinutes`. */
export const guildTalk: readonly Slide[] = [
  slide('title', 1, { own: 'quilt' }),
  slide('boll', 3, { own: 'oneBoll' }, { figures: [...at('boll', 'lintPerBoll'), ...at('sewing', 'patch')] }),
  slide(
    'hands',
    4,
    { own: 'steelyard' },
    {
      figures: [{ own: 'enslaved' }, { own: 'dayPicked' }, { own: 'paid' }, { own: 'cropper' }],
      says: [
        'enslaved-1860',
        'fewest-bolls-per-picking-day',
        'most-bolls-per-picking-day',
        'picking-days-per-bale-men',
      ],
      facts: [menPoundsPerDay, womenPoundsPerDay, enslaved1860, cropperShare, fewestBollsPerPound],
    },
  ),
  slide('gin', 3, { station: 'ginning' }, { figures: at('ginning', 'turnout', 'seedPerBale') }),
  slide('bale', 2, { station: 'pressing' }, { figures: at('pressing', 'balesPressed', 'baleWeight') }),
  slide('staple', 3, { station: 'classing' }, { figures: at('classing', 'staple', 'price') }),
  slide('twist', 3, { station: 'spinning' }, { figures: at('spinning', 'fibresInSection', 'twist') }),
  slide('number', 2, { own: 'section' }, { figures: [{ own: 'yarnNumber' }, ...at('spinning', 'limit')] }),
  slide('weight', 2, { station: 'weaving' }, { figures: at('weaving', 'weight', 'threadCountFinished') }),
  slide(
    'shrink',
    2,
    { own: 'cloth' },
    { figures: at('weaving', 'shrinkage'), says: ['wash-lengthwise', 'wash-crosswise'] },
  ),
  slide(
    'grain',
    2,
    { station: 'sewing' },
    { figures: at('sewing', 'yards'), says: ['stretch-lengthwise', 'stretch-crosswise', 'stretch-bias'] },
  ),
  slide('pounds', 2, { own: 'pounds' }),
  slide('sources', 1, { own: 'none' }),
];

/** How long the talk is. */
export const talkMinutes = 30;
