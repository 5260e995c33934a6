import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { inchFraction, spinningPicture } from '../../../../src/pages/season/pictures/spinning-picture.ts';
import { groupsOf } from '../../../../src/scene/display-list.ts';
import { shownKg, shownParts } from '../../../../src/scene/stations/flow/flow-input.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import { mutePart, outside, piecesByBand } from '../../../scene/stations/frame-checks.ts';
import { decided, everyWords, pictureSizes, seasonOf, wordsInTurn } from './picture-cases.ts';

const desk = pictureSizes[0]!;
const english = everyWords[0]!;
const at = (progress: number) => ({ dayOfYear: 300, progress });
const fibresDrawn = (frame: NonNullable<ReturnType<ReturnType<typeof spinningPicture.layOut>>>) =>
  [...groupsOf(frame.still), ...frame.parts.flatMap(({ marks }) => [...groupsOf(marks)])].find(
    ({ name }) => name === 'fibres',
  )!;
const strokes = (frame: Parameters<typeof fibresDrawn>[0]) =>
  fibresDrawn(frame).marks.reduce((sum, mark) => sum + (mark.kind === 'stitches' ? mark.stitches.length : 0), 0);

describe.each(farms.map((farm, turn) => [farm.id, farm, turn] as const))('%s', (_, farm, turn) => {
  const season = seasonOf(farm);
  const ledger = ledgerOf(season, 'spinning', 'bale')!;
  const frameAt = spinningPicture.layOut(season, english, desk);

  test('pieces agree with the ledger, account by account and part by part', () => {
    const done = piecesByBand(frameAt(at(1))!);
    const begun = piecesByBand(frameAt(at(0))!);
    const stands = new Map([...done, ...begun].map(([key, { standsForKg }]) => [key.split(' ')[1]!, standsForKg]));
    const agrees = (found: typeof done, side: 'in' | 'out', entries: typeof ledger.in | typeof ledger.out) => {
      for (const entry of entries)
        for (const part of shownParts) {
          const kg = found.get(`${side}/${entry.account} ${part}`)?.kg ?? 0;
          // A part that no piece shows anywhere is lighter than half a bit of it.
          const half = (stands.get(part) ?? Number.POSITIVE_INFINITY) / 2;
          expect(Math.abs(kg - shownKg(entry, part)), `${entry.account} ${part}`).toBeLessThanOrEqual(half + 1e-9);
        }
    };
    agrees(done, 'out', ledger.out);
    agrees(begun, 'in', ledger.in);
    expect([...done.keys()].filter((key) => key.startsWith('in/'))).toEqual([]);
    expect([...begun.keys()].filter((key) => key.startsWith('out/'))).toEqual([]);
  });

  test('as many fibres are drawn as the section of the yarn holds', () => {
    const frame = frameAt(at(0))!;
    expect(fibresDrawn(frame).count).toBe(Math.round(season.spinning!.yarn!.fibresInSection));
    // A fibre on the rotor's wall is one stroke; in the fan it is a tail and six short pieces.
    expect(strokes(frame)).toBe(fibresDrawn(frame).count! * (farm.decisions.spinning.system === 'rotor' ? 1 : 7));
  });

  test('the numbers at the pockets are those of the ledger table', () => {
    const table = ledgerRows(ledger, 'us');
    const yarn = table.out.find(({ account }) => account === 'lot')!.all;
    const text = `${english.formats.number(yarn, 1)}\u00a0lb`;
    expect(spinningPicture.rows(season, english, at(1)).find(({ key }) => key === 'lot')!.text).toBe(text);
    expect(JSON.stringify(frameAt(at(1))!.over)).toContain(`Yarn ${text}`);
  });

  test('what turns says so on the picture and in the words', () => {
    const said = spinningPicture.see(season, english, at(0)).join(' ');
    const { parts } = frameAt(at(0))!;
    expect(parts.length).toBeGreaterThan(3);
    for (const { shows } of parts) expect(said).toContain(shows);
  });

  test.each(pictureSizes)('every mark lies in $width x $height in both languages and units', (size) => {
    for (const words of wordsInTurn(turn + pictureSizes.indexOf(size)))
      for (const progress of [0, 1]) {
        const frame = spinningPicture.layOut(season, words, size)(at(progress))!;
        expect(outside(frame)).toEqual([]);
        expect(mutePart(frame)).toEqual([]);
        expect(frame.moving.length).toBeLessThan(150);
      }
  });
});

test('the comber is there where the yarn is combed, and nowhere else', () => {
  const shows = (id: string) =>
    spinningPicture.see(seasonOf(farms.find((farm) => farm.id === id)!), english, at(0)).join();
  expect(shows('river-bottom')).toContain('Comber');
  expect(shows('coastal-plain')).not.toContain('Comber');
  expect(shows('high-plains-dryland')).toContain('Rotor');
});

test('a yarn with too few fibres breaks: no yarn, no bobbin filling, and the bale stays', () => {
  const season = seasonOf(decided('coastal-plain', 'spinning', { countNe: 60 }));
  const frameAt = spinningPicture.layOut(season, english, desk);
  const names = [...groupsOf(frameAt(at(1))!.still)].map(({ name }) => name);
  expect(names).toContain('fibres');
  expect(names).not.toContain('yarn');
  expect([...piecesByBand(frameAt(at(1))!).keys()].filter((key) => key.startsWith('out/'))).toEqual([]);
  expect(JSON.stringify(frameAt(at(1))!.over)).toBe(JSON.stringify(frameAt(at(0))!.over));
  expect(fibresDrawn(frameAt(at(1))!).count).toBeLessThan(75);
  expect(spinningPicture.see(season, english, at(1)).join(' ')).toContain('needs 75 fibers');
  for (const size of pictureSizes)
    expect(outside(spinningPicture.layOut(season, everyWords[1]!, size)(at(1))!)).toEqual([]);
});

test('a rotor asked for too fine a count says how far rotor spinning goes', () => {
  const season = seasonOf(decided('irrigated-desert', 'spinning', { system: 'rotor', countNe: 60 }));
  expect(spinningPicture.see(season, english, at(0)).join(' ')).toMatch(/It breaks/);
  expect(outside(spinningPicture.layOut(season, english, desk)(at(0))!)).toEqual([]);
});

test('a very coarse yarn draws some fibres to a line, and says how many', () => {
  const season = seasonOf(decided('coastal-plain', 'spinning', { countNe: 4 }));
  const frame = spinningPicture.layOut(season, english, desk)(at(0))!;
  expect(season.spinning!.yarn!.fibresInSection).toBeGreaterThan(700);
  expect(strokes(frame)).toBeLessThanOrEqual(180 * 7);
  expect(JSON.stringify(frame.still)).toMatch(/Each line is \d fibers/);
});

test('parts of an inch in lowest terms', () => {
  expect([1, 2, 4, 12, 32, 40].map((parts) => inchFraction(parts, 32))).toEqual([
    '1/32',
    '1/16',
    '1/8',
    '3/8',
    '1',
    '5/4',
  ]);
});

test('what stands still is one list for all moments, and the same season gives the same picture', () => {
  const season = seasonOf(farms[0]!);
  const frameAt = spinningPicture.layOut(season, english, desk);
  expect(frameAt(at(0))!.still).toBe(frameAt(at(1))!.still);
  expect(JSON.stringify(spinningPicture.layOut(season, english, desk)(at(0.5)))).toBe(JSON.stringify(frameAt(at(0.5))));
});
