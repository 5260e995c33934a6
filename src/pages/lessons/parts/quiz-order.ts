import type { QuizQuestion } from '../../../lessons/front-matter.ts';
import { type Chance, chanceOf } from '../../../scene/cloth/chance.ts';

/** The same things in an order drawn by chance (Fisher and Yates 1938, as Durstenfeld 1964 has it). */
function shuffled<Thing>(things: readonly Thing[], chance: Chance): Thing[] {
  const drawn = [...things];
  for (let left = drawn.length - 1; left > 0; left--) {
    const other = Math.floor(chance() * (left + 1));
    [drawn[left], drawn[other]] = [drawn[other]!, drawn[left]!];
  }
  return drawn;
}

/** Places for right answers: no place comes again before each has come once. */
function* dealtPlaces(chance: Chance): Generator<number, never> {
  for (;;) yield* shuffled([0, 1, 2], chance);
}

/**
 * The questions of a lesson with their options in the order that they are printed: numbers from small to large, words
 * shuffled, so that the place of an option does not give the answer away. The order hangs on the lesson's name alone, and is
 * the same in every language, in the app, on still pages and on paper.
 */
export function arrangedQuiz(lesson: string, quiz: readonly QuizQuestion[]): readonly QuizQuestion[] {
  const chance = chanceOf(`quiz of ${lesson}`);
  const places = dealtPlaces(chance);
  return quiz.map((question) => {
    const { of, options } = question;
    if (of !== undefined) return { ...question, options: [...options].sort((a, b) => (a.times ?? 0) - (b.times ?? 0)) };
    const wrong = shuffled(
      options.filter(({ right }) => right !== true),
      chance,
    );
    const right = options.filter((option) => option.right === true);
    const place = places.next().value;
    return { ...question, options: [...wrong.slice(0, place), ...right, ...wrong.slice(place)] };
  });
}
