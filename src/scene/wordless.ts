import { boundsOf, isInside } from './cloth/point.ts';
import { type DisplayList, flatMarks, type Mark, type PatchMark, type TextMark } from './display-list.ts';
import type { SceneFrame } from './scene-frame.ts';

/** A pad for words takes up no more of the picture than this. */
const mostOfPicture = 0.3;
/** Pads are cut from these; what is cut from another cloth is a thing of its own. */
const padInks: readonly string[] = ['muslin', 'lint', 'calico', 'thread'];

/** Lists that were seen, by list: what stands still stays the same object, so that it is not painted anew. */
const kept = new WeakMap<DisplayList, DisplayList>();

const holds = (pad: PatchMark, { x, y, size }: TextMark): boolean =>
  isInside([x, y - size * 0.35], pad.points) ||
  isInside([x + 2, y - size * 0.35], pad.points) ||
  isInside([x - 2, y - size * 0.35], pad.points);

function withoutWords(list: DisplayList, texts: readonly TextMark[], areaPx: number): DisplayList {
  const known = kept.get(list);
  if (known) return known;
  const left = list.flatMap((mark): Mark[] => {
    if (mark.kind === 'text') return [];
    if (mark.kind === 'group') return [{ ...mark, marks: withoutWords(mark.marks, texts, areaPx) }];
    if (mark.kind !== 'patch' || !padInks.includes(mark.ink)) return [mark];
    const { width, height } = boundsOf(mark.points);
    const isPad = width * height < areaPx * mostOfPicture && texts.some((text) => holds(mark, text));
    return isPad ? [] : [mark];
  });
  kept.set(list, left);
  return left;
}

/** A picture without its words and the pads they were sewn on, for places where words stand beside it in a size of their own. */
export function wordlessFrame(frame: SceneFrame): SceneFrame {
  const texts = [...flatMarks(frame.still), ...flatMarks(frame.over)].filter((mark) => mark.kind === 'text');
  const areaPx = frame.width * frame.height;
  return {
    ...frame,
    still: withoutWords(frame.still, texts, areaPx),
    over: withoutWords(frame.over, texts, areaPx),
  };
}
