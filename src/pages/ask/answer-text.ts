import type { Amount, Answer } from '../../compare/questions/question.ts';
import type { Run } from '../../compare/what-made-the-difference.ts';
import { fill } from '../../language/fill.ts';
import type { QuestionWords } from '../../language/messages/en/ask/question-words.ts';
import type { Words } from '../../language/words.ts';
import { printed } from '../season/printed.ts';
import type { AskWords } from './use-ask-words.ts';

/** A value of an answer in the reader's words and units. */
export function amountText(amount: Amount, words: Words, asked: AskWords): string {
  switch (amount.as) {
    case 'counted':
      return words.formats.plural(
        Number(amount.value.toFixed(amount.decimals ?? 0)),
        asked.counts[amount.of],
        amount.decimals,
      );
    case 'points':
      return words.formats.points(amount.value).text;
    case 'way': {
      const { up, down, same } = asked.ways[amount.pair];
      return amount.value > 0 ? up : amount.value < 0 ? down : same;
    }
    default:
      return printed(amount, words);
  }
}

/** What an answer says, sentence by sentence; the first is the short one. */
export interface AnswerText {
  readonly about: string;
  readonly sentences: readonly string[];
  readonly limits: readonly string[];
}

/**
 * Puts what was computed into the prepared sentences.
 * @throws RangeError where a verdict has no sentences
 */
export function answerText(
  answer: Answer,
  { scenario }: Run,
  question: QuestionWords,
  words: Words,
  asked: AskWords,
): AnswerText {
  const sentences = question.answers[answer.verdict];
  if (!sentences) throw new RangeError(`no sentences for ${answer.verdict}`);
  const values = Object.fromEntries(
    Object.entries(answer.said).map(([name, amount]) => [name, amountText(amount, words, asked)]),
  );
  const filled = (template: string) => fill(template, { ...values, farm: scenario.name[words.language] });
  return {
    about: filled(question.about),
    sentences: sentences.map(filled),
    limits: question.limits.map(filled),
  };
}
