import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import type { Season } from '../../../../src/model/season.ts';
import { KG_PER_POUND } from '../../../../src/model/units.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import type { PictureSize } from '../../../../src/pages/season/pictures/picture.ts';
import { pressingInput, pressingPicture } from '../../../../src/pages/season/pictures/pressing-picture.ts';
import { groupsOf } from '../../../../src/scene/display-list.ts';
import { pressingScene } from '../../../../src/scene/stations/pressing/pressing-scene.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import {
  allText,
  checkedSizes,
  countFaults,
  decided,
  farmSeasons,
  markFaults,
  partFaults,
  smallWords,
  spokenInTurn,
  spokenWords,
  twice,
  wordFaults,
} from './scene-checks.ts';

const english = spokenWords('en');
const desk = checkedSizes[0];
/** What the page gives on a small laptop and on a tall screen, besides. */
const sizes: readonly PictureSize[] = [...checkedSizes];
const at = (progress: number) => ({ dayOfYear: 285, progress });
const frameOf = (season: Season, progress: number, size: PictureSize = desk, words = english) =>
  pressingPicture.layOut(season, words, size)(at(progress))!;
const seasonOf = (id: string): Season => farmSeasons.find(({ scenario }) => scenario.id === id)!;
const farm = (id: string) => farms.find((each) => each.id === id)!;
const counted = (season: Season, progress: number, name: string, size: PictureSize = desk) =>
  [...groupsOf(frameOf(season, progress, size).over)].find((group) => group.name === name)?.count;

describe.each(farmSeasons.map((season, turn) => [season.scenario.id, season, turn] as const))(
  '%s',
  (_, season, turn) => {
    test('at the end every account has as many pieces of each part as the ledger holds, within half a piece', () => {
      for (const size of sizes) expect(countFaults(frameOf(season, 1, size), season, 'pressing')).toEqual([]);
    });

    test('a tuft that is in the bale is one that was tramped: as many in the full box as in the bale', () => {
      const inBale = (progress: number) => frameOf(season, progress).moving.filter(({ band }) => band === 'out/lot');
      expect(inBale(0).length).toBe(0);
      expect(inBale(0.25).length).toBeLessThan(inBale(0.5).length);
      expect(inBale(0.5).length).toBe(inBale(1).length);
      const highest = (progress: number) => Math.min(...inBale(progress).map(({ path }) => path[0]![1]));
      expect(highest(0.5)).toBeLessThan(highest(1));
    });

    test('there are as many bales and ties as the model and the trade have', () => {
      const { bales } = season.pressing!;
      expect(counted(season, 0, 'bales')).toBe(0);
      expect(counted(season, 1, 'bales')).toBe(bales.length);
      expect(counted(season, 0.5, 'bales')).toBe(Math.floor(bales.length / 2));
      expect(counted(season, 1, 'weights')).toBe(bales.filter(({ remnant }) => !remnant).length);
      expect(counted(season, 1, 'ties')).toBe(6);
      expect(counted(season, 0.6, 'ties')).toBeUndefined();
    });

    test('the words read as in the ledger’s table, and the mean bale is the mean of the model’s whole bales', () => {
      const table = ledgerRows(ledgerOf(season, 'pressing', 'bale')!, 'us');
      const rows = new Map(pressingPicture.rows(season, english, at(1)).map(({ key, text }) => [key, text]));
      const text = allText(frameOf(season, 1));
      for (const [side, key, account] of [
        ['in', 'in', 'lot'],
        ['in', 'moistureAdded', 'moistureAdded'],
        ['out', 'lot', 'lot'],
      ] as const) {
        const all = table[side].find((row) => row.account === account)?.all ?? 0;
        if (all === 0) continue;
        const said = `${english.formats.number(all, table.decimals)}\u00a0lb`;
        expect(rows.get(key)).toBe(said);
        expect(text).toContain(said);
      }
      const whole = season.pressing!.bales.filter(({ remnant }) => !remnant);
      const mean = whole.reduce((sum, { netKg }) => sum + netKg, 0) / whole.length / KG_PER_POUND;
      const tare = whole[0]!.tareKg / KG_PER_POUND;
      expect(rows.get('net')).toBe(`${mean.toFixed(1)}\u00a0lb`);
      expect(rows.get('gross')).toBe(`${(mean + tare).toFixed(1)}\u00a0lb`);
      expect(text).toContain(rows.get('gross'));
    });

    test('the tramper says what it shows, in words the table has too', () => {
      const frame = frameOf(season, 0.5);
      expect(partFaults(frame)).toEqual([]);
      const rows = pressingPicture.rows(season, english, at(0.5)).map(({ label, text }) => `${label}: ${text}`);
      for (const { shows } of frame.parts) expect(rows).toContain(shows);
    });

    test.each(sizes)('at $width x $height everything lies in the picture and can be read', (size) => {
      for (const words of spokenInTurn(turn + sizes.indexOf(size))) {
        const frameAt = pressingPicture.layOut(season, words, size);
        for (const progress of [0, 0.4, 1]) {
          const frame = frameAt(at(progress))!;
          const faults = [...wordFaults(frame), ...smallWords(frame), ...markFaults(frame)];
          expect(faults, `${words.language} ${words.unitSystem}`).toEqual([]);
          expect(frame.moving.length).toBeLessThan(150);
        }
      }
    });

    test.each(sizes)('at $width x $height words twice as long stay inside', (size) => {
      const frame = pressingScene(twice(pressingInput(season, english, size)!))(1);
      expect(wordFaults(frame)).toEqual([]);
    });
  },
);

test('what stands still is one list until the bale is pressed, and one from then on; the same season gives the same picture', () => {
  const season = seasonOf('coastal-plain');
  const frameAt = pressingPicture.layOut(season, english, desk);
  expect(frameAt(at(0))!.still).toBe(frameAt(at(0.7))!.still);
  expect(frameAt(at(0.8))!.still).toBe(frameAt(at(1))!.still);
  expect(JSON.stringify(frameOf(season, 0.5))).toBe(JSON.stringify(frameAt(at(0.5))));
});

test('a bale of today has twelve digits and is thinner than one of the 1930s, which has a stencilled mark and jute', () => {
  const today = seasonOf('coastal-plain');
  const thirties = seasonOf('hand-picked-1930s');
  expect(allText(frameOf(today, 1))).toMatch(/\b0{5}0{5}61\b/);
  expect(allText(frameOf(thirties, 1))).toContain('SF 6');
  expect(JSON.stringify(frameOf(thirties, 1).over)).toContain('walnutPale');
  const tall = (season: Season) => {
    const { long, thick } = pressingInput(season, english, desk)!.baleShape;
    return thick / long;
  };
  // National Cotton Council bale description: 55 in. long, 33 in. thick.
  expect(tall(today)).toBeCloseTo(33 / 55, 12);
  expect(tall(thirties)).toBeGreaterThan(tall(today));
});

test('the remnant of the 1930s farm is drawn shorter and named', () => {
  const season = seasonOf('hand-picked-1930s');
  const remnant = season.pressing!.bales.at(-1)!;
  expect(remnant.remnant).toBe(true);
  const pounds = Math.round(remnant.netKg / KG_PER_POUND);
  expect(allText(frameOf(season, 1))).toContain(`${pounds}\u00a0lb`);
  expect(pressingPicture.see(season, english, at(1)).join(' ')).toContain(`remnant of ${pounds}\u00a0lb`);
});

test('a crop that never came to the gin has no picture and no words', () => {
  const season = decided(farm('high-plains-dryland'), 'planting', { plantingDayOfYear: 191 });
  expect(season.pressing).toBeNull();
  expect(pressingPicture.layOut(season, english, desk)(at(0))).toBeNull();
  expect(pressingPicture.rows(season, english, at(0))).toEqual([]);
  expect(pressingPicture.see(season, english, at(0))).toEqual([]);
});
