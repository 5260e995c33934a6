import { useEffect, useMemo } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { guildTalk, talkMinutes } from '../../../teach/guild/talk.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { loadLessonWords } from '../../lessons/lesson-words.ts';
import { useLoaded } from '../../lessons/use-loaded.ts';
import { hashOf } from '../../route.ts';
import { toldSeason } from '../told-season.ts';
import { noteNumbers } from './guild-numbers.ts';
import { GuildSlide } from './guild-slide.tsx';
import { guildWords } from './guild-words.ts';
import './guild.css';

export interface GuildPageProps {
  /** The link's query of a season; '' for the lessons' own. */
  readonly query: string;
}

/** A talk for a guild evening: slides with what to say beside them, one a page of paper. */
export default function GuildPage({ query }: GuildPageProps) {
  const words = useWords();
  const { formats, language, messages } = words;
  const said = guildWords(language);
  const lessons = useLoaded(() => loadLessonWords(language), [language]);
  const told = useMemo(() => toldSeason(query), [query]);
  const numbers = useMemo(() => (lessons ? noteNumbers(told, words, lessons) : null), [told, words, lessons]);
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
    window.scrollTo(0, 0);
  }, [said, messages]);
  const season = fill(said.season, {
    farm: told.run.scenario.name[language],
    seed: formats.plain(told.run.seed).text,
  });
  let from = 0;
  return (
    <main id="main" class="guild-page" tabIndex={-1}>
      <div class="guild-head">
        <p>
          <a href={hashOf({ page: 'teach', id: '', query: '' })}>{said.backToPlan}</a>
        </p>
        <h1>{said.title}</h1>
        <p class="page-lead">
          {fill(said.lead, { minutes: formats.count(talkMinutes), slides: formats.count(guildTalk.length) })}
        </p>
        <p>{told.other ? fill(said.otherSeason, { season }) : season}</p>
        <p>
          <PatchButton ink="madder" primary onPress={() => print()}>
            {said.print}
          </PatchButton>
        </p>
        <p class="caption">{said.printHelp}</p>
      </div>
      {lessons && numbers ? (
        guildTalk.map((slide, at) => {
          const start = from;
          from += slide.minutes;
          return (
            <GuildSlide
              key={slide.id}
              slide={slide}
              number={at + 1}
              fromMinute={start}
              told={told}
              said={said}
              lessons={lessons}
              numbers={numbers}
            />
          );
        })
      ) : (
        <p role="status">{messages.common.loading}</p>
      )}
    </main>
  );
}
