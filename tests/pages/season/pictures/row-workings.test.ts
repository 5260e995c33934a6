import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { stationIds } from '../../../../src/model/station.ts';
import { stationSpan } from '../../../../src/model/timeline.ts';
import type { TwinRow } from '../../../../src/pages/season/pictures/picture.ts';
import { saidValues } from '../../../../src/pages/season/pictures/said-values.ts';
import { seenAsked } from '../../../../src/pages/season/pictures/seen-asked.ts';
import { stationPictures } from '../../../../src/pages/season/pictures/station-pictures.ts';
import { splitAtValues } from '../../../../src/pages/season/split-at-values.ts';
import { workingText } from '../../../../src/pages/season/working-text.ts';
import { workOut } from '../../../../src/workings/work-out.ts';
import { everyWords, seasonOf, wordsInTurn } from './picture-cases.ts';

/** Numbers as they are written, without the point or comma that ends a sentence. The year of the hand-cranked gin is a name. */
const numbersIn = (text: string): string[] =>
  (text.match(/\d(?:[\d.,]*\d)?/g) ?? []).filter((number) => number !== '1793');

/** Values that are codes of the trade, the same in every language: tags and marks, grades, staples and thread numbers by name. */
const codes = ['bale', 'color', 'staple', 'grade', 'first', 'last', 'thread'];

/** Numbers of a value that stand in no line of its working. */
async function unworked(row: TwinRow, ...[season, station, words]: Place): Promise<string[]> {
  const asked = seenAsked(station, row);
  if (!asked) return numbersIn(row.text);
  const working = await workingText(season, asked, words);
  if (!working) return ['no working'];
  if (asked.topic === 'reading') return working.result === row.text ? [] : [`${row.text} is not ${working.result}`];
  // A line that hands over words already written proves nothing: only what is written from the model's values counts, and codes.
  const steps = workOut(season, asked);
  if (codes.includes(row.key)) return [];
  const written = working.lines.filter((_, at) => steps?.kind !== 'procedure' || steps.steps[at]!.value.as !== 'text');
  const known = new Set(written.flatMap(({ value }) => numbersIn(value)));
  return numbersIn(row.text).filter((number) => !known.has(number));
}
type Place =
  Parameters<typeof saidValues> extends [infer Season, infer Station, infer Words, ...unknown[]]
    ? [Season, Station, Words]
    : never;

describe.each(farms.map((farm, turn) => [farm.id, farm, turn] as const))('%s', (_, farm, turn) => {
  const season = seasonOf(farm);
  test.each(stationIds)(
    'every number of the picture of %s, in table and sentences, has its working',
    async (station) => {
      const { fromDay, toDay } = stationSpan(season, station);
      for (const words of wordsInTurn(turn + stationIds.indexOf(station))) {
        for (const progress of [0, 0.5, 1]) {
          const moment = { dayOfYear: Math.round(fromDay + (toDay - fromDay) * progress), progress };
          const rows = stationPictures[station].rows(season, words, moment);
          const place: Place = [season, station, words];
          for (const row of [...rows, ...saidValues(season, station, words, moment)])
            expect(await unworked(row, ...place), `${row.key}: ${row.text}`).toEqual([]);
          const values = [...rows, ...saidValues(season, station, words, moment)].filter((row) =>
            seenAsked(station, row),
          );
          for (const line of stationPictures[station].see(season, words, moment)) {
            const left = splitAtValues(
              line,
              values.map(({ text }) => text),
            ).filter(({ value }) => value === null);
            expect(numbersIn(left.map(({ text }) => text).join(' ')), line).toEqual([]);
          }
        }
      }
    },
  );
});

test('a number that no line of its working gives is seen', async () => {
  const season = seasonOf(farms[0]!);
  const words = everyWords[0]!;
  const rows = stationPictures.ginning.rows(season, words, { dayOfYear: 290, progress: 1 });
  const row = rows.find(({ key }) => key === 'lint')!;
  expect(await unworked({ ...row, text: '123.4 lb' }, season, 'ginning', words)).toEqual(['123.4']);
});
