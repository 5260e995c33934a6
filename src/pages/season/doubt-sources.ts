import type { Change } from '../../doubt/one-at-a-time.ts';
import type { OutcomeName, Outcomes } from '../../doubt/outcomes.ts';
import { quantileShares, type Summary } from '../../doubt/summarise.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import { above, count, exact, percent, read, step } from '../../workings/steps.ts';
import type { Step } from '../../workings/working.ts';
import type { OutcomeWriting } from './doubt-outcomes.ts';
import { workingSource } from './working-source.ts';

const source = (season: Season, words: Words, key: string, name: string, text: string, steps: readonly Step[]) =>
  workingSource(season, words, { topic: 'seen', at: `doubt/${key}`, text, steps }, name);

/** How a number of the strips table was come by: seasons in order, and the two between which the share lies. */
export function quantileSource(
  season: Season,
  words: Words,
  name: OutcomeName,
  index: number,
  { count: seasons, between }: Summary,
  text: string,
  { name: label, short }: OutcomeWriting,
): WorkingSource {
  const { low, high, part } = between[index]!;
  return source(season, words, `${name}/${index}`, label, text, [
    step('seasonsDrawn', count(seasons), { at: 'chance' }),
    step('shareBelow', percent(100 * quantileShares[index]!, 0), { at: 'definition' }),
    step('seasonBefore', { as: 'text', text: short(low) }, { at: 'chance' }),
    step('seasonAfter', { as: 'text', text: short(high) }, { at: 'chance' }),
    step('partBetween', exact(part, 'fraction'), above),
    step('inBetween', { as: 'text', text: short(low + part * (high - low)) }, above),
  ]);
}

/** How a change of the ranking was come by: the season as it is, and with one fact at an end of its range. */
export function changeSource(
  season: Season,
  words: Words,
  name: OutcomeName,
  end: 'low' | 'high',
  base: Outcomes,
  { swing, ...change }: Change,
  { name: label, short, change: write }: OutcomeWriting,
): WorkingSource | undefined {
  const difference = change[end];
  const moved = (end === 'low' ? swing.atLow : swing.atHigh)[name];
  const now = base[name];
  if (difference === null || moved === null || now === null) return undefined;
  const [low, high] = swing.fact.range;
  return source(season, words, `${swing.names[0]}/${end}`, label, write(difference), [
    step('factHere', exact(swing.fact.value), read(swing.fact)),
    step('factAtEnd', exact(end === 'low' ? low : high), read(swing.fact)),
    step('outcomeHere', { as: 'text', text: short(now) }, { at: 'station', station: 'sewing' }),
    step('outcomeAtEnd', { as: 'text', text: short(moved) }, { at: 'chance' }),
    step('outcomeChange', { as: 'text', text: write(moved - now) }, above),
  ]);
}
