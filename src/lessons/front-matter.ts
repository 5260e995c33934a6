import * as v from 'valibot';
import { standardCodes } from './standards.ts';

/** How long a lesson can be made: minutes of each variant. */
export const variants = ['short', 'middle', 'long'] as const;

/** Words on one screen of the one-minute version, on all its screens, and new terms on a page. */
const minuteLimits = { screenWords: 60, allWords: 120 };
export const mostNewTerms = 3;

const line = v.pipe(v.string(), v.trim(), v.nonEmpty());
const lines = v.pipe(v.array(line), v.nonEmpty());
const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(60));
const minutes = v.strictObject({ short: whole, middle: whole, long: whole });

const option = v.strictObject({
  /** What the option says; not with `times`. */
  says: v.optional(line),
  /** The option is the computed answer times this; the keyed one is 1. */
  times: v.optional(v.pipe(v.number(), v.gtValue(0))),
  right: v.optional(v.literal(true)),
  why: line,
});
const question = v.strictObject({
  ask: line,
  /** The computed quantity that a question with numbers asks for. */
  of: v.optional(line),
  options: v.pipe(v.array(option), v.minLength(3), v.maxLength(4)),
});

export const lessonSchema = v.strictObject({
  /** Place in the order of teaching. */
  number: v.pipe(v.number(), v.integer(), v.minValue(1)),
  title: line,
  /** The one question that drives the lesson, as a reader would ask it. */
  question: line,
  /** School years, such as '6-12'. */
  grades: v.pipe(v.string(), v.regex(/^\d{1,2}-\d{1,2}$/)),
  objectives: v.pipe(v.array(line), v.minLength(2), v.maxLength(3)),
  minutes,
  /** What fills the minutes, step by step; each variant adds up. */
  plan: v.pipe(v.array(v.strictObject({ do: line, ...minutes.entries })), v.minLength(2)),
  standards: v.pipe(v.array(v.picklist(standardCodes)), v.nonEmpty()),
  materials: lines,
  /** Glossary ids of the terms that are new here. */
  vocabulary: v.pipe(v.array(line), v.nonEmpty(), v.maxLength(mostNewTerms)),
  /** Guess, then see: a number on a ruler, and the computed quantity that answers it. */
  prediction: v.strictObject({
    ask: line,
    of: line,
    low: v.number(),
    high: v.number(),
    step: v.pipe(v.number(), v.gtValue(0)),
    /** Said with the answer. */
    told: line,
  }),
  quiz: v.pipe(v.array(question), v.minLength(4), v.maxLength(6)),
  discussion: lines,
  athome: v.strictObject({ title: line, needs: line, steps: lines, look: line, caution: v.optional(line) }),
  /** The one-minute version, screen by screen. */
  minute: lines,
  /** Where statements come from that are no constants of the model. */
  sources: v.array(line),
  credits: line,
});

/** What stands at the head of a lesson. */
export type LessonMatter = v.InferOutput<typeof lessonSchema>;
export type QuizQuestion = LessonMatter['quiz'][number];

/** Words of a text; a number in double brackets counts as one. */
const wordCount = (text: string): number =>
  (text.replace(/\[\[[^\]]*\]\]/g, 'number').match(/[\p{L}\p{N}][\p{L}\p{N}’'.,/-]*/gu) ?? []).length;

function faultsOfQuestion({ ask, of, options }: QuizQuestion): string[] {
  const right = options.filter((one) => (of === undefined ? one.right === true : one.times === 1)).length;
  const odd = options.some(
    (one) => (of === undefined) === (one.says === undefined) || (of === undefined) !== (one.times === undefined),
  );
  return [
    ...(right === 1 ? [] : [`quiz "${ask}": ${right} right options`]),
    ...(odd ? [`quiz "${ask}": options with "of" have "times", others have "says"`] : []),
  ];
}

/**
 * What is wrong with a lesson's head, one line each; none when it is in order. Minutes of the plan add up to each variant,
 * each question has one right option, the one-minute version keeps its limits.
 */
export function faultsOfMatter(data: unknown): string[] {
  const parsed = v.safeParse(lessonSchema, data);
  if (!parsed.success) return parsed.issues.map((issue) => `${v.getDotPath(issue) ?? 'head'}: ${issue.message}`);
  const matter = parsed.output;
  const sums = variants.flatMap((variant) => {
    const sum = matter.plan.reduce((total, step) => total + step[variant], 0);
    return sum === matter.minutes[variant]
      ? []
      : [`plan: ${variant} adds up to ${sum}, not ${matter.minutes[variant]}`];
  });
  const screens = matter.minute.map(wordCount);
  const all = screens.reduce((sum, words) => sum + words, 0);
  return [
    ...sums,
    ...matter.quiz.flatMap(faultsOfQuestion),
    ...screens.flatMap((words, index) =>
      words > minuteLimits.screenWords ? [`minute: screen ${index + 1} has ${words} words`] : [],
    ),
    ...(all > minuteLimits.allWords ? [`minute: ${all} words in all`] : []),
  ];
}
