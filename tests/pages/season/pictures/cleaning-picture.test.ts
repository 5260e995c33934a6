import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import type { Season } from '../../../../src/model/season.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { cleaningInput, cleaningPicture } from '../../../../src/pages/season/pictures/cleaning-picture.ts';
import type { PictureSize } from '../../../../src/pages/season/pictures/picture.ts';
import { cleaningScene } from '../../../../src/scene/stations/cleaning/cleaning-scene.ts';
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
const at = (progress: number) => ({ dayOfYear: 280, progress });
const frameOf = (season: Season, progress: number, size: PictureSize = desk, words = english) =>
  cleaningPicture.layOut(season, words, size)(at(progress))!;
const seasonOf = (id: string): Season => farmSeasons.find(({ scenario }) => scenario.id === id)!;
const farm = (id: string) => farms.find((each) => each.id === id)!;
/** The longest line a gin of this model has, and the shortest. */
const longest = decided(farm('high-plains-dryland'), 'cleaning', { dryers: 2, cylinderCleaners: 3, stickMachines: 2 });
const shortest = decided(farm('river-bottom'), 'cleaning', { dryers: 0, cylinderCleaners: 0, stickMachines: 0 });
const every = [...farmSeasons, longest, shortest];

describe.each(every.map((season, i) => [`${season.scenario.id} ${i}`, season, i] as const))('%s', (_, season, turn) => {
  test('at the end every account has as many pieces of each part as the ledger holds, within half a piece', () => {
    for (const size of sizes) expect(countFaults(frameOf(season, 1, size), season, 'cleaning')).toEqual([]);
  });

  test('bits lie under the machine that took them, and what lies there grows with the work', () => {
    const trash = (progress: number) => frameOf(season, progress).moving.filter(({ band }) => band === 'out/ginTrash');
    expect(trash(0)).toEqual([]);
    expect(trash(0.5).length).toBeLessThan(trash(1).length);
    const takers = new Set(trash(1).map(({ name }) => name.split('/')[0]));
    const machines = season.cleaning!.machines.map(({ machine }) => machine);
    for (const taker of takers) expect(machines).toContain(taker);
    for (const machine of machines) if (machine.startsWith('stickMachine')) expect(takers).toContain(machine);
  });

  test('the amounts of the machines add to the ledger’s trash, and the rest reads as in its table', () => {
    const table = ledgerRows(ledgerOf(season, 'cleaning', 'bale')!, 'us');
    const rows = new Map(cleaningPicture.rows(season, english, at(1)).map(({ key, text }) => [key, text]));
    const number = (key: string) => Number(rows.get(key)!.replace(/[^\d.]/g, ''));
    const sum = season
      .cleaning!.machines.filter(({ removed }) => removed.some(({ account }) => account === 'ginTrash'))
      .reduce((total, { machine }) => total + number(machine), 0);
    expect(sum).toBeCloseTo(table.out.find(({ account }) => account === 'ginTrash')!.all, 9);
    const text = allText(frameOf(season, 1));
    for (const { account, all } of table.out) {
      if (all === 0) continue;
      const said = `${english.formats.number(all, table.decimals)}\u00a0lb`;
      expect(rows.get(account)).toBe(said);
      expect(text).toContain(said);
    }
    expect(text).toContain(rows.get('in'));
  });

  test('what a machine leaves in the cotton is what its band shows: the model’s own masses', () => {
    const input = cleaningInput(season, english, desk)!;
    const kg = ({ dryKg, waterKg }: { dryKg: Record<string, number>; waterKg: number }) =>
      Object.values(dryKg).reduce((sum, each) => sum + each, waterKg);
    let left = kg(input.seedCotton.masses);
    for (const { took, driedOff, wentOn } of input.line) {
      left -= (took ? kg(took.masses) : 0) + (driedOff ? kg(driedOff) : 0);
      expect(kg(wentOn)).toBeCloseTo(left, 6);
    }
  });

  test('every turning part says what it shows, in words the table has too', () => {
    const frame = frameOf(season, 0.5);
    expect(partFaults(frame)).toEqual([]);
    const rows = cleaningPicture.rows(season, english, at(0.5)).map(({ label, text }) => `${label}: ${text}`);
    for (const { shows } of frame.parts) expect(rows).toContain(shows);
  });

  test.each(sizes)('at $width x $height everything lies in the picture and can be read', (size) => {
    for (const words of spokenInTurn(turn + sizes.indexOf(size))) {
      const frameAt = cleaningPicture.layOut(season, words, size);
      for (const progress of [0, 1]) {
        const frame = frameAt(at(progress))!;
        const faults = [...wordFaults(frame), ...smallWords(frame), ...markFaults(frame)];
        expect(faults, `${words.language} ${words.unitSystem}`).toEqual([]);
        expect(frame.moving.length).toBeLessThan(280);
      }
    }
  });

  test.each(sizes)('at $width x $height words twice as long stay inside', (size) => {
    const frame = cleaningScene(twice(cleaningInput(season, english, size)!))(1);
    expect(wordFaults(frame)).toEqual([]);
  });
});

test('what stands still is one list for all moments, and the same season gives the same picture', () => {
  const season = seasonOf('coastal-plain');
  const frameAt = cleaningPicture.layOut(season, english, desk);
  expect(frameAt(at(0))!.still).toBe(frameAt(at(1))!.still);
  expect(JSON.stringify(frameOf(season, 0.5))).toBe(JSON.stringify(frameAt(at(0.5))));
});

test('the line has the machines that were chosen, and a wagon is unloaded by suction', () => {
  const machines = (season: Season) =>
    [...JSON.stringify(frameOf(season, 1).still).matchAll(/"machine\/(\w+)"/g)].map(([, id]) => id);
  expect(machines(longest)).toEqual(
    longest.cleaning!.machines.map(({ machine }) => machine).filter((machine) => machine !== 'distributor'),
  );
  expect(machines(shortest)).toEqual(['moduleFeeder', 'extractorFeeder']);
  const thirties = frameOf(seasonOf('hand-picked-1930s'), 1);
  expect(allText(thirties)).toContain('Suction pipe');
  expect(allText(thirties)).not.toContain('Module feeder');
  expect(thirties.parts.map(({ name }) => name).filter((name) => name.includes('disperser'))).toEqual([]);
});

test('the overflow is a tenth of what is distributed, and comes round within the picture — model overflow share 0.10', () => {
  const season = seasonOf('coastal-plain');
  const { overflow, overflowKg } = season.cleaning!;
  const all = Object.values(overflow.distributed.dryKg).reduce((sum, kg) => sum + kg, 0);
  const over = Object.values(overflow.overflow.dryKg).reduce((sum, kg) => sum + kg, 0);
  expect(over / all).toBeCloseTo(0.1, 9);
  expect(overflowKg).toBeGreaterThan(over);
  const rounds = frameOf(season, 1).moving.filter(({ band }) => band === 'round/overflow');
  expect(rounds.length).toBeGreaterThan(2);
  const { path } = rounds[0]!;
  expect(Math.abs(path[0]![0] - path.at(-1)![0])).toBeLessThan(30);
});

test('a crop that never came to the gin has no picture and no words', () => {
  const season = decided(farm('high-plains-dryland'), 'planting', { plantingDayOfYear: 191 });
  expect(season.cleaning).toBeNull();
  expect(cleaningPicture.layOut(season, english, desk)(at(0))).toBeNull();
  expect(cleaningPicture.rows(season, english, at(0))).toEqual([]);
  expect(cleaningPicture.see(season, english, at(0))).toEqual([]);
});
