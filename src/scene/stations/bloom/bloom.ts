import { flowerMarks, largeSquareMarks } from '../../cloth/flower.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { type DisplayList, group, type Mark } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { type FieldDayLook, type FieldScene, layOutField, type SitePlace } from '../field/field-scene.ts';
import { padMark } from '../field/pad.ts';
import type { Plot } from '../field/plot.ts';
import type { SiteState } from '../plant/plant-sample.ts';

/** A flower, or the square that will be the next to open, shown large. */
export interface LargeFlower {
  readonly site: SitePlace | null;
  readonly state: Extract<SiteState, { kind: 'square' | 'flower' }>;
  /** How far a square has come from the day it could first be seen (0) to the day it opens (1). */
  readonly grown: number;
  readonly title: string;
  readonly place: string;
  /** The place in a word or two, for a phone. */
  readonly placeShort: string;
}

export interface BloomDay extends FieldDayLook {
  readonly flower: LargeFlower;
}

/** One plant in bloom in its field, and one of its flowers large. */
export function layOutBloom(scene: FieldScene): (day: BloomDay) => SceneFrame {
  const field = layOutField(scene);
  const pad = padMark('flower', field.plot.pad);
  return (day) =>
    field.at(day, {
      site: day.flower.site,
      hangs: false,
      pad: [pad, ...largeFlower(field.plot, day.flower, scene.kind)],
    });
}

function largeFlower(plot: Plot, flower: LargeFlower, kind: FieldScene['kind']): DisplayList {
  const { pad, textPx, small } = plot;
  const titlePx = textPx * (small ? 1.08 : 1.3);
  const inner = pad.width - textPx * 1.8;
  const title = linesOf(flower.title, titlePx, inner, { bold: true });
  const place = linesOf(small ? flower.placeShort : flower.place, textPx, inner, { italic: true });
  const wordsHeight = linesHeight(title.length, titlePx) + linesHeight(place.length, textPx) + textPx * 1.1;
  const room = pad.height - wordsHeight - textPx * 0.6;
  const x = pad.x + pad.width / 2;
  const y = pad.y + textPx * 0.6 + room / 2;
  const size = Math.min(room * 0.47, pad.width * 0.4);
  const { state } = flower;
  const marks: Mark[] =
    state.kind === 'flower'
      ? [...flowerMarks('large', { x, y, size, wide: 1, turn: -0.2 }, kind, state.ageDays)]
      : [...largeSquareMarks('large', x, y, size, flower.grown, kind)];
  const titleY = pad.y + pad.height - wordsHeight + titlePx * 0.85;
  return [
    group(`large/${state.kind}`, marks, state.ageDays),
    ...lettered(title, [x, titleY], { size: titlePx, ink: 'lint', anchor: 'middle', bold: true }),
    ...lettered(place, [x, titleY + linesHeight(title.length, titlePx)], {
      size: textPx,
      ink: 'lint',
      anchor: 'middle',
      italic: true,
    }),
  ];
}
