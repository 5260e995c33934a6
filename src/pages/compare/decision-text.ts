import type { DecidedValue, DecisionPlace } from '../../compare/changed-decisions.ts';
import { decisionQuantity } from '../../language/decision-quantity.ts';
import type { Words } from '../../language/words.ts';

interface DecisionWording {
  readonly label: string;
  readonly options?: Readonly<Record<string, string>>;
}
const wordingOf = ({ station, key }: DecisionPlace, { messages }: Words): DecisionWording =>
  (messages.decisions[station] as Readonly<Record<string, DecisionWording>>)[key]!;

/** What a decision is called. */
export const decisionName = (place: DecisionPlace, words: Words): string => wordingOf(place, words).label;

/** What was decided, in the reader's words and units. */
export function decidedText(place: DecisionPlace, value: DecidedValue, words: Words): string {
  const { decision, key } = place;
  if (decision.kind === 'switch') return words.messages.common[value ? 'yes' : 'no'];
  if (decision.kind === 'choice') return wordingOf(place, words).options?.[String(value)] ?? String(value);
  return decisionQuantity(words.formats, key, decision, Number(value)).text;
}
