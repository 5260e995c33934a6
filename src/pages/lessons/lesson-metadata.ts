import { type Language, localeOf } from '../../language/language.ts';
import type { LessonMatter } from '../../lessons/front-matter.ts';
import { frameworkOf } from '../../lessons/standards.ts';

/** A text without the marks for numbers. */
const plain = (text: string): string => text.replace(/\s*\[\[[^\]]*\]\]/g, '');

/** What a lesson is, for machines: schema.org LearningResource. */
export const lessonMetadata = (language: Language, matter: LessonMatter): object => ({
  '@context': 'https://schema.org',
  '@type': 'LearningResource',
  name: matter.title,
  description: matter.question,
  inLanguage: localeOf(language),
  learningResourceType: 'lesson',
  educationalLevel: matter.grades,
  teaches: matter.objectives.map(plain),
  timeRequired: `PT${matter.minutes.middle}M`,
  isAccessibleForFree: true,
  license: 'https://spdx.org/licenses/MIT.html',
  accessibilitySummary:
    'Each figure has a table that says the same. No sound, no motion, no color without a second sign.',
  educationalAlignment: matter.standards.map((code) => ({
    '@type': 'AlignmentObject',
    alignmentType: 'teaches',
    educationalFramework: frameworkOf(code),
    targetName: code,
  })),
});
