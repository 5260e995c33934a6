import { describe, expect, test } from 'vitest';
import { bollPicture, largeBollOf } from '../../../../src/pages/season/pictures/boll-picture.ts';
import { bollShown, countSites, fieldDayOn, plantOf } from '../../../../src/pages/season/pictures/field-plant.ts';
import { flatMarks, groupsOf } from '../../../../src/scene/display-list.ts';
import type { SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { expectToFit } from '../../../scene/stations/picture-fit.ts';
import { momentAt, seasons, sizes } from './picture-seasons.ts';
import { spokenInTurn, spokenWords } from './scene-checks.ts';

const english = spokenWords('en');
const shares = [0, 0.3, 0.6, 0.85, 1];
const size = sizes[0];
const groupIn = ({ over }: SceneFrame, name: string) => [...groupsOf(over)].find((found) => found.name === name);

describe.each(seasons)('Boll on $farm', ({ season, turn }) => {
  const at = bollPicture.layOut(season, english, size);
  test('draws exactly the organs that the plant has on the day', () => {
    for (const share of shares) {
      const moment = momentAt(season, 'boll', share);
      const frame = at(moment)!;
      for (const [group, kind] of [
        ['squares', 'square'],
        ['flowers', 'flower'],
        ['greenBolls', 'greenBoll'],
        ['openBolls', 'openBoll'],
        ['shed', 'shed'],
      ] as const)
        expect(groupIn(frame, group)?.count).toBe(countSites(plantOf(season), moment.dayOfYear, kind));
    }
  });
  test('the boll shown is one the plant keeps; it is seen from its young days to the day it opens', () => {
    const { site } = bollShown(season)!;
    expect(site.shedDay).toBeNull();
    const first = largeBollOf(season, momentAt(season, 'boll', 0).dayOfYear, english)!;
    const last = largeBollOf(season, momentAt(season, 'boll', 1).dayOfYear, english)!;
    expect(first.fibre.length).toBeLessThan(0.6);
    expect(last.fibre.length).toBe(1);
    expect(last.state.kind).toBe('openBoll');
  });
  test('cut open it shows every seed, and its fibres grow first long, then full', () => {
    let before = { length: 0, wall: 0 };
    for (const share of [0.1, 0.2, 0.3, 0.45, 0.6]) {
      const moment = momentAt(season, 'boll', share);
      const boll = largeBollOf(season, moment.dayOfYear, english)!;
      if (boll.state.kind !== 'greenBoll') continue;
      const large = groupIn(at(moment)!, 'large')!;
      const seeds = [...flatMarks(large.marks)].filter((mark) => mark.kind === 'patch' && mark.ink === 'walnut');
      expect(seeds).toHaveLength(boll.seeds);
      expect(boll.fibre.length).toBeGreaterThanOrEqual(before.length);
      expect(boll.fibre.wall).toBeGreaterThan(before.wall);
      if (boll.fibre.length < 1) expect(boll.fibre.wall).toBeLessThan(0.4);
      expect(boll.fibre.mm).toBeCloseTo(season.field.variety.peakMm * boll.fibre.length, 9);
      expect(groupIn(at(moment)!, 'section')?.count).toBe(Math.round(100 * boll.fibre.wall));
      before = boll.fibre;
    }
  });
  test('the rows of the field hold the mean open bolls of their plants', () => {
    const moment = momentAt(season, 'boll', 1);
    const mean = fieldDayOn(season.field, moment.dayOfYear).perPlant.openBolls;
    const plants = Math.ceil((size.width - 9) / ((40 * Math.min(size.height - 10, (size.width - 9) * 0.8)) / 560));
    expect(groupIn(at(moment)!, 'row/2/open')?.count).toBe(Math.round(mean * plants));
  });
  test('the table holds the model’s own numbers', () => {
    const moment = momentAt(season, 'boll', 0.8);
    const day = fieldDayOn(season.field, moment.dayOfYear);
    const rows = new Map(bollPicture.rows(season, english, moment).map(({ key, text }) => [key, text]));
    expect(rows.get('open')).toBe(english.formats.percent(day.openPercent, 0));
    expect(rows.get('greenBolls')).toBe(english.formats.number(day.perPlant.greenBolls, 1));
    expect(new Set(bollPicture.rows(season, english, moment).map(({ key }) => key)).size).toBe(rows.size);
  });
  test('what moves is said in the words beside it', () => {
    for (const share of shares) {
      const moment = momentAt(season, 'boll', share);
      const see = bollPicture.see(season, english, moment).join(' ');
      for (const { shows } of at(moment)!.parts) expect(see).toContain(shows);
    }
  });
  test('every mark and word is inside, in both languages, both units and every size', () => {
    for (const [place, box] of sizes.entries())
      for (const words of spokenInTurn(turn + place)) {
        const frameAt = bollPicture.layOut(season, words, box);
        for (const share of [0.2, 1]) {
          const moment = momentAt(season, 'boll', share);
          expectToFit(frameAt(moment)!, `${words.language} ${words.unitSystem} ${box.width} day ${moment.dayOfYear}`);
        }
      }
  });
});
