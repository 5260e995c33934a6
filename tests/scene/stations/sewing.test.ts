import { expect, test } from 'vitest';
import { partMasses } from '../../../src/model/lot.ts';
import { boundsOf } from '../../../src/scene/cloth/point.ts';
import { type DisplayList, flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import type { SewingScene } from '../../../src/scene/stations/sewing/sewing-input.ts';
import { sewingScene } from '../../../src/scene/stations/sewing/sewing-scene.ts';
import { doubled, outside } from './frame-checks.ts';

const sizes = [
  [808, 430],
  [600, 420],
  [366, 384],
  [1016, 960],
] as const;
const masses = (lint: number) => ({ dryKg: partMasses({ lint }), waterKg: 0 });

/** Invented masses; the word maker stands for a language. */
const sample = (width: number, height: number, say: (text: string) => string = (text) => text): SewingScene => ({
  size: { width, height },
  mat: true,
  patchInches: 4,
  seamInches: 0.25,
  locks: 5,
  cloth: { ink: 'lint', printed: false },
  inflow: masses(180),
  outflow: [
    { account: 'cloth', masses: masses(160) },
    { account: 'offcuts', masses: masses(20) },
  ],
  unitKg: 1,
  grid: { inches: 1, numberEach: 4 },
  labels: {
    before: say('One boll makes a patch about'),
    measure: '3¾',
    after: say('inches square.'),
    side: say('4.00 in each way'),
    sewn: say('3.50 in once sewn in'),
    grain: say('lengthwise grain'),
    selvage: say('selvage'),
    needle: say('Needle 75/11 to 90/14'),
    thread: say('Cotton thread 50 to 80'),
    inflow: say('Cloth 180.0 kg'),
    out: (account) => say(`${account} 20.0 kg`),
    caption: () => say('A snip of cloth: 5 kg. Squares on the mat: 1 in.'),
  },
});

test.each(sizes)('words twice as long stay inside %i x %i', (width, height) => {
  expect(outside(sewingScene(sample(width, height, doubled))(1))).toEqual([]);
});

const groupBox = (list: DisplayList, name: string) => {
  const found = [...groupsOf(list)].find((each) => each.name === name)!;
  return boundsOf([...flatMarks(found.marks)].flatMap((mark) => (mark.kind === 'patch' ? mark.points : [])));
};

test('the patch is square, and its side is as many squares of the mat as it is inches', () => {
  const { still } = sewingScene(sample(808, 430))(0);
  const box = groupBox(still, 'patch');
  expect(box.width).toBeCloseTo(box.height, 6);
  // The finer lines of the mat are the first flat stitches of 0.7 px: neighbouring upright ones are one inch apart.
  const lines = [...flatMarks(still)].find((mark) => mark.kind === 'stitches' && mark.width === 0.7);
  const upright = lines?.kind === 'stitches' ? lines.stitches.filter(([x0, , x1]) => x0 === x1).map(([x]) => x) : [];
  expect(box.width / (upright[1]! - upright[0]!)).toBeCloseTo(4, 6);
});

test('bands are as wide as their mass on one scale', () => {
  const { still } = sewingScene(sample(808, 430))(0);
  const tall = (name: string) => groupBox(still, name).height;
  expect(tall('band/out/cloth') / tall('band/in/lot')).toBeCloseTo(160 / 180, 6);
  expect(tall('band/out/offcuts') / tall('band/in/lot')).toBeCloseTo(20 / 180, 6);
});

test('a crop of which no boll was counted shows the cloth without a patch', () => {
  const frame = sewingScene({ ...sample(808, 430), patchInches: null })(1);
  expect([...groupsOf(frame.still)].map(({ name }) => name)).not.toContain('patch');
  expect(frame.moving.length).toBeGreaterThan(0);
});
