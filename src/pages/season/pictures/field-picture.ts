import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { Season } from '../../../model/season.ts';
import { type SceneFrame, stillFrame } from '../../../scene/scene-frame.ts';
import { furrowFeet, furrowScene } from '../../../scene/stations/plant/furrow.ts';
import { plantScene, viewInchesFor } from '../../../scene/stations/plant/plant.ts';
import { fieldDayOn, leafShareOn, plantOf } from './field-plant.ts';
import type { PictureSize } from './picture.ts';

/** The field on a day: the furrow until the crop is up, then one plant with every organ where the model has it. */
export function fieldPicture(season: Season, dayOfYear: number, words: Words, size: PictureSize): SceneFrame {
  const still = fieldMarks(season, dayOfYear, words, size);
  return stillFrame(size.width, size.height, still);
}

function fieldMarks(season: Season, dayOfYear: number, words: Words, size: PictureSize): SceneFrame['still'] {
  const { field, scenario } = season;
  const { formats, messages } = words;
  const day = fieldDayOn(field, dayOfYear);
  const weather = { dd60: day.dd60, rainInches: day.rainInches, irrigationInches: day.irrigationInches };
  const upDay = field.events.emerged;
  if (upDay === null || dayOfYear < upDay) {
    const planting = scenario.decisions.planting;
    const sown = field.counts.find(({ station }) => station === 'planting');
    const up = sown?.shares.find(({ name }) => name === 'plants')?.count ?? 0;
    const lastDay = upDay ?? field.days.at(-1)!.dayOfYear + 1;
    return furrowScene({
      seedsPerFoot: planting.seedsPerFoot,
      progress: Math.min(1, (dayOfYear - field.plantedDay) / Math.max(1, lastDay - field.plantedDay)),
      emergingShare: sown && sown.whole.count > 0 ? up / sown.whole.count : 0,
      weather,
      soilWaterFraction: day.soilWaterFraction,
      size,
      labels: {
        rowTicks: Array.from({ length: furrowFeet(size.width) + 1 }, (_, feet) =>
          feet === 0 ? { feet } : { feet, text: formats.length(feet * 12).text },
        ),
      },
    });
  }
  const view = viewInchesFor(day.plantHeightInches);
  const spacing = view > 30 ? 8 : view > 15 ? 4 : 2;
  return plantScene({
    plant: plantOf(season),
    dayOfYear,
    kind: field.variety.kind,
    heightInches: day.plantHeightInches,
    weather,
    soilWaterFraction: day.soilWaterFraction,
    leafShare: leafShareOn(field, dayOfYear),
    openShare: day.openPercent / 100,
    cutBoll: true,
    size,
    labels: {
      heightTicks: Array.from({ length: Math.ceil(view / (spacing / 2)) }, (_, i) => {
        const inches = (i * spacing) / 2;
        return i % 2 === 0 ? { inches, text: formats.length(inches).text } : { inches };
      }),
      node: (number) => fill(messages.readings.node, { number: formats.count(number) }),
      cutBoll: (seeds) => formats.plural(seeds, messages.readings.seedsInBoll),
    },
  });
}
