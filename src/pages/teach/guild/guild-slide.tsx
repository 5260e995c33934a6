import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { guildTalk, type Slide } from '../../../teach/guild/talk.ts';
import type { LessonWords } from '../../lessons/lesson-words.ts';
import type { ToldSeason } from '../told-season.ts';
import { cross, slideFigures } from './guild-numbers.ts';
import { GuildPicture } from './guild-picture.tsx';
import { talkSources } from './guild-sources.ts';
import type { GuildWords } from './guild-words.ts';

export interface GuildSlideProps {
  readonly slide: Slide;
  /** Its place in the talk, from 1. */
  readonly number: number;
  readonly fromMinute: number;
  readonly told: ToldSeason;
  readonly said: GuildWords;
  readonly lessons: LessonWords;
  /** What its notes can name. */
  readonly numbers: Readonly<Record<string, string>>;
}

/** Longer notes are set in smaller letters on paper, characters. */
const longNotes = 700;

/** What the talk rests on. Sources stand in English, as they were read. */
function Sources({ told, said }: Pick<GuildSlideProps, 'told' | 'said'>) {
  const { messages } = useWords();
  return (
    <ul class="guild-sources" lang="en">
      {talkSources(told.season).map(({ source, mark }) => (
        <li key={source}>{fill(said.sourceMark, { source, mark: messages.marks.names[mark] })}</li>
      ))}
    </ul>
  );
}

/** One slide as it prints: the face that the room sees, and the speaker's notes beside it. */
export function GuildSlide({ slide, number, fromMinute, told, said, lessons, numbers }: GuildSlideProps) {
  const words = useWords();
  const { formats, messages } = words;
  const text = said.slides[slide.id];
  const figures = slideFigures(slide, told.season, words, said);
  const isMarked =
    figures.some(({ marked }) => marked) || text.notes.some((note) => fill(note, numbers).includes(cross));
  const foot = fill(said.pageOf, { n: formats.count(number), all: formats.count(guildTalk.length) });
  return (
    <article class="guild-slide" aria-labelledby={`guild-${slide.id}`}>
      <div class="guild-face">
        <h2 id={`guild-${slide.id}`}>{text.title}</h2>
        <p class="guild-line">{text.line}</p>
        <GuildPicture shows={slide.shows} season={told.season} said={said} lessons={lessons} />
        {figures.length > 0 ? (
          <dl class="guild-figures">
            {figures.map(({ label, text: figure, marked }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>
                  {figure}
                  {marked ? cross : ''}
                </dd>
              </div>
            ))}
          </dl>
        ) : null}
        {slide.id === 'sources' ? <Sources told={told} said={said} /> : null}
        <p class="guild-foot">
          {messages.common.product} · {foot}
        </p>
      </div>
      <div class="guild-notes" data-long={text.notes.join(' ').length > longNotes ? '' : undefined}>
        <p class="guild-minutes">
          <b>{formats.plural(slide.minutes, said.minutes)}</b>{' '}
          {fill(said.from, { from: formats.count(fromMinute), to: formats.count(fromMinute + slide.minutes) })}
        </p>
        <h3>{said.say}</h3>
        {text.notes.map((note) => (
          <p key={note}>{fill(note, numbers)}</p>
        ))}
        <h3>{said.ask}</h3>
        <p>{text.ask}</p>
        {isMarked ? <p class="caption">{said.marks}</p> : null}
      </div>
    </article>
  );
}
