import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import type { Season } from '../../../../src/model/season.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { weavingInput, weavingPicture } from '../../../../src/pages/season/pictures/weaving-picture.ts';
import { flatMarks, groupsOf, type StitchesMark } from '../../../../src/scene/display-list.ts';
import { frameAtRest, type SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { PX_PER_INCH, warpOver } from '../../../../src/scene/stations/weaving/swatch.ts';
import { weavingScene } from '../../../../src/scene/stations/weaving/weaving-scene.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import {
  allText,
  checkedSizes,
  countFaults,
  crossedWords,
  decided,
  farmSeasons,
  markFaults,
  partFaults,
  sizesInTurn,
  smallWords,
  spokenInTurn,
  spokenWords,
  twice,
  wordFaults,
} from './scene-checks.ts';

const desk = checkedSizes[0];
/** Desk, projector, phone and tall screen, and two that the page gives a picture between its head and its foot. */
const everySize = [...checkedSizes, { width: 600, height: 420 }] as const;
const english = spokenWords('en');
const at = (progress: number) => ({ dayOfYear: 300, progress });
const frameOf = (season: Season, progress: number, size: (typeof everySize)[number] = desk, words = english) =>
  weavingPicture.layOut(season, words, size)(at(progress))!;
const [coastal] = farmSeasons as [Season];
const farm = farms[0]!;
const jersey = decided(farm, 'weaving', { structure: 'jersey' });
const grey = decided(farm, 'weaving', { finish: 'grey' });
const crowded = decided(farm, 'weaving', { endsPerInch: 220 });
const cases = [
  ...farmSeasons.map((season) => [season.scenario.id, season] as const),
  ['jersey', jersey] as const,
  ['grey', grey] as const,
];

const groupOf = (frame: SceneFrame, name: string) => [...groupsOf(frame.over)].find((group) => group.name === name)!;
const stitchesOf = (frame: SceneFrame, name: string) =>
  [...flatMarks([groupOf(frame, name)])].filter((mark): mark is StitchesMark => mark.kind === 'stitches').at(-1)!;

describe.each(cases.map(([id, season], turn) => [id, season, turn] as const))('%s', (_, season, turn) => {
  test('pieces are the ledger: all to come at first, all in their pockets at last', () => {
    const done = frameOf(season, 1);
    const onlySide = (frame: SceneFrame, side: string) =>
      countFaults(frame, season, 'weaving').filter((fault) => fault.startsWith(`${side}/`));
    expect(onlySide(done, 'out')).toEqual([]);
    expect(done.moving.some(({ band }) => band.startsWith('in/'))).toBe(false);
    const begun = frameOf(season, 0);
    expect(onlySide(begun, 'in')).toEqual([]);
    expect(begun.moving.some(({ band }) => band.startsWith('out/'))).toBe(false);
    const table = ledgerRows(ledgerOf(season, 'weaving', 'bale')!, 'us');
    const cloth = table.out.find(({ account }) => account === 'lot')!.all;
    const row = weavingPicture.rows(season, english, at(1)).find(({ key }) => key === 'out/lot')!;
    expect(row.text).toBe(`${english.formats.number(cloth, 1)}\u00a0lb`);
    expect(allText(done)).toContain(row.text);
  });

  test.each(sizesInTurn(everySize, turn))('at $width x $height words twice as long stay inside and apart', (size) => {
    const frameAt = weavingScene(twice(weavingInput(season, english, size)!));
    for (const progress of [0, 1]) expect(wordFaults(frameAt(progress))).toEqual([]);
  });

  test.each(sizesInTurn(everySize, turn))(
    'all words, marks and parts lie in $width x $height, in both languages and units',
    (size) => {
      for (const words of spokenInTurn(Math.floor(turn / 2) + everySize.indexOf(size))) {
        const frameAt = weavingPicture.layOut(season, words, size);
        for (const progress of [0, 0.5, 1]) {
          const frame = frameAt(at(progress))!;
          expect([
            ...wordFaults(frame),
            ...smallWords(frame),
            ...crossedWords(frame),
            ...markFaults(frame),
            ...partFaults(frame),
          ]).toEqual([]);
          expect(frame.moving.length).toBeLessThan(150);
          expect(frame.parts.length).toBeLessThanOrEqual(12);
        }
      }
    },
  );

  test('what moves says so in the words beside the picture', () => {
    const said = weavingPicture.see(season, english, at(0.5)).join(' ');
    for (const { shows } of frameOf(season, 0.5).parts) expect(said).toContain(shows);
  });
});

test('threads stand as far apart as the loom sets them, and as thick as the yarn is, at the magnification told', () => {
  for (const size of everySize) {
    const frame = frameOf(coastal, 0.7, size);
    const ends = stitchesOf(frame, 'ends');
    const picks = stitchesOf(frame, 'picks');
    const magnified = Number(/(\d+) times life size/.exec(allText(frame))![1]);
    const pxPerInch = magnified * PX_PER_INCH;
    const { endsPerInch, picksPerInch } = coastal.scenario.decisions.weaving;
    expect(pxPerInch / (ends.stitches[1]![1] - ends.stitches[0]![1])).toBeCloseTo(endsPerInch, 6);
    expect(pxPerInch / (picks.stitches[1]![0] - picks.stitches[0]![0])).toBeCloseTo(picksPerInch, 6);
    // Peirce: d = 1 / (28 sqrt(Ne)) inches; Ne 30.
    expect(ends.width / pxPerInch).toBeCloseTo(1 / (28 * Math.sqrt(30)), 3);
  }
});

test('the finish draws the cloth in as far as the model says, and the ruler stays', () => {
  const pitches = (progress: number) => {
    const picks = stitchesOf(frameOf(coastal, progress), 'picks').stitches;
    const ends = stitchesOf(frameOf(coastal, progress), 'ends').stitches;
    return { along: picks[1]![0] - picks[0]![0], across: ends[1]![1] - ends[0]![1], picks: picks.length };
  };
  const { length, width } = coastal.weaving!.cloth!.finishShrinkPercent;
  const [before, after] = [pitches(0.72), pitches(1)];
  expect(after.picks).toBe(before.picks);
  expect(100 * (1 - after.along / before.along)).toBeCloseTo(length, 6);
  expect(100 * (1 - after.across / before.across)).toBeCloseTo(width, 6);
  expect(pitches(0.36).picks).toBe(Math.round(before.picks / 2));
});

test('weaves interlace as their names say: one over one, three over one with a line a step on, four over one with no two knots side by side', () => {
  const row = (weave: Parameters<typeof warpOver>[0], pick: number, repeat: number) =>
    Array.from({ length: repeat }, (_, end) => (warpOver(weave, end, pick) ? 'x' : '.')).join('');
  expect([row('plain', 0, 4), row('plain', 1, 4)]).toEqual(['x.x.', '.x.x']);
  expect([0, 1, 2, 3].map((pick) => row('twill', pick, 4))).toEqual(['.xxx', 'xxx.', 'xx.x', 'x.xx']);
  const sateen = [0, 1, 2, 3, 4].map((pick) => row('sateen', pick, 5).indexOf('.'));
  expect([...sateen].sort()).toEqual([0, 1, 2, 3, 4]);
  for (let i = 0; i < 5; i++) expect([1, 4]).not.toContain((sateen[(i + 1) % 5]! - sateen[i]! + 5) % 5);
});

test('a knit has needles and loops and no loom; its loops are courses by wales', () => {
  const frame = frameOf(jersey, 1);
  const said = allText(frame);
  expect(said).toMatch(/Needles.*Cones|Cones.*Needles/);
  expect(said).not.toMatch(/Warp beam|Reed|Size on the warp/);
  const { description, finishShrinkPercent } = jersey.weaving!.cloth!;
  if (description.kind !== 'knit') throw new Error('not a knit');
  const row = weavingPicture.rows(jersey, english, at(1)).find(({ key }) => key === 'onMachine')!;
  const before = description.coursesPerInch * (1 - finishShrinkPercent.length / 100);
  expect(row.text).toContain(english.formats.number(before, 1));
  expect(groupOf(frame, 'loops').count).toBeGreaterThan(20);
});

test('cloth that stays grey has no bath, no line round it and keeps its size', () => {
  const names = [...flatMarks(frameAtRest(frameOf(grey, 1)))].flatMap((mark) =>
    mark.kind === 'text' ? [mark.text] : [],
  );
  expect(names).not.toContain('Printing');
  expect(stitchesOf(frameOf(grey, 1), 'ends').ink).toBe('weldPale');
  expect(stitchesOf(frameOf(coastal, 1), 'ends').ink).not.toBe('weldPale');
});

test('threads too close to weave give no cloth: the yarn comes back whole, and the picture says why', () => {
  const frame = frameOf(crowded, 1);
  expect(allText(frame)).toContain('do not fit');
  expect(frame.parts).toEqual([]);
  expect(countFaults(frame, crowded, 'weaving').filter((fault) => fault.startsWith('out/'))).toEqual([]);
  for (const size of everySize)
    expect([...wordFaults(frameOf(crowded, 1, size)), ...smallWords(frameOf(crowded, 1, size))]).toEqual([]);
});

test('a season that ended before the loom has no picture and no words', () => {
  const season = decided(farm, 'spinning', { countNe: 100 });
  expect(weavingPicture.layOut(season, english, desk)(at(0))).toBeNull();
  expect(weavingPicture.see(season, english, at(0))).toEqual([]);
  expect(weavingPicture.rows(season, english, at(0))).toEqual([]);
});

test('what stands still is one list for all moments, and the same season gives the same picture', () => {
  const frames = weavingPicture.layOut(coastal, english, desk);
  expect(frames(at(0.2))!.still).toBe(frames(at(0.9))!.still);
  expect(JSON.stringify(frameOf(coastal, 0.5))).toBe(JSON.stringify(frames(at(0.5))));
});
