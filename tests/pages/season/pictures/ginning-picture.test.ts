import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { parts } from '../../../../src/model/lot.ts';
import { kilogramsFromPounds } from '../../../../src/model/units.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { ginningInput, ginningPicture } from '../../../../src/pages/season/pictures/ginning-picture.ts';
import type { PictureSize } from '../../../../src/pages/season/pictures/picture.ts';
import type { GinningInput, NamedMass } from '../../../../src/scene/stations/ginning/ginning-input.ts';
import { ginningScene } from '../../../../src/scene/stations/ginning/ginning-scene.ts';
import { ledgerRows } from '../../../../src/ui/ledger-rows.ts';
import { doubled, mutePart, outside, piecesByBand } from '../../../scene/stations/frame-checks.ts';
import { expectToFit } from '../../../scene/stations/picture-fit.ts';
import { decided, everyWords, pictureSizes, seasonOf, wordsInTurn } from './picture-cases.ts';

const english = everyWords[0]!;
const desk = pictureSizes[0]!;
/** What the page gives on a small laptop and on a tall screen. */
const sizes: readonly PictureSize[] = [...pictureSizes];
const at = (progress: number) => ({ dayOfYear: 290, progress });
const frameOf = (season: Parameters<typeof ginningPicture.layOut>[0], progress: number, size = desk, words = english) =>
  ginningPicture.layOut(season, words, size)(at(progress))!;

/** All words of a picture twice as long. */
function withLongWords(input: GinningInput): GinningInput {
  const long = <Held extends NamedMass | null>(held: Held): Held => held && { ...held, name: doubled(held.name) };
  const labels = Object.fromEntries(
    Object.entries(input.labels).map(([key, label]) => [
      key,
      typeof label === 'string'
        ? doubled(label)
        : key.startsWith('caption')
          ? () => doubled(input.labels.caption({ tuftKg: 9, bitKg: 1 }))
          : label,
    ]),
  ) as unknown as GinningInput['labels'];
  const { seedCotton, water, seed, trash, motes, lint } = input;
  return {
    ...input,
    labels,
    seedCotton: long(seedCotton),
    water: long(water),
    seed: long(seed),
    trash: long(trash),
    motes: long(motes),
    lint: long(lint),
  };
}

describe.each(farms.map((farm, turn) => [farm.id, farm, turn] as const))('%s', (_, farm, turn) => {
  const season = seasonOf(farm);
  const ledger = ledgerOf(season, 'ginning', 'bale')!;
  const table = ledgerRows(ledger, 'us');

  test('pieces agree with the ledger: every account, every part, within half a piece', () => {
    const pieces = piecesByBand(frameOf(season, 0.4));
    const { legend } = ginningScene(ginningInput(season, english, desk)!)(1);
    for (const side of ['in', 'out'] as const)
      for (const entry of ledger[side])
        for (const part of [...parts, 'water' as const]) {
          const kg = part === 'water' ? entry.waterKg : entry.dryKg[part];
          const each = part === 'lint' || part === 'seed' || part === 'water' ? legend.tuftKg : legend.bitKg;
          const shown = pieces.get(`${side}/${entry.account} ${part}`);
          expect(shown?.standsForKg ?? each, `${entry.account} ${part}`).toBe(each);
          expect(Math.abs((shown?.kg ?? 0) - kg), `${entry.account} ${part}`).toBeLessThanOrEqual(each / 2 + 1e-9);
        }
  });

  test('when the work is done the words are those of the ledger table, and before it nothing has come', () => {
    const write = (account: string) =>
      `${english.formats.number(table.out.find((row) => row.account === account)!.all, table.decimals)}\u00a0lb`;
    const done = Object.fromEntries(ginningPicture.rows(season, english, at(1)).map(({ key, text }) => [key, text]));
    const accounts = { lint: 'lot', seed: 'seedHouse', trash: 'ginTrash', motes: 'lintCleanerWaste' } as const;
    const picture = JSON.stringify(frameOf(season, 1).over);
    for (const [key, account] of Object.entries(accounts)) {
      if (key === 'motes' && season.ginning!.lintCleaners.inLine === 0) {
        expect(done[key]).toBeUndefined();
        continue;
      }
      expect(done[key]).toBe(write(account));
      expect(picture).toContain(write(account));
    }
    const begun = ginningPicture.rows(season, english, at(0));
    expect(begun.find(({ key }) => key === 'seed')!.text).toBe('0.0\u00a0lb');
    expect(begun.find(({ key }) => key === 'in')!.text).toBe(`${english.formats.number(table.in[0]!.all, 1)}\u00a0lb`);
  });

  test('every turning part says what it shows, in words the table has too', () => {
    const frame = frameOf(season, 0.5);
    expect(frame.parts.length).toBeGreaterThan(1);
    expect(mutePart(frame)).toEqual([]);
    const rows = ginningPicture.rows(season, english, at(0.5)).map(({ label, text }) => `${label}: ${text}`);
    for (const { shows } of frame.parts) expect(rows).toContain(shows);
  });

  test.each(sizes)('every mark lies in $width x $height, and no word on another', (size) => {
    for (const words of wordsInTurn(turn + sizes.indexOf(size))) {
      const frame = frameOf(season, 1, size, words);
      expect(outside(frame)).toEqual([]);
      expectToFit(frame, `${words.language} ${words.unitSystem}`);
      expect(frame.moving.length).toBeLessThan(180);
    }
  });

  test.each(sizes)('words twice as long stay inside $width x $height', (size) => {
    const input = withLongWords(ginningInput(season, english, size)!);
    const found = outside(ginningScene(input)(1)).filter((line) => !/ of [\d.]+ px$/.test(line));
    expect(found).toEqual([]);
  });
});

test('what stands still is one list for all moments, and the same season gives the same picture', () => {
  const season = seasonOf(farms[0]!);
  const frameAt = ginningPicture.layOut(season, english, desk);
  expect(frameAt(at(0))!.still).toBe(frameAt(at(1))!.still);
  expect(JSON.stringify(frameOf(season, 0.5))).toBe(JSON.stringify(frameAt(at(0.5))));
});

test('a roller stand shows roller and knives, no saws; no lint cleaner in line, none on the picture', () => {
  const named = (season: Parameters<typeof frameOf>[0]) => JSON.stringify(frameOf(season, 1));
  const saws = named(seasonOf(decided('coastal-plain', 'ginning', { lintCleaners: 3 })));
  expect(saws).toContain('"ribs"');
  expect(saws).toContain('machine/lintCleaner3');
  expect(saws).not.toContain('fixedKnife');
  const roller = named(seasonOf(decided('long-staple-valley', 'ginning', { lintCleaners: 0 })));
  expect(roller).toContain('fixedKnife');
  expect(roller).not.toContain('"ribs"');
  expect(roller).not.toContain('machine/lintCleaner');
  const air = frameOf(seasonOf(decided('coastal-plain', 'ginning', { lintCleaner: 'air', lintCleaners: 1 })), 1);
  expect(JSON.stringify(air)).toContain('machine/lintCleaner1');
  // An air cleaner has no wheel.
  expect(air.parts.map(({ name }) => name)).not.toContain('lintCleaner');
});

test('at fifty pounds a day the lint of a bale is more than a week of cranking — Founders Online, letter of 24 November 1793', () => {
  const season = seasonOf(farms[0]!);
  const days = ginningPicture.rows(season, english, at(1)).find(({ key }) => key === 'handGin')!.text;
  const lintKg = ledgerOf(season, 'ginning', 'bale')!
    .out.filter(({ account }) => account !== 'seedHouse' && account !== 'ginTrash')
    .reduce((sum, { dryKg }) => sum + dryKg.lint, 0);
  expect(days).toBe(`${Math.round(lintKg / kilogramsFromPounds(50))}\u00a0days`);
  expect(ginningPicture.see(season, english, at(1)).join(' ')).toContain(days);
});

test('a crop that never came to the gin has no picture and no words', () => {
  const season = seasonOf(decided('high-plains-dryland', 'planting', { plantingDayOfYear: 191 }));
  expect(season.ginning).toBeNull();
  expect(ginningPicture.layOut(season, english, desk)(at(0))).toBeNull();
  expect(ginningPicture.rows(season, english, at(0))).toEqual([]);
  expect(ginningPicture.see(season, english, at(0))).toEqual([]);
});
