import { type DisplayList, flatMarks, group, type Mark } from '../display-list.ts';

/** Marks in one part at most: a browser styles and paints so many in a few milliseconds. */
const most = 120;

const countOf = (list: DisplayList): number => [...flatMarks(list)].length;

/**
 * Cuts a picture into parts short enough to be painted each in a task of its own. Laid one over the other in their order they
 * are the picture; a group that is cut keeps its name in each part, and its count in the first.
 */
export function shortParts(list: DisplayList): Mark[] {
  return list.flatMap((mark): Mark[] => {
    if (mark.kind !== 'group' || countOf([mark]) <= most) return [mark];
    const runs: Mark[][] = [];
    for (const part of shortParts(mark.marks)) {
      const last = runs.at(-1);
      if (last && countOf([...last, part]) <= most) last.push(part);
      else runs.push([part]);
    }
    return runs.map((run, at) => group(mark.name, run, at === 0 ? mark.count : undefined));
  });
}
