import type { ComponentType } from 'preact';
import type { Language } from '../../language/language.ts';
import type { LessonMatter } from '../../lessons/front-matter.ts';

/** What a lesson's text uses, as the build reads it off the file. */
export interface LessonParts {
  readonly components: readonly string[];
  readonly facts: readonly string[];
  readonly computed: readonly string[];
  readonly terms: readonly string[];
}

/** A lesson file, read. */
export interface LessonFile {
  readonly default: ComponentType<{ components: object }>;
  readonly frontmatter: LessonMatter;
  readonly parts: LessonParts;
}

const files = {
  en: import.meta.glob<LessonFile>('../../../content/en/lessons/*.mdx'),
  es: import.meta.glob<LessonFile>('../../../content/es/lessons/*.mdx'),
};

/** 'staple-length' of '…/lessons/staple-length.mdx'. */
export const lessonName = (path: string): string => path.replace(/^.*\//, '').replace(/\.mdx.*$/, '');

/** Names of the lessons there are, in no order. */
export const lessonNames: readonly string[] = Object.keys(files.en).map(lessonName);

/** A lesson in a language; null when there is none of that name. */
export async function loadLesson(language: Language, name: string): Promise<LessonFile | null> {
  const load = Object.entries(files[language]).find(([path]) => lessonName(path) === name)?.[1];
  return load ? load() : null;
}
