import { describe, expect, test } from 'vitest';
import { trace as english } from '../../../src/language/messages/en/trace.ts';
import { en } from '../../../src/language/messages/en.ts';
import { makeWords } from '../../../src/language/words.ts';
import { projectIds } from '../../../src/model/trace/project-facts.ts';
import { decodeTrace } from '../../../src/pages/trace/trace-link.ts';
import { throughOf, traceOf } from '../../../src/pages/trace/trace-of.ts';
import { traceDrawing } from '../../../src/pages/trace/trace-picture.ts';
import { boundsOf, signedArea } from '../../../src/scene/cloth/point.ts';
import { flatMarks, type GroupMark, groupsOf, type PatchMark } from '../../../src/scene/display-list.ts';
import { fieldScale } from '../../../src/scene/trace/field-stretch.ts';
import { massScale } from '../../../src/scene/trace/mass-stretch.ts';
import { traceScene } from '../../../src/scene/trace/trace-scene.ts';

const words = makeWords('en', 'us', en);
const { season } = throughOf('v=1&farm=irrigated-desert&seed=1');

function drawn(query: string, width = 560) {
  const { asked } = decodeTrace(query);
  const traced = traceOf(asked, season);
  if (!('account' in traced)) throw new Error(query);
  const drawing = traceDrawing(traced, asked, 'It', words, english)(width);
  const scene = traceScene(drawing, width);
  const groups = new Map([...groupsOf(scene.list)].map((group): [string, GroupMark] => [group.name, group]));
  return { drawing, scene, groups, trace: traced.account.cases.middle };
}
const patchOf = (group: GroupMark | undefined): PatchMark => {
  const found = [...flatMarks(group?.marks ?? [])].find((mark) => mark.kind === 'patch');
  if (found?.kind !== 'patch') throw new Error('no patch');
  return found;
};
/** Scissors miss the line by a little. */
const nearly = (px: number, wanted: number) => expect(Math.abs(px - wanted)).toBeLessThan(5);

describe.each(projectIds)('%s', (project) => {
  const { drawing, scene, groups, trace } = drawn(`project=${project}`);
  test('its counted pieces agree with its numbers', () => {
    expect(groups.get('bolls')?.count).toBe(Math.max(1, Math.round(trace.bolls / drawing.bolls.each)));
    expect(groups.get('plants')?.count).toBe(Math.max(1, Math.round(trace.plants / drawing.field.plants.each)));
  });
  test('its ribbon is as wide as the cotton is heavy', () => {
    const px = massScale(drawing, 552);
    for (const [name, kg] of [
      ['cloth-by-weight', trace.clothKg],
      ['seed-cotton-by-weight', trace.seedCottonKg],
    ] as const) {
      nearly(boundsOf(patchOf(groups.get(name)).points).width, kg * px);
    }
  });
  test('its field is as large as the plants need, at the scale of what is chalked on it', () => {
    const { px } = fieldScale(drawing, 552);
    const { points } = patchOf(groups.get('field'));
    const squareFeet = Math.abs(signedArea(points)) / px ** 2;
    expect(Math.abs(squareFeet / drawing.field.squareFeet - 1)).toBeLessThan(0.03);
  });
  test('nothing reaches past the edge', () => {
    for (const mark of flatMarks(scene.list)) {
      if (mark.kind !== 'patch') continue;
      const { x, width } = boundsOf(mark.points);
      expect(x).toBeGreaterThan(-2);
      expect(x + width).toBeLessThan(scene.width + 2);
    }
  });
});

test('irrigation and rain are as deep as they were, at the scale of the field', () => {
  const { drawing, groups } = drawn('project=king-quilt');
  const { px } = fieldScale(drawing, 552);
  const { rain, irrigation } = season.field.seasonWaterInches;
  nearly(boundsOf(patchOf(groups.get('irrigation')).points).height, (irrigation / 12) * px);
  nearly(boundsOf(patchOf(groups.get('rain')).points).height, (rain / 12) * px);
});
test('the same picture every time, on a phone as well', () => {
  const [one, other] = [drawn('project=own', 350), drawn('project=own', 350)];
  expect(JSON.stringify(one.scene)).toBe(JSON.stringify(other.scene));
});
