import { describe, expect, test } from 'vitest';
import { farms } from '../../../../src/model/farms.ts';
import { totalKg } from '../../../../src/model/lot.ts';
import { oneBaleShare } from '../../../../src/pages/season/ledger-panel.tsx';
import { harvestInput, harvestPicture } from '../../../../src/pages/season/pictures/harvest-picture.ts';
import { harvestScene } from '../../../../src/scene/stations/harvest/harvest.ts';
import {
  allText,
  checkedSizes,
  countFaults,
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

const english = spokenWords('en');
const at = (progress: number) => ({ dayOfYear: 280, progress });
const [coastal] = farms;
const stripped = decided(coastal!, 'harvest', { method: 'stripper' });
const seasons = [...farmSeasons, stripped].map((season) => [season.scenario.id, season] as const);
const frameOf = (
  season: (typeof seasons)[number][1],
  words = english,
  size: (typeof checkedSizes)[number] = checkedSizes[0],
  progress = 1,
) => harvestPicture.layOut(season, words, size)(at(progress))!;

describe.each(seasons.map(([id, season], turn) => [id, season, turn] as const))(
  'the harvest of %s',
  (_id, season, turn) => {
    test.each(checkedSizes)('counts its pieces by the ledger at $width x $height', (size) => {
      expect(countFaults(frameOf(season, english, size), season, 'harvest')).toEqual([]);
    });
    test.each(sizesInTurn(checkedSizes, turn))(
      'keeps every word apart and in sight in both languages at $width x $height',
      (size) => {
        for (const words of spokenInTurn(Math.floor(turn / 2) + checkedSizes.indexOf(size))) {
          const frameAt = harvestPicture.layOut(season, words, size);
          for (const progress of [0, 0.5, 1]) {
            const frame = frameAt(at(progress))!;
            const faults = [...wordFaults(frame), ...smallWords(frame), ...markFaults(frame)];
            expect(faults, `${words.language} ${words.unitSystem} ${progress}`).toEqual([]);
          }
        }
      },
    );
    test.each(sizesInTurn(checkedSizes, turn))(
      'keeps words twice as long in the picture at $width x $height',
      (size) => {
        const input = twice(harvestInput(season, english, size)!);
        const frame = harvestScene(input)(1);
        expect(wordFaults(frame)).toEqual([]);
        expect(markFaults(frame)).toEqual([]);
      },
    );
    test('says of every part that moves what it shows, in the words beside it', () => {
      const frame = frameOf(season);
      expect(partFaults(frame)).toEqual([]);
      const said = harvestPicture.see(season, english, at(1)).join(' ');
      for (const { shows } of frame.parts) expect(said).toContain(shows);
    });
    test('shows nothing gathered at the start and the whole ledger at the end', () => {
      const rows = harvestPicture.rows(season, english, at(1));
      const lot = rows.find(({ key }) => key === 'out/lot')!;
      expect(allText(frameOf(season))).toContain(lot.text);
      const pounds = Number(lot.text.replace(/[^\d.]/g, ''));
      expect(pounds).toBeCloseTo((totalKg(season.harvest!.lot) * oneBaleShare(season)) / 0.45359237, 0);
      expect(allText(frameOf(season, english, checkedSizes[0], 0))).not.toContain(lot.text);
      expect(harvestPicture.rows(season, english, at(0)).find(({ key }) => key === 'out/lot')!.text).toMatch(/^0\.0/);
    });
    test('paints what stands still once for all moments, and the same list each time', () => {
      const lay = harvestPicture.layOut(season, english, checkedSizes[0]);
      expect(lay(at(0.2))!.still).toBe(lay(at(0.9))!.still);
      expect(JSON.stringify(frameOf(season))).toBe(JSON.stringify(frameOf(season)));
    });
  },
);

test('people-days by hand are 200 lb a day, minutes of a machine its acres at 8 an hour', () => {
  for (const season of farmSeasons) {
    const text = harvestPicture.rows(season, english, at(1)).find(({ key }) => key === 'labour')!.text;
    const share = oneBaleShare(season);
    const { acres } = season.scenario;
    const expected = season.harvest!.labour.personDays
      ? (totalKg(season.harvest!.lot) * share) / 0.45359237 / 200
      : ((acres * share) / 8) * 60;
    expect(Number.parseFloat(text)).toBeCloseTo(expected, 1);
  }
});

test('by hand nothing turns; the spindles have doffers; the field cleaner has its saw only where there is one', () => {
  const parts = (id: string) =>
    frameOf(farmSeasons.find(({ scenario }) => scenario.id === id)!).parts.map(({ name }) => name);
  expect(parts('hand-picked-1930s')).toEqual([]);
  expect(parts('coastal-plain')).toEqual(['spindleDrum', 'doffer']);
  expect(parts('high-plains-dryland')).toEqual(['strippingRoll', 'strippingRoll', 'cleanerSaw']);
  expect(frameOf(stripped).parts.map(({ name }) => name)).toEqual(['strippingRoll', 'strippingRoll']);
});

test('a piece too many is seen', () => {
  const [season] = farmSeasons;
  const frame = frameOf(season!);
  const spare = frame.moving.find(({ band, part }) => band === 'out/lot' && part === 'lint')!;
  expect(countFaults({ ...frame, moving: [...frame.moving, spare] }, season!, 'harvest')).toHaveLength(1);
});
