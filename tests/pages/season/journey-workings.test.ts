import { describe, expect, test } from 'vitest';
import { farms } from '../../../src/model/farms.ts';
import { parts } from '../../../src/model/lot.ts';
import { followPart, journeyTerms } from '../../../src/pages/season/follow-part.ts';
import { oneBaleShare } from '../../../src/pages/season/ledger-panel.tsx';
import { workingText } from '../../../src/pages/season/working-text.ts';
import type { JourneyTerm } from '../../../src/workings/journey.ts';
import { everyWords, seasonOf } from './pictures/picture-cases.ts';

describe.each(farms.map((farm) => [farm.id, farm] as const))('%s', (_, farm) => {
  const season = seasonOf(farm);
  test.each([...parts, 'water' as const])('the way of %s opens in every number, lines and sums', async (part) => {
    const journey = followPart(season.ledgers, part);
    const terms = journeyTerms(journey);
    for (const words of [everyWords[0]!, everyWords[3]!]) {
      for (const oneBale of [true, false]) {
        const share = oneBale ? oneBaleShare(season) : 1;
        const result = async (of: readonly JourneyTerm[], ofKg: number | null) => {
          const place = { part, station: 'sewing', of: 'x', terms: of, oneBale, ofKg } as const;
          return (await workingText(season, { topic: 'journey', ...place }, words))?.result;
        };
        for (const term of terms) {
          expect(await result([term], null)).toBe(words.formats.mass(term.kg * share).text);
          expect(await result([term], journey.sourcesKg)).toBe(
            words.formats.percent((100 * term.kg) / journey.sourcesKg, 1),
          );
        }
        // What the foot of the table says of the whole way, counted by the chain and not by the lines.
        const side = (name: 'in' | 'out') => terms.filter((term) => term.side === name);
        if (terms.length === 0) continue;
        expect(await result(side('in'), null)).toBe(words.formats.mass(journey.sourcesKg * share).text);
        expect(await result(side('out'), null)).toBe(words.formats.mass(journey.destinationsKg * share).text);
      }
    }
  });
});
