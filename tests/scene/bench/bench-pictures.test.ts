import { describe, expect, test } from 'vitest';
import { benchFacts } from '../../../src/model/mill/bench-limit-facts.ts';
import { clothPiecePicture, clothTimes } from '../../../src/scene/bench/cloth-piece.ts';
import { hangingClothPicture, overhangMm } from '../../../src/scene/bench/hanging-cloth.ts';
import { lengthArrayPicture } from '../../../src/scene/bench/length-array.ts';
import { usualPxPerMm } from '../../../src/scene/bench/true-scale.ts';
import { pieceMasses, unevenYarnPicture } from '../../../src/scene/bench/uneven-yarn.ts';
import { sectionTimesOf, yarnSectionPicture } from '../../../src/scene/bench/yarn-section.ts';
import { type DisplayList, groupsOf, type Stitch } from '../../../src/scene/display-list.ts';

const scale = { pxPerMm: 4, isMetric: true, unit: 'cm' };
const named = (marks: DisplayList, name: string) => [...groupsOf(marks)].find((group) => group.name === name)!;
const stitchesOf = (marks: DisplayList): Stitch[] =>
  marks.flatMap((mark) => (mark.kind === 'stitches' ? [...mark.stitches] : []));

test('a CSS inch is 96 px (CSS Values and Units), so a millimeter is 3.78', () => {
  expect(usualPxPerMm).toBeCloseTo(3.7795, 4);
});

test('every fibre of the array stands at its true length', () => {
  const lengths = [40, 30, 20, 10];
  const { marks } = lengthArrayPicture(lengths, 400, scale);
  const drawn = stitchesOf(named(marks, 'fibres').marks).map(([, y0, , y1]) => (y0 - y1) / scale.pxPerMm);
  expect(drawn).toEqual(lengths);
  expect(named(marks, 'fibres').count).toBe(4);
});

describe('a yarn’s section', () => {
  const cut = { fibresInSingle: 119.4, singles: 2, fibreMtex: 170, singleDiameterMm: 0.17 };
  const picture = yarnSectionPicture(cut, 400, scale);
  test('holds just the computed number of fibres, in each single', () => {
    expect(named(picture.marks, 'fibres').marks).toHaveLength(2 * 119);
  });
  test('is enlarged as much as is said and stays inside its picture', () => {
    const times = sectionTimesOf(cut, scale.pxPerMm);
    for (const mark of named(picture.marks, 'fibres').marks) {
      if (mark.kind !== 'patch') continue;
      for (const [x, y] of mark.points) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(picture.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(picture.height);
      }
    }
    expect(times).toBeGreaterThan(50);
  });
});

describe('a meter of yarn', () => {
  const masses = pieceMasses(119, 22, 15.1);
  test('is 125 pieces of 8 mm with the computed variation', () => {
    expect(masses.length * benchFacts.evennessCutMm.value).toBe(1000);
    const mean = masses.reduce((sum, mass) => sum + mass, 0) / masses.length;
    const spread = Math.sqrt(masses.reduce((sum, mass) => sum + (mass - mean) ** 2, 0) / masses.length);
    expect(mean).toBeCloseTo(1, 9);
    expect((100 * spread) / mean).toBeCloseTo(15.1, 9);
  });
  test('varies less over longer pieces', () => {
    const pairs = masses.flatMap((mass, at) =>
      (at % 5 === 4 ? [masses.slice(at - 4, at + 1).reduce((s, m) => s + m, 0) / 5] : [mass]).slice(
        0,
        at % 5 === 4 ? 1 : 0,
      ),
    );
    const spread = Math.sqrt(pairs.reduce((sum, mass) => sum + (mass - 1) ** 2, 0) / pairs.length);
    expect(100 * spread).toBeLessThan(15.1);
  });
  test('is the same on every drawing', () => {
    expect(pieceMasses(119, 22, 15.1)).toEqual(masses);
    expect(named(unevenYarnPicture(masses, 0.17, 500, scale).marks, 'yarn').marks).toHaveLength(10);
  });
});

test('a cloth is drawn with its threads at their spacing, enlarged as much as is said', () => {
  const cloth = {
    structure: 'plain',
    endsPerInch: 68,
    picksPerInch: 60,
    warpMm: 0.17,
    weftMm: 0.17,
    inks: ['lint', 'lint'],
  } as const;
  const { marks } = clothPiecePicture(cloth, 500, scale);
  const [first, second] = stitchesOf(named(named(marks, 'magnified').marks, 'ends').marks);
  expect((second![0] - first![0]) / scale.pxPerMm / clothTimes(cloth, scale.pxPerMm)).toBeCloseTo(25.4 / 68, 9);
});

test('a hanging strip is as long as is said', () => {
  const strip = stitchesOf(named(hangingClothPicture(20, 0.3, 500, scale).marks, 'strip').marks).slice(1);
  const length = strip.reduce((sum, [x0, y0, x1, y1]) => sum + Math.hypot(x1 - x0, y1 - y0), 0);
  expect(length / scale.pxPerMm).toBeCloseTo(overhangMm, 3);
});
