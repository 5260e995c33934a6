import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { KG_PER_POUND } from '../../../../src/model/units.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { aboutLength, sewingPicture } from '../../../../src/pages/season/pictures/sewing-picture.ts';
import { massOf } from '../../../../src/scene/stations/flow/flow-input.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import { mutePart, outside, piecesByBand } from '../../../scene/stations/frame-checks.ts';
import { decided, everyWords, pictureSizes, seasonOf, wordsInTurn } from './picture-cases.ts';

const desk = pictureSizes[0]!;
const english = everyWords[0]!;
const at = (progress: number) => ({ dayOfYear: 300, progress });

describe.each(farms.map((farm, turn) => [farm.id, farm, turn] as const))('%s', (_, farm, turn) => {
  const season = seasonOf(farm);
  const ledger = ledgerOf(season, 'sewing', 'bale')!;

  test('pieces in the pockets are the ledger of the whole work, and those to come are the rest of what came in', () => {
    const frameAt = sewingPicture.layOut(season, english, desk);
    const done = piecesByBand(frameAt(at(1))!);
    for (const entry of ledger.out) {
      const part = entry.account === 'effluent' ? 'water' : 'lint';
      const { kg, standsForKg } = done.get(`out/${entry.account} ${part}`) ?? { kg: 0, standsForKg: KG_PER_POUND * 10 };
      expect(Math.abs(kg - massOf(entry))).toBeLessThanOrEqual(standsForKg / 2 + 1e-9);
    }
    expect([...done.keys()].filter((key) => key.startsWith('in/'))).toEqual([]);
    const begun = piecesByBand(frameAt(at(0))!);
    expect([...begun.keys()]).toEqual(['in/lot lint']);
    expect(Math.abs(begun.get('in/lot lint')!.kg - massOf(ledger.in[0]!))).toBeLessThanOrEqual(
      begun.get('in/lot lint')!.standsForKg / 2 + 1e-9,
    );
  });

  test('the numbers at the pockets are those of the ledger table', () => {
    const table = ledgerRows(ledger, 'us');
    const rows = sewingPicture.rows(season, english, at(1));
    const cloth = table.out.find(({ account }) => account === 'cloth')!.all;
    expect(rows.find(({ key }) => key === 'pieces')!.text).toBe(`${english.formats.number(cloth, 1)}\u00a0lb`);
  });

  test('the patch on the picture and in the table is the model’s', () => {
    const side = english.formats.length(season.sewing!.patchInchesPerBoll!, 2).text;
    expect(sewingPicture.rows(season, english, at(0))[0]).toMatchObject({ key: 'patch', text: side });
    expect(JSON.stringify(sewingPicture.layOut(season, english, desk)(at(0))!.still)).toContain(`${side} each way`);
  });

  test.each(pictureSizes)('every mark lies in $width x $height in both languages and units', (size) => {
    for (const words of wordsInTurn(turn + pictureSizes.indexOf(size))) {
      const frame = sewingPicture.layOut(season, words, size)(at(1))!;
      expect(outside(frame)).toEqual([]);
      expect(mutePart(frame)).toEqual([]);
      expect(frame.moving.length).toBeLessThan(150);
    }
  });
});

test('what stands still is one list for all moments of a layout, and the same season gives the same picture', () => {
  const season = seasonOf(farms[0]!);
  const frameAt = sewingPicture.layOut(season, english, desk);
  expect(frameAt(at(0))!.still).toBe(frameAt(at(1))!.still);
  expect(JSON.stringify(sewingPicture.layOut(season, english, desk)(at(0.5)))).toBe(JSON.stringify(frameAt(at(0.5))));
});

test('grey cloth that is washed leaves its starch as drops in a pocket of their own', () => {
  const season = seasonOf(decided('irrigated-desert', 'weaving', { finish: 'grey' }));
  const pieces = piecesByBand(sewingPicture.layOut(season, english, desk)(at(1))!);
  expect(pieces.get('out/effluent water')!.count).toBeGreaterThan(0);
});

test('a knit has no selvage', () => {
  const words = (scenario: Parameters<typeof seasonOf>[0]) =>
    JSON.stringify(sewingPicture.layOut(seasonOf(scenario), english, desk)(at(0))!.still);
  expect(words(farms[0]!)).toContain('"selvage"');
  expect(words(decided('coastal-plain', 'weaving', { structure: 'jersey' }))).not.toContain('"selvage"');
});

test('a season that ended before the table has no picture and no words', () => {
  const season = seasonOf(decided('coastal-plain', 'spinning', { countNe: 100 }));
  expect(sewingPicture.layOut(season, english, desk)(at(0))).toBeNull();
  expect(sewingPicture.see(season, english, at(0))).toEqual([]);
  expect(sewingPicture.rows(season, english, at(0))).toEqual([]);
});

test('lengths as a sewist says them: to the quarter inch, or the whole centimeter of 2.54 to the inch', () => {
  expect(aboutLength(4.034, english)).toEqual({ number: '4', unit: 'inches' });
  expect(aboutLength(3.385, english)).toEqual({ number: '3½', unit: 'inches' });
  expect(aboutLength(0.9, english)).toEqual({ number: '1', unit: 'inch' });
  expect(aboutLength(0.5, english)).toEqual({ number: '½', unit: 'inches' });
  expect(aboutLength(4, everyWords[2]!)).toEqual({ number: '10', unit: 'cm' });
});
