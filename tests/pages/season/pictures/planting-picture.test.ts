import { describe, expect, test } from 'vitest';
import { stationSpan } from '../../../../src/model/timeline.ts';
import { timelineFacts } from '../../../../src/model/timeline-facts.ts';
import { fieldDayOn } from '../../../../src/pages/season/pictures/field-plant.ts';
import type { PictureMoment } from '../../../../src/pages/season/pictures/picture.ts';
import {
  plantingDayOf,
  plantingPicture,
  plantingSceneOf,
} from '../../../../src/pages/season/pictures/planting-picture.ts';
import { flatMarks, groupsOf } from '../../../../src/scene/display-list.ts';
import { frameAtRest, type SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { layOutPlanting } from '../../../../src/scene/stations/planting/planting.ts';
import { mutePart } from '../../../scene/stations/frame-checks.ts';
import { expectToFit } from '../../../scene/stations/picture-fit.ts';
import { momentAt, seasons, sizes } from './picture-seasons.ts';
import { sizesInTurn, spokenInTurn, spokenWords, twice } from './scene-checks.ts';

const english = spokenWords('en');
const size = sizes[0];
const sowing = timelineFacts.workSteps.value;
const countIn = ({ over }: SceneFrame, name: string) => [...groupsOf(over)].find((found) => found.name === name)?.count;
const textIn = (frame: SceneFrame) =>
  [...flatMarks(frameAtRest(frame))].flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');

describe.each(seasons)('Planting on $farm', ({ season, turn }) => {
  const { field } = season;
  const span = stationSpan(season, 'planting');
  const ledger = field.counts.find(({ station }) => station === 'planting')!;
  const plants = ledger.shares.find(({ name }) => name === 'plants')!.count;
  const perFoot = season.scenario.decisions.planting.seedsPerFoot;
  const at = plantingPicture.layOut(season, english, size);
  /** The moment at a step of sowing. */
  const sown = (step: number): PictureMoment => ({ dayOfYear: span.fromDay, progress: step / span.steps });
  const onDay = (dayOfYear: number): PictureMoment => ({
    dayOfYear,
    progress: (sowing + dayOfYear - span.fromDay) / span.steps,
  });

  test('the row in view holds the seeds per foot that were decided, and the share that the model brings up', () => {
    const feet = Number(/(\d+)\sft of one row/.exec(textIn(at(sown(0))!))![1]);
    const lying = at(sown(sowing))!;
    const up = at(onDay(field.events.emerged!))!;
    const seeds = countIn(lying, 'seedsSown')!;
    expect(seeds).toBe(Math.floor(feet * perFoot));
    expect(countIn(up, 'seedsSown')).toBe(seeds);
    expect(Math.abs(countIn(up, 'plants')! - (seeds * plants) / ledger.whole.count)).toBeLessThanOrEqual(0.5 + 1e-9);
  });
  test('the planter sows the row from left to right, and the band counts the whole field’s seeds with it', () => {
    let before = -1;
    for (let step = 0; step < sowing; step++) {
      const frame = at(sown(step))!;
      const seeds = countIn(frame, 'seedsSown')!;
      expect(seeds).toBeGreaterThanOrEqual(before);
      before = seeds;
      expect(countIn(frame, 'counts/sown')).toBe(Math.round((ledger.whole.count * step) / sowing));
      expect(mutePart(frame).filter((fault) => !fault.startsWith('sun/'))).toEqual([]);
    }
    expect(countIn(at(sown(0))!, 'seedsSown')).toBe(0);
    expect(countIn(at(sown(sowing))!, 'counts/sown')).toBe(Math.round(ledger.whole.count));
    expect(at(sown(sowing))!.parts.map(({ name }) => name)).toEqual([expect.stringMatching(/^sun/)]);
  });
  test('once the plants are up, those that came and those that did not make all the seed of the ledger', () => {
    for (const day of [field.events.emerged!, span.toDay]) {
      const frame = at(onDay(day))!;
      expect(countIn(frame, 'counts/up')).toBe(Math.round(plants));
      expect(countIn(frame, 'counts/notUp')).toBe(Math.round(ledger.whole.count - plants));
      expect(textIn(frame)).toContain(english.formats.count(plants));
    }
    expect(countIn(at(onDay(field.events.emerged! - 1))!, 'counts/up')).toBeUndefined();
  });
  test('the strip shows the day’s heat, and the table the model’s own numbers', () => {
    for (const share of [0, 0.6, 0.75, 1]) {
      const moment = momentAt(season, 'planting', share);
      const day = fieldDayOn(field, moment.dayOfYear);
      const frame = at(moment)!;
      expect(countIn(frame, 'warmth')).toBe(Math.round(day.dd60));
      expect(countIn(frame, 'heatSum')).toBe(Math.round(day.dd60SincePlanting));
      const rows = plantingPicture.rows(season, english, moment);
      const texts = new Map(rows.map(({ key, text }) => [key, text]));
      expect(texts.size).toBe(rows.length);
      expect(texts.get('low')).toBe(english.formats.temperature(day.minF).text);
      expect(texts.get('high')).toBe(english.formats.temperature(day.maxF).text);
      expect(texts.get('heatSum')).toBe(english.formats.heatUnits(day.dd60SincePlanting).text);
      const isUp = moment.dayOfYear >= field.events.emerged!;
      expect(texts.get('up')).toBe(isUp ? english.formats.count(plants) : undefined);
      expect(texts.get('notUp')).toBe(isUp ? english.formats.count(ledger.whole.count - plants) : undefined);
    }
  });
  test('what moves names its quantity, and the words beside the picture say it too', () => {
    for (const moment of [sown(0), sown(sowing / 2), momentAt(season, 'planting', 1)]) {
      const see = plantingPicture.see(season, english, moment).join(' ');
      for (const { name, shows } of at(moment)!.parts) {
        expect(shows).not.toMatch(/\{\w+\}/);
        if (name.startsWith('sun') || name.endsWith('plate')) expect(see).toContain(shows);
        else expect(see).toContain('roll with the ground');
      }
    }
  });
  test('the same moment is the same picture, and what stands still is one object', () => {
    const moment = momentAt(season, 'planting', 0.8);
    expect(plantingPicture.layOut(season, english, size)(moment)).toEqual(at(moment));
    expect(at(moment)!.still).toBe(at(sown(3))!.still);
  });
  test('every mark and word is inside, in both languages, both units and every size', () => {
    for (const [place, box] of sizes.entries())
      for (const words of spokenInTurn(turn + place)) {
        const frameAt = plantingPicture.layOut(season, words, box);
        for (const moment of [
          sown(1),
          sown(sowing * 0.6),
          sown(sowing - 1),
          onDay(field.events.emerged! - 1),
          onDay(span.toDay),
        ])
          expectToFit(frameAt(moment)!, `${words.language} ${words.unitSystem} ${box.width} ${JSON.stringify(moment)}`);
      }
  });
});

test('words twice as long still fit', () => {
  for (const { season, turn } of seasons)
    for (const box of sizesInTurn(sizes, turn)) {
      const scene = plantingSceneOf(season, english, box);
      const at = layOutPlanting({ ...scene, labels: twice(scene.labels) });
      for (const share of [0.2, 0.7, 1]) {
        const day = plantingDayOf(season, momentAt(season, 'planting', share), english);
        const counts = { ...day.counts, labels: twice(day.counts.labels) };
        expectToFit(at({ ...day, counts, large: twice(day.large) }), `${box.width} ${share}`);
      }
    }
});

test('on the old farm one row is sown behind a mule, on the others rows by a tractor', () => {
  for (const { season } of seasons) {
    const frame = plantingPicture.layOut(season, english, size)(momentAt(season, 'planting', 0.3))!;
    const horse = frame.parts.some(({ name }) => name === 'planter/pressWheel');
    expect(horse).toBe(season.scenario.era === 'thirties');
  }
});
