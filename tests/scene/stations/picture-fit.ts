import { expect } from 'vitest';
import { textWidth } from '../../../src/scene/cloth/letter-widths.ts';
import { type DisplayList, flatMarks, type TextMark } from '../../../src/scene/display-list.ts';
import { frameAtRest, pieceAt, type SceneFrame } from '../../../src/scene/scene-frame.ts';
import { inkOnPad, textInks } from '../../../src/style/inks.ts';

/** Width of words as their letters are in their face. */
const widthOf = (mark: TextMark): number => textWidth(mark.text, mark.size, mark);

/** Left and right end of a text. */
function endsOf(mark: TextMark): readonly [from: number, to: number] {
  const width = widthOf(mark);
  const from = mark.anchor === 'start' ? mark.x : mark.anchor === 'end' ? mark.x - width : mark.x - width / 2;
  return [from, from + width];
}

const textsOf = (list: DisplayList): TextMark[] =>
  [...flatMarks(list)].filter((mark): mark is TextMark => mark.kind === 'text');

/** Inks that may carry words: on the page, or on a pad. */
const wordInks: ReadonlySet<string> = new Set([...textInks, ...Object.values(inkOnPad)]);

/** Every mark, piece and word of a frame lies inside its picture, no word lies on another, and all are big enough to read. */
export function expectToFit(frame: SceneFrame, what: string): void {
  const list = frameAtRest(frame);
  const overhang = 12;
  const stays = (x: number, y: number) => {
    const inside = x > -overhang && y > -overhang && x < frame.width + overhang && y < frame.height + overhang;
    if (!inside) expect.fail(`${what}: a mark at ${x.toFixed(0)}, ${y.toFixed(0)} lies outside`);
  };
  for (const mark of flatMarks(list)) {
    if (mark.kind === 'patch') for (const [x, y] of mark.points) stays(x, y);
    if (mark.kind === 'stitches')
      for (const [x0, y0, x1, y1] of mark.stitches) {
        stays(x0, y0);
        stays(x1, y1);
      }
  }
  const texts = textsOf(list);
  // Thousands of words: a plain comparison, and an expectation where it fails.
  const check = (holds: boolean, text: TextMark, fault: string) => {
    if (!holds) expect.fail(`${what}: "${text.text}" ${fault}`);
  };
  for (const text of texts) {
    const [from, to] = endsOf(text);
    check(from >= 0, text, `begins at ${from.toFixed(0)}`);
    check(to <= frame.width, text, `ends at ${to.toFixed(0)} of ${frame.width}`);
    check(text.y - text.size * 0.8 >= -1, text, 'is cut above');
    check(text.y + text.size * 0.25 <= frame.height, text, 'is cut below');
    check(text.size >= (frame.width < 460 ? 13 : 14), text, 'is too small');
    check(wordInks.has(text.ink), text, `in ${text.ink}`);
  }
  texts.forEach((one, i) => {
    for (const other of texts.slice(i + 1)) {
      const apart = Math.abs(one.y - other.y) >= Math.min(one.size, other.size) * 0.9;
      const [a, b] = [endsOf(one), endsOf(other)];
      if (!apart && a[0] < b[1] - 2 && b[0] < a[1] - 2) expect.fail(`${what}: "${one.text}" lies on "${other.text}"`);
    }
  });
  for (const piece of frame.moving)
    for (const seconds of [0, 0.7, 1.9]) {
      const [x, y] = pieceAt(piece, seconds, frame.lapSeconds);
      if (x < 0 || y < 0 || x > frame.width || y > frame.height)
        expect.fail(`${what}: ${piece.name} leaves the picture`);
    }
}
