import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { Refusal } from '../../statechart/season-machine.ts';

/** Why a block cannot be sewn in yet, in a sentence a visitor understands. */
export function refusalText({ reason, values }: Refusal, { messages, formats }: Words): string {
  const { refusals } = messages.verdicts;
  const value = (name: string) => values[name] ?? 0;
  switch (reason) {
    case 'notEnoughBollsOpen':
      return fill(refusals.notEnoughBollsOpen, {
        open: formats.percent(value('open'), 0),
        needed: formats.percent(value('needed'), 0),
      });
    case 'tooWetToStore':
      return fill(refusals.tooWetToStore, {
        moisture: formats.percent(value('moisture')),
        limit: formats.percent(value('limit'), 0),
      });
    case 'yarnOutOfReach':
      return fill(refusals.yarnOutOfReach, {
        count: formats.yarnCount(value('count')).text,
        limit: formats.yarnCount(value('limit')).text,
      });
    case 'settTooHigh':
      return fill(refusals.settTooHigh, {
        sett: formats.threads(value('sett')).text,
        limit: formats.threads(value('limit')).text,
      });
    case 'cropFailed':
      return refusals.cropFailed;
  }
}

/** Why a season ended early; empty where it did not. */
export function stopText({ stopped }: Season, { messages, formats }: Words): string {
  if (!stopped) return '';
  const { stopped: words } = messages.verdicts;
  const sentence = (words as Readonly<Record<string, string>>)[stopped.reason];
  if (sentence === undefined) return '';
  const heat = (dd60: number | null) => (dd60 === null ? '' : formats.heatUnits(dd60).text);
  const filled = fill(sentence, { dd60: heat(stopped.dd60), needed: heat(stopped.dd60Needed) });
  return stopped.dd60 === null ? filled : `${words.heading}. ${filled} ${words.soWhat}`;
}
