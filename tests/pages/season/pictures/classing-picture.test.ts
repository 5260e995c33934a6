import { describe, expect, test } from 'vitest';
import { uplandColour } from '../../../../src/model/classing/colour.ts';
import { farms } from '../../../../src/model/farms.ts';
import type { Season } from '../../../../src/model/season.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { classingInput, classingPicture } from '../../../../src/pages/season/pictures/classing-picture.ts';
import { flatMarks, groupsOf, type TextMark } from '../../../../src/scene/display-list.ts';
import { frameAtRest, type SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { classingScene } from '../../../../src/scene/stations/classing/classing-scene.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import {
  allText,
  checkedSizes,
  countFaults,
  crossedWords,
  decided,
  farmSeasons,
  markFaults,
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
  classingPicture.layOut(season, words, size)(at(progress))!;
const texts = (frame: SceneFrame) =>
  [...flatMarks(frameAtRest(frame))].filter((mark): mark is TextMark => mark.kind === 'text').map(({ text }) => text);
const [coastal, , dryland, , pima, thirties] = farmSeasons as [Season, Season, Season, Season, Season, Season];

describe.each(farmSeasons.map((season, turn) => [season.scenario.id, season, turn] as const))(
  '%s',
  (_, season, turn) => {
    const bale = season.classing!.classed[0]!;

    test('pieces are the ledger: all to come at first, all gone on at last', () => {
      const ledger = ledgerOf(season, 'classing', 'bale')!;
      const done = frameOf(season, 1);
      expect(countFaults(done, season, 'classing').filter((fault) => fault.startsWith('out/'))).toEqual([]);
      expect(done.moving.some(({ band }) => band.startsWith('in/'))).toBe(false);
      const begun = frameOf(season, 0);
      expect(countFaults(begun, season, 'classing').filter((fault) => fault.startsWith('in/'))).toEqual([]);
      expect(begun.moving.some(({ band }) => band.startsWith('out/'))).toBe(false);
      const table = ledgerRows(ledger, 'us');
      const onward = table.out.find(({ account }) => account === 'lot')!.all;
      const row = classingPicture.rows(season, english, at(1)).find(({ key }) => key === 'onward')!;
      expect(row.text).toBe(`${english.formats.number(onward, 1)}\u00a0lb`);
      expect(allText(done)).toContain(row.text);
    });

    test('the lines of the price add up to the price, and weight times price to the value', () => {
      const rows = classingPicture.rows(season, english, at(1));
      const number = (text: string) => Number(text.replace('\u2212', '-').replace(/[^\d.-]/g, ''));
      const lines = rows.filter(({ key }) => /^price\d/.test(key)).map(({ text }) => number(text));
      const total = number(rows.find(({ key }) => key === 'total')!.text);
      expect(lines.reduce((sum, cents) => sum + cents, 0)).toBeCloseTo(total, 6);
      expect(bale.paidLb * total).toBeCloseTo(100 * number(rows.find(({ key }) => key === 'value')!.text), 0);
      expect(texts(frameOf(season, 1))).toContain(english.formats.centsPerPound(bale.priceCentsPerLb).text);
    });

    test('nothing is read before it has fallen, nothing is priced before it is read', () => {
      const price = english.formats.centsPerPound(bale.priceCentsPerLb).text;
      const base = english.formats.centsPerPound(bale.baseCentsPerLb).text;
      const half = texts(frameOf(season, 0.43));
      expect(half).not.toContain(base);
      expect(texts(frameOf(season, 0.9))).toContain(base);
      const reading = bale.byEye ? bale.colorName : english.formats.count(bale.leaf);
      const bold = (frame: SceneFrame) =>
        [...flatMarks(frame.over)].some((mark) => mark.kind === 'text' && mark.text === reading && mark.ink === 'lint');
      expect(bold(frameOf(season, 0.05))).toBe(false);
      expect(bold(frameOf(season, 0.43))).toBe(true);
      expect(half).not.toContain(price);
    });

    test.each(sizesInTurn(everySize, turn))('at $width x $height words twice as long stay inside and apart', (size) => {
      const frameAt = classingScene(twice(classingInput(season, english, size)!));
      for (const progress of [0, 1]) expect(wordFaults(frameAt(progress))).toEqual([]);
    });

    test.each(sizesInTurn(everySize, turn))(
      'all words and marks lie in $width x $height, in both languages and units',
      (size) => {
        for (const words of spokenInTurn(Math.floor(turn / 2) + everySize.indexOf(size))) {
          const frameAt = classingPicture.layOut(season, words, size);
          for (const progress of [0, 0.4, 1]) {
            const frame = frameAt(at(progress))!;
            expect([...wordFaults(frame), ...smallWords(frame), ...crossedWords(frame), ...markFaults(frame)]).toEqual(
              [],
            );
            expect(frame.moving.length).toBeLessThan(150);
          }
        }
      },
    );
  },
);

test('every other bale of the season is a knot on the color chart', () => {
  for (const season of [coastal, dryland, pima]) {
    const knots = [...groupsOf(frameOf(season, 1).still)].find(({ name }) => name === 'bales/colour')!;
    expect(knots.count).toBe(season.classing!.classed.length - 1);
    const stitches = [...flatMarks([knots])].flatMap((mark) => (mark.kind === 'stitches' ? mark.stitches : []));
    expect(stitches.length).toBe(knots.count);
  }
});

test('the bale’s mark lies between the grade lines that the model grades by', () => {
  const { reading, color } = coastal.classing!.classed[0]!;
  expect(uplandColour(reading.reflectanceRd, reading.yellownessB)).toBe(color);
  const frame = frameOf(coastal, 1, checkedSizes[3]);
  const code = [...flatMarks(frame.still)].find((mark) => mark.kind === 'text' && mark.text === color) as TextMark;
  const mark = [...flatMarks(frame.over)].filter((each) => each.kind === 'patch' && each.ink === 'madder');
  const near = mark.some(
    (each) => each.kind === 'patch' && each.points.length === 4 && Math.abs(each.points[0]![1] - code.y) < 30,
  );
  expect(near).toBe(true);
});

test('the old farm has a hand and an eye, a mark and no tag, and no instrument', () => {
  const said = `${texts(frameOf(thirties, 1)).join(' ')} ${classingPicture.see(thirties, english, at(1)).join(' ')}`;
  expect(said).toContain('SF 1');
  expect(said).not.toMatch(/micronaire|gin code|41-4/i);
  expect(classingPicture.rows(thirties, english, at(1)).map(({ key }) => key)).not.toContain('micronaire');
});

test('a tag says that its gin is invented', () => {
  expect(allText(frameOf(coastal, 0))).toContain('gin code 00000, invented');
});

test('without averaging over the module the own test is the record, and is not told twice', () => {
  const farm = farms[0]!;
  const told = (season: Season) => classingPicture.see(season, english, at(1)).join(' ');
  expect(told(coastal)).toContain('mean of its module');
  expect(told(decided(farm, 'classing', { moduleAveraging: false }))).not.toContain('mean of its module');
});

test('what stands still is one list for all moments, and the same season gives the same picture', () => {
  const frames = classingPicture.layOut(coastal, english, desk);
  expect(frames(at(0.2))!.still).toBe(frames(at(0.9))!.still);
  expect(JSON.stringify(frameOf(coastal, 0.5))).toBe(JSON.stringify(frames(at(0.5))));
});
