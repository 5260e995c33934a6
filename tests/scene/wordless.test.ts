import { expect, test } from 'vitest';
import { en } from '../../src/language/messages/en.ts';
import { makeWords } from '../../src/language/words.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { stationIds } from '../../src/model/station.ts';
import { stationPictures } from '../../src/pages/season/pictures/station-pictures.ts';
import { flatMarks } from '../../src/scene/display-list.ts';
import { wordlessFrame } from '../../src/scene/wordless.ts';

const season = runSeason(farms[0]!, 1, null);
const frames = stationIds.map((station) => {
  const at = stationPictures[station].layOut(season, makeWords('en', 'us', en), { width: 560, height: 800 });
  return [station, at({ dayOfYear: 200, progress: 0.5 })!] as const;
});

test.each(frames)('%s: no word is left, and what moves still moves', (_, frame) => {
  const bare = wordlessFrame(frame);
  expect([...flatMarks([...frame.still, ...frame.over])].some(({ kind }) => kind === 'text')).toBe(true);
  expect([...flatMarks([...bare.still, ...bare.over])].filter(({ kind }) => kind === 'text')).toEqual([]);
  expect(bare.moving).toBe(frame.moving);
  expect(bare.parts).toBe(frame.parts);
  // What stands still is the same object again, so that it is not painted anew.
  expect(wordlessFrame(frame).still).toBe(bare.still);
});

test('a pad goes with its words, a thing of another cloth stays', () => {
  const square = (x: number, size: number) =>
    [
      [x, 0],
      [x + size, 0],
      [x + size, size],
      [x, size],
    ] as const;
  const text = { kind: 'text', text: 'lint', size: 12, ink: 'ink', anchor: 'start' } as const;
  const cut = (ink: 'muslin' | 'walnut', x: number, size = 20) =>
    ({ kind: 'patch', points: square(x, size), ink, shadow: 0 }) as const;
  const marks = [
    cut('muslin', 0, 100),
    cut('muslin', 10),
    { ...text, x: 15, y: 15 },
    cut('walnut', 40),
    { ...text, x: 45, y: 15 },
    cut('muslin', 70),
  ];
  const frame = { width: 100, height: 100, still: marks, over: [], parts: [], moving: [], lapSeconds: 1 };
  expect(wordlessFrame(frame).still).toEqual([marks[0], marks[3], marks[5]]);
});
