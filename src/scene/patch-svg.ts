import type { Theme } from '../style/inks.ts';
import type { DisplayList, Mark } from './display-list.ts';
import { svgMark } from './paint-svg.ts';

/** A place in the drawing where a mark gives way to another. */
interface Change {
  readonly mark: Mark | undefined;
  readonly parent: Element;
  /** What the new mark comes before. */
  readonly at: Element | null;
  readonly gone: readonly Element[];
}

/** How many elements a mark is drawn with, side by side: paths that close themselves, or one group or text. */
const elementsOf = (mark: Mark, theme: Theme): number =>
  mark.kind === 'group' || mark.kind === 'text' ? 1 : svgMark(mark, theme).split('/>').length - 1;

const sameMark = (before: Mark, after: Mark, theme: Theme): boolean =>
  before === after || (before.kind === after.kind && svgMark(before, theme) === svgMark(after, theme));

function changesIn(parent: Element, before: DisplayList, after: DisplayList, theme: Theme): Change[] {
  const changes: Change[] = [];
  let at = parent.firstElementChild;
  for (let i = 0; i < Math.max(before.length, after.length); i++) {
    const [was, is] = [before[i], after[i]];
    if (was?.kind === 'group' && is?.kind === 'group' && was.name === is.name && was.count === is.count && at) {
      if (was !== is) changes.push(...changesIn(at, was.marks, is.marks, theme));
      at = at.nextElementSibling;
      continue;
    }
    const first = at;
    const drawn: Element[] = [];
    for (let left = was ? elementsOf(was, theme) : 0; left > 0 && at; left--) {
      drawn.push(at);
      at = at.nextElementSibling;
    }
    if (!(was && is && sameMark(was, is, theme))) changes.push({ mark: is, parent, at: first, gone: drawn });
  }
  return changes;
}

/**
 * Turns the drawing of one display list into that of another, and touches only the elements of marks that are others: while time
 * runs, a few of some hundred are.
 * @param root holds what `paintSvg` made of `before`, and nothing else
 * @param theme of both
 */
export function patchSvg(root: Element, before: DisplayList, after: DisplayList, theme: Theme): void {
  const changes = changesIn(root, before, after, theme);
  // All in one: to read many small drawings takes longer than one of their size.
  const parsed = root.ownerDocument.createElementNS('http://www.w3.org/2000/svg', 'g');
  parsed.innerHTML = changes.map(({ mark }) => (mark ? svgMark(mark, theme) : '')).join('');
  for (const { mark, parent, at } of changes)
    for (let left = mark ? elementsOf(mark, theme) : 0; left > 0; left--)
      parent.insertBefore(parsed.firstElementChild!, at);
  for (const { gone } of changes) for (const element of gone) element.remove();
}
