import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { LessonMatter } from '../../lessons/front-matter.ts';
import type { Glossary } from '../../lessons/glossary.ts';
import { citedComputed, citedFacts, textsBelow } from '../../lessons/text-pieces.ts';
import { hashOf } from '../route.ts';
import type { LessonParts } from './lesson-file.ts';
import type { LessonWords } from './lesson-words.ts';

/** What every part of a lesson knows of the page it stands on. */
export interface LessonFrame {
  readonly name: string;
  readonly matter: LessonMatter;
  /** Facts and computed numbers cited anywhere on the page, in the order of its list of sources. */
  readonly facts: readonly string[];
  readonly computed: readonly string[];
  readonly words: LessonWords;
  readonly glossary: Glossary;
  /** A page without scripts: figures stand still with their tables open, numbers in both units. */
  readonly still: boolean;
  /** Where a term is explained. */
  termHref(id: string): string;
}

const once = (texts: readonly string[]): string[] => [...new Set(texts)];

/** The frame of a lesson. */
export function lessonFrame(
  name: string,
  file: { readonly frontmatter: LessonMatter; readonly parts: LessonParts },
  words: LessonWords,
  glossary: Glossary,
  still: boolean,
): LessonFrame {
  const texts = textsBelow(file.frontmatter);
  const ofQuiz = file.frontmatter.quiz.flatMap(({ of }) => (of === undefined ? [] : [of]));
  return {
    name,
    matter: file.frontmatter,
    facts: once([...file.parts.facts, ...citedFacts(texts)]),
    computed: once([...file.parts.computed, ...citedComputed(texts), file.frontmatter.prediction.of, ...ofQuiz]),
    words,
    glossary,
    still,
    termHref: (id) => (still ? `glossary.html#${id}` : hashOf({ page: 'glossary', id })),
  };
}

export const LessonContext = createContext<LessonFrame | null>(null);

/** The page a part stands on. @throws Error outside a lesson */
export function useLesson(): LessonFrame {
  const frame = useContext(LessonContext);
  if (!frame) throw new Error('this part belongs in a lesson');
  return frame;
}
