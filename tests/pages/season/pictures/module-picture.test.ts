import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { totalKg } from '../../../../src/model/lot.ts';
import type { Season } from '../../../../src/model/season.ts';
import { oneBaleShare } from '../../../../src/pages/season/ledger-panel.tsx';
import { moduleInput, modulePicture } from '../../../../src/pages/season/pictures/module-picture.ts';
import type { PictureSize } from '../../../../src/pages/season/pictures/picture.ts';
import { groupsOf } from '../../../../src/scene/display-list.ts';
import type { SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { moduleScene } from '../../../../src/scene/stations/module/module-scene.ts';
import {
  allText,
  checkedSizes,
  countFaults,
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

const english = spokenWords('en');
const at = (progress: number) => ({ dayOfYear: 300, progress });
const [coastal] = farms;
const long = decided(coastal!, 'module', { kind: 'conventional', cover: 'poor' });
const bare = decided(coastal!, 'module', { kind: 'round', cover: 'none', storageDays: 60 });
const atOnce = decided(coastal!, 'module', { storageDays: 0 });
const cases: readonly (readonly [string, Season])[] = [
  ...farmSeasons.map((season) => [season.scenario.id, season] as const),
  ['a long module under a torn cover', long],
  ['a round module left bare', bare],
  ['no storage', atOnce],
];
/** And what the page gives on a small laptop and on a tall screen. */
const sizes: readonly PictureSize[] = [...checkedSizes];
const frameOf = (season: Season, words = english, size: PictureSize = checkedSizes[0], progress = 1) =>
  modulePicture.layOut(season, words, size)(at(progress))!;
const countIn = ({ still, over }: SceneFrame, name: string) =>
  [...groupsOf([...still, ...over])].find((found) => found.name === name)?.count;
const rowsOf = (season: Season, progress: number) =>
  new Map(modulePicture.rows(season, english, at(progress)).map(({ key, text }) => [key, text]));

describe.each(cases.map(([id, season], turn) => [id, season, turn] as const))(
  'the module of %s',
  (_id, season, turn) => {
    test.each(sizes)('counts its pieces by the ledger at $width x $height', (size) => {
      expect(countFaults(frameOf(season, english, size), season, 'module')).toEqual([]);
    });
    test.each(sizesInTurn(sizes, turn))(
      'keeps every word apart and in sight in both languages at $width x $height',
      (size) => {
        for (const words of spokenInTurn(Math.floor(turn / 2) + sizes.indexOf(size))) {
          const frameAt = modulePicture.layOut(season, words, size);
          for (const progress of [0, 0.5, 1]) {
            const frame = frameAt(at(progress))!;
            const faults = [...wordFaults(frame), ...smallWords(frame), ...markFaults(frame)];
            expect(faults, `${words.language} ${words.unitSystem} ${progress}`).toEqual([]);
          }
        }
      },
    );
    test.each(sizesInTurn(sizes, turn))('keeps words twice as long in the picture at $width x $height', (size) => {
      const input = moduleInput(season, english, size)!;
      const frame = moduleScene({
        ...input,
        ...twice({ inflow: input.inflow, outflow: input.outflow, labels: input.labels }),
      })(1);
      expect(wordFaults(frame)).toEqual([]);
      expect(markFaults(frame)).toEqual([]);
    });
    test('every module of the farm stands in the yard', () => {
      expect(countIn(frameOf(season), 'yard')).toBe(season.module!.moduleCount);
    });
    test('rain, core and rings of a day are those of the model', () => {
      const { storageDays } = season.scenario.decisions.module;
      const last = season.field.harvestDays.at(-1)!;
      const { days } = season.weather;
      for (const progress of [0, 0.5, 1]) {
        const day = Math.round(progress * storageDays);
        const rain = Array.from({ length: day }, (_, i) => days[(last + i) % days.length]!.rainInches);
        const rows = rowsOf(season, progress);
        const frame = frameOf(season, english, checkedSizes[0], progress);
        expect(rows.get('rain')).toBe(english.formats.rain(rain.reduce((sum, inches) => sum + inches, 0)).text);
        expect(countIn(frame, 'rainFallen')).toBe(rain.filter((inches) => inches > 0).length);
        const core = season.module!.coreTemperatureF;
        const f = core[day]?.f ?? core[0]?.f;
        if (f === undefined) continue;
        expect(rows.get('core')).toBe(english.formats.temperature(f).text);
        expect(allText(frame)).toContain(english.formats.temperature(f).text);
        expect(countIn(frame, 'rings')).toBe(Math.max(0, Math.round((f - core[0]!.f) / 5)));
      }
    });
    test('the verdict at the end is the model’s, in the picture, the table and the words', () => {
      const verdict = english.messages.readings.moduleVerdicts[season.module!.verdict];
      expect(rowsOf(season, 1).get('verdict')).toBe(verdict);
      expect(allText(frameOf(season))).toContain(verdict);
      expect(modulePicture.see(season, english, at(1)).join(' ')).toContain(verdict);
    });
    test('shows nothing gone at the start and the whole ledger at the end', () => {
      const lot = rowsOf(season, 1).get('out/lot')!;
      expect(allText(frameOf(season))).toContain(lot);
      const pounds = Number(lot.replace(/[^\d.]/g, ''));
      expect(pounds).toBeCloseTo((totalKg(season.module!.lot) * oneBaleShare(season)) / 0.45359237, 0);
      expect(rowsOf(season, 0).get('out/lot')).toMatch(/^0\.0/);
    });
    test('paints what stands still once for all moments, and the same list each time', () => {
      const lay = modulePicture.layOut(season, english, checkedSizes[0]);
      expect(lay(at(0.2))!.still).toBe(lay(at(0.9))!.still);
      expect(JSON.stringify(frameOf(season))).toBe(JSON.stringify(frameOf(season)));
    });
  },
);

test('a farm without a module has wagons, and says so', () => {
  const old = farmSeasons.find(({ scenario }) => scenario.era === 'thirties')!;
  const see = modulePicture.see(old, english, at(1)).join(' ');
  expect(see).toContain('wagon');
  expect(see).not.toContain('round module');
  expect(modulePicture.see(long, english, at(1)).join(' ')).toContain('torn');
});

test('a piece too many is seen', () => {
  const [season] = farmSeasons;
  const frame = frameOf(season!);
  const spare = frame.moving.find(({ band, part }) => band === 'out/lot' && part === 'seed')!;
  expect(countFaults({ ...frame, moving: [...frame.moving, spare] }, season!, 'module')).toHaveLength(1);
});
