import { useMemo } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords, type Words } from '../../../language/words.ts';
import { oneBoll } from '../../../lessons/one-boll.ts';
import { poiseInches } from '../../../lessons/steelyard.ts';
import { startingSetUp } from '../../../model/bench/set-up.ts';
import { workBench } from '../../../model/bench/work-bench.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import { steelyardFacts } from '../../../model/harvest/labour-facts.ts';
import { benchFacts } from '../../../model/mill/bench-limit-facts.ts';
import type { Season } from '../../../model/season.ts';
import { type StationId, stationIds } from '../../../model/station.ts';
import { stationSpan } from '../../../model/timeline.ts';
import { asNe, texFromNe } from '../../../model/units.ts';
import { clothPiecePicture } from '../../../scene/bench/cloth-piece.ts';
import { type Scale, usualPxPerMm } from '../../../scene/bench/true-scale.ts';
import { yarnSectionPicture } from '../../../scene/bench/yarn-section.ts';
import type { DisplayList } from '../../../scene/display-list.ts';
import { bollsAndBlock, bollsAndBlockHeight } from '../../../scene/lessons/bolls-and-block.ts';
import { steelyardHeight, steelyardMarks } from '../../../scene/lessons/steelyard.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { quiltMarks } from '../../../scene/quilt/quilt.ts';
import { frameAtRest } from '../../../scene/scene-frame.ts';
import { endedStrips } from '../../../scene/teach/ended-strips.ts';
import type { SlidePicture } from '../../../teach/guild/talk.ts';
import { whereItWent } from '../../../teach/guild/where-it-went.ts';
import { Picture } from '../../../ui/picture.tsx';
import { drawnCloth } from '../../bench/part-pictures.tsx';
import type { LessonWords } from '../../lessons/lesson-words.ts';
import { stationPictures } from '../../season/pictures/station-pictures.ts';
import type { GuildWords } from './guild-words.ts';

export interface GuildPictureProps {
  readonly shows: SlidePicture;
  readonly season: Season;
  readonly said: GuildWords;
  readonly lessons: LessonWords;
}

interface Drawing {
  readonly marks: DisplayList;
  readonly width: number;
  readonly height: number;
  /** What it shows, where the slide's own words do not say so. */
  readonly alt?: string;
}

/** A slide's picture on paper, px. */
const width = 620;
const height = 460;
/** Pictures of the bench are drawn this wide and grow to the slide. */
const benchWide = 380;
/** Shares smaller than this are put together, so that each strip can be seen. */
const leastShare = 0.01;
const sackPounds = 50;
const mostPounds = 100;

const scaleOf = ({ unitSystem, messages }: Words): Scale => {
  const isMetric = unitSystem === 'metric';
  return { pxPerMm: usualPxPerMm, isMetric, unit: messages.units[isMetric ? 'centimetres' : 'inches'].sign };
};

function scene(station: StationId, season: Season, words: Words): Drawing | null {
  const moment = { dayOfYear: stationSpan(season, station).toDay, progress: 1 };
  const frame = stationPictures[station].layOut(season, words, { width, height })(moment);
  if (!frame) return null;
  return {
    marks: frameAtRest(frame),
    width,
    height,
    alt: stationPictures[station].see(season, words, moment).join(' '),
  };
}

function quilt({ messages }: Words): Drawing {
  const labels = Object.fromEntries(stationIds.map((id) => [id, messages.stations[id].name])) as Record<
    StationId,
    string
  >;
  const box = { x: 4, y: 4, width: width - 12, height: height - 12 };
  return { marks: quiltMarks({ layout: 'landscape', box, stateOf: () => 'sewn', labels }), width, height };
}

function boll(season: Season, { formats }: Words, { figures }: LessonWords): Drawing {
  const side = formats.length(oneBoll(season).patchInches, 1).text;
  const bolls = formats.plural(1, figures.oneBoll.count);
  return {
    marks: bollsAndBlock({ bolls: 1, width, labels: { side, bolls } }),
    width,
    height: bollsAndBlockHeight(width),
    alt: fill(figures.oneBoll.says, { bolls, side: `${side} × ${side}` }),
  };
}

function steelyard({ formats }: Words): Drawing {
  const { hookArmIn, poiseLb } = steelyardFacts;
  const arm = (inches: number) => formats.length(inches, 1).text;
  const marks = steelyardMarks({
    width,
    hookIn: hookArmIn.value,
    poiseIn: poiseInches(sackPounds),
    beamIn: poiseInches(mostPounds),
    full: sackPounds / mostPounds,
    labels: {
      sack: formats.pounds(sackPounds).text,
      poise: formats.pounds(poiseLb.value).text,
      hookArm: arm(hookArmIn.value),
      poiseArm: arm(poiseInches(sackPounds)),
    },
  });
  return { marks, width, height: steelyardHeight };
}

function section(season: Season, words: Words): Drawing {
  const cut = {
    fibresInSingle: season.spinning!.verdict.fibresInSection,
    singles: 1,
    fibreMtex: season.fibreTrail.at(-1)!.fibre.linearDensityMtex,
    singleDiameterMm: yarnDiameterMm(texFromNe(asNe(oneBoll(season).yarnNe))),
  };
  return yarnSectionPicture(cut, benchWide, scaleOf(words));
}

function cloth(words: Words): Drawing {
  const bench = workBench(startingSetUp('uplandMedium', 'quilting', benchFacts.usualNoilPercent.value));
  return clothPiecePicture(drawnCloth(bench), benchWide, scaleOf(words));
}

function pounds(season: Season, { formats, messages }: Words, said: GuildWords): Drawing {
  const percent = (share: number) => formats.percentage(100 * share, 1).text;
  const ended = whereItWent(season);
  const shown = ended.filter(({ share }) => share >= leastShare);
  const rest = ended.filter(({ share }) => share < leastShare).reduce((sum, { share }) => sum + share, 0);
  const strips = [
    ...shown.map(({ account, share }) => ({
      key: account,
      name: messages.accounts.destinations[account],
      share,
      text: percent(share),
    })),
    ...(rest > 0 ? [{ key: 'rest', name: said.rest, share: rest, text: percent(rest) }] : []),
  ];
  const alt = strips.map(({ name, text }) => `${name}: ${text}`).join('; ');
  return { marks: endedStrips(strips, width, height), width, height, alt };
}

function drawing({ shows, season, said, lessons }: GuildPictureProps, words: Words): Drawing | null {
  if ('station' in shows) return scene(shows.station, season, words);
  switch (shows.own) {
    case 'quilt':
      return quilt(words);
    case 'oneBoll':
      return boll(season, words, lessons);
    case 'steelyard':
      return steelyard(words);
    case 'section':
      return section(season, words);
    case 'cloth':
      return cloth(words);
    case 'pounds':
      return pounds(season, words, said);
    case 'none':
      return null;
  }
}

/** A slide's picture, drawn from the season; in the projector's inks, which print best. */
export function GuildPicture(props: GuildPictureProps) {
  const words = useWords();
  const { shows, season, said, lessons } = props;
  const drawn = useMemo(() => drawing(props, words), [shows, season, said, lessons, words]);
  const svg = useMemo(() => (drawn ? paintSvg(drawn.marks, { ...drawn, theme: 'projector' }) : ''), [drawn]);
  return drawn ? <Picture class="guild-picture" svg={svg} alt={drawn.alt ?? ''} /> : null;
}
