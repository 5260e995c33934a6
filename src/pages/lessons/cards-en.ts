import type { LessonMatter } from '../../lessons/front-matter.ts';

/** The heads of all lessons, without their texts: the query makes them modules of their own. */
export const heads = import.meta.glob<LessonMatter>('../../../content/en/lessons/*.mdx', {
  eager: true,
  query: '?head',
  import: 'frontmatter',
});
