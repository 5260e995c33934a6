import type { Words } from '../../../language/words.ts';
import { type ComputedId, computedOf } from '../../../lessons/computed/all-computed.ts';
import { oneBoll } from '../../../lessons/one-boll.ts';
import type { Fact } from '../../../model/fact.ts';
import { labourFacts } from '../../../model/harvest/labour-facts.ts';
import type { Season } from '../../../model/season.ts';
import { stationIds } from '../../../model/station.ts';
import { asNe, KILO, texFromNe } from '../../../model/units.ts';
import { guildTalk, type Slide, type SlideFigure } from '../../../teach/guild/talk.ts';
import { whereItWent } from '../../../teach/guild/where-it-went.ts';
import type { LessonWords } from '../../lessons/lesson-words.ts';
import { numberText } from '../../lessons/number-text.ts';
import { stationReadings } from '../../season/station-readings.ts';
import type { ToldSeason } from '../told-season.ts';
import type { GuildWords } from './guild-words.ts';

/** A figure on a slide. */
export interface ShownFigure {
  readonly label: string;
  readonly text: string;
  /** It rests on memory, common practice or an assumption. */
  readonly marked: boolean;
}

/** As the census figures are known: their totals differ by a few thousand. */
const toTenThousand = (people: number): number => Math.round(people / 10_000) * 10_000;

/** The cross that stands beside such a number on paper. */
export const cross = ' ×';

const isMarked = ({ mark }: Pick<Fact, 'mark'>): boolean => mark !== 'published' && mark !== 'derived';

/** A figure that is no station's. */
function ownFigure(
  own: Extract<SlideFigure, { own: string }>['own'],
  season: Season,
  { formats }: Words,
  { figures }: GuildWords,
): ShownFigure {
  const { enslaved1860, menPoundsPerDay, cropperShare } = labourFacts;
  const [text, fact] = {
    yarnNumber: [formats.yarnCount(oneBoll(season).yarnNe).text, null],
    enslaved: [formats.plain(toTenThousand(enslaved1860.value)).text, enslaved1860],
    dayPicked: [formats.pounds(menPoundsPerDay.value).text, menPoundsPerDay],
    paid: [figures.nothing, null],
    cropper: [formats.percentage(100 * cropperShare.value, 0).text, cropperShare],
  }[own] as [string, Fact | null];
  return { label: figures[own], text, marked: fact !== null && isMarked(fact) };
}

/** The figures of a slide, in the reader's words and units. */
export function slideFigures({ figures }: Slide, season: Season, words: Words, said: GuildWords): ShownFigure[] {
  return figures.flatMap((figure): ShownFigure[] => {
    if ('own' in figure) return [ownFigure(figure.own, season, words, said)];
    const found = stationReadings(season, figure.station, words).find(({ key }) => key === figure.key);
    return found ? [{ label: found.label, text: found.text, marked: found.trust !== undefined }] : [];
  });
}

/** A number of a lesson as the notes say it, with its cross. */
function computedText(id: ComputedId, words: Words, lessons: LessonWords): string {
  const computed = computedOf(id)!;
  const { as, value, decimals } = computed;
  const { text } = numberText(
    decimals === undefined ? { as, value: value() } : { as, value: value(), decimals },
    words,
    lessons,
  );
  return computed.restsOn && isMarked(computed.restsOn) ? `${text}${cross}` : text;
}

/** Everything that a slide's notes can name: each station's figures, the numbers of the lessons, and the boll's own. */
export function noteNumbers({ season, run }: ToldSeason, words: Words, lessons: LessonWords): Record<string, string> {
  const { formats } = words;
  const { pounds } = formats;
  const boll = oneBoll(season);
  const readings = stationIds.flatMap((station) =>
    stationReadings(season, station, words).map(({ key, text, trust }) => [
      `${station}_${key}`,
      trust ? `${text}${cross}` : text,
    ]),
  );
  const said = guildTalk.flatMap(({ says }) =>
    says.map((id) => [id.replaceAll('-', '_'), computedText(id, words, lessons)]),
  );
  const clothShare = whereItWent(season).find(({ account }) => account === 'cloth')?.share ?? 0;
  return {
    ...Object.fromEntries([...readings, ...said]),
    farm: run.scenario.name[words.language],
    seed: formats.plain(run.seed).text,
    men: pounds(labourFacts.menPoundsPerDay.value).text,
    women: pounds(labourFacts.womenPoundsPerDay.value).text,
    cropper: formats.percentage(100 * labourFacts.cropperShare.value, 0).text,
    // A mean of a sample: two figures of it are known.
    fibers: formats.count(Number(boll.fibres.toPrecision(2))),
    fiberLength: numberText({ as: 'distance', value: boll.fibreMetres / KILO }, words, lessons).text,
    bollSeed: formats.smallMass(boll.seedGrams).text,
    yarnYards: formats.clothLength(boll.yarnYards, 0).text,
    yarnNe: formats.number(boll.yarnNe, 0),
    yarnTex: formats.number(texFromNe(asNe(boll.yarnNe)), 1),
    clothShare: formats.percentage(100 * clothShare, 1).text,
  };
}
