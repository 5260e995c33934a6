import { computedOf } from '../../../lessons/computed/all-computed.ts';
import type { Mark } from '../../../model/fact.ts';
import { varietyFacts } from '../../../model/field/variety-facts.ts';
import type { Season } from '../../../model/season.ts';
import { guildTalk } from '../../../teach/guild/talk.ts';
import { workOut } from '../../../workings/work-out.ts';
import type { Step, Working } from '../../../workings/working.ts';

export interface TalkSource {
  readonly source: string;
  readonly mark: Mark;
}

const linesOf = (working: Working | null): readonly Step[] =>
  working === null ? [] : working.kind === 'procedure' ? working.steps : [...working.inputs, ...working.first];

/** What the numbers of the talk rest on, each source once: those of the figures' workings, of the lessons' numbers, and of the records. */
export function talkSources(season: Season): readonly TalkSource[] {
  const found = new Map<string, TalkSource>();
  const add = ({ source, mark }: TalkSource) => {
    // A fact that refers to the one before it has the same source.
    if (!/^same\b/.test(source) && !found.has(source)) found.set(source, { source, mark });
  };
  const { lintShare, bollGrams } = varietyFacts[season.scenario.decisions.planting.variety];
  for (const fact of [bollGrams, lintShare]) add(fact);
  for (const { figures, says, facts } of guildTalk) {
    for (const fact of facts) add(fact);
    for (const id of says) {
      const { restsOn } = computedOf(id)!;
      if (restsOn) add(restsOn);
    }
    for (const figure of figures)
      if ('station' in figure)
        for (const { from } of linesOf(workOut(season, { topic: 'reading', ...figure })))
          if ('fact' in from) add(from.fact);
  }
  return [...found.values()];
}
