import { Window } from 'happy-dom';
import { describe, expect, test } from 'vitest';
import { type DisplayList, group } from '../../src/scene/display-list.ts';
import { paintSvg } from '../../src/scene/paint-svg.ts';
import { quiltMarks } from '../../src/scene/quilt/quilt.ts';
import { frameAtRest } from '../../src/scene/scene-frame.ts';
import { inksOf } from '../../src/style/inks.ts';
import { chainStations, sampleFrame } from './sample-frames.ts';

const parse = (svg: string) => {
  const window = new Window();
  const parsed = new window.DOMParser().parseFromString(svg, 'image/svg+xml');
  return parsed.documentElement;
};
const size = { width: 860, height: 560 };
const pictures: [string, DisplayList][] = [
  ['the quilt', quiltMarks({ layout: 'landscape', box: { x: 0, y: 0, ...size }, stateOf: () => 'sewn' })],
  ...chainStations.map((id): [string, DisplayList] => [id, frameAtRest(sampleFrame(id, size)!)]),
];

describe.each(pictures)('%s as SVG', (_name, list) => {
  const svg = paintSvg(list, { ...size, theme: 'day' });
  test('parses as XML and holds as many paths as it says', () => {
    const root = parse(svg);
    expect(root.tagName.toLowerCase()).toBe('svg');
    expect(root.querySelectorAll('path').length).toBe(svg.split('<path').length - 1);
    expect(root.querySelector('parsererror')).toBeNull();
  });
  test('needs no loose content policy: no style attribute, no script, no address', () => {
    expect(svg).not.toMatch(/ style=|<style|<script|href=|url\(/);
  });
  test('holds no number that is not one', () => {
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
});

test('groups carry the quantity they show and its count', () => {
  const root = parse(paintSvg([group('greenBolls', [], 7)], { ...size, theme: 'day' }));
  const found = root.querySelector('g')!;
  expect(found.getAttribute('data-name')).toBe('greenBolls');
  expect(found.getAttribute('data-count')).toBe('7');
});

test('words are escaped, and a title names the picture for whoever cannot see it', () => {
  const list: DisplayList = [
    { kind: 'text', text: 'seed & <lint>', x: 1, y: 2, size: 16, ink: 'ink', anchor: 'start' },
  ];
  const svg = paintSvg(list, { ...size, theme: 'day', title: 'A "stand" & its bands' });
  expect(svg).toContain('seed &amp; &lt;lint&gt;');
  expect(svg).toContain('aria-label="A &quot;stand&quot; &amp; its bands"');
  expect(parse(svg).querySelector('text')?.textContent).toBe('seed & <lint>');
});

test('the theme decides what an ink is', () => {
  const list: DisplayList = [{ kind: 'stitches', stitches: [[0, 0, 5, 5]], ink: 'madder', width: 2 }];
  expect(paintSvg(list, { ...size, theme: 'day' })).toContain(inksOf.day.madder);
  expect(paintSvg(list, { ...size, theme: 'projector' })).toContain(inksOf.projector.madder);
  // Thread is half as thick again on the projector.
  expect(paintSvg(list, { ...size, theme: 'projector' })).toContain('stroke-width="3"');
});
