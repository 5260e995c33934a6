import type { Theme } from '../style/inks.ts';
import type { DisplayList, Mark } from './display-list.ts';
import { svgMark } from './paint-svg.ts';

/** How many elements a mark is drawn with, side by side: paths that close themselves, or one group or text. */
const elementsOf = (mark: Mark, theme: Theme): number =>
  mark.kind === 'group' || mark.kind === 'text' ? 1 : svgMark(mark, theme).split('/>').length - 1;

const sameMark = (before: Mark, after: Mark, theme: Theme): boolean =>
  before === after || (before.kind === after.kind && svgMark(before, theme) === svgMark(after, theme));

/**
 * Turns the drawing of one display list into that of another, and touches only the elements of marks that are others: while time
 * runs, a few of some hundred are.
 * @param parent holds what `paintSvg` made of `before`, and nothing else
 * @param theme of both
 */
export function patchSvg(parent: Element, before: DisplayList, after: DisplayList, theme: Theme): void {
  let at = parent.firstElementChild;
  for (let i = 0; i < Math.max(before.length, after.length); i++) {
    const [was, is] = [before[i], after[i]];
    if (was?.kind === 'group' && is?.kind === 'group' && was.name === is.name && was.count === is.count && at) {
      if (was !== is) patchSvg(at, was.marks, is.marks, theme);
      at = at.nextElementSibling;
      continue;
    }
    const keeps = was !== undefined && is !== undefined && sameMark(was, is, theme);
    for (let left = was ? elementsOf(was, theme) : 0; left > 0; left--) {
      const next: Element | null = at?.nextElementSibling ?? null;
      if (!keeps) at?.remove();
      at = next;
    }
    if (!keeps && is) parent.insertBefore(drawn(is, theme, parent.ownerDocument), at);
  }
}

function drawn(mark: Mark, theme: Theme, page: Document): DocumentFragment {
  const parsed = page.createElementNS('http://www.w3.org/2000/svg', 'g');
  parsed.innerHTML = svgMark(mark, theme);
  const fragment = page.createDocumentFragment();
  fragment.append(...parsed.childNodes);
  return fragment;
}
