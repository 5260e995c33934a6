const numbers = '.working-number';
const groups = 'table, dl, details, section, main';

const groupOf = (number: Element): Element | null => number.closest(groups);
const numbersOf = (group: Element): HTMLElement[] =>
  [...group.querySelectorAll<HTMLElement>(numbers)].filter((number) => groupOf(number) === group);

/** One number of a group is a stop of the Tab key, the rest are reached from it. */
function makeOneStop(group: Element, wanted?: HTMLElement): void {
  const all = numbersOf(group);
  const stop = wanted ?? all.find(({ dataset }) => dataset.stop === 'here') ?? all[0];
  for (const number of all) {
    const isStop = number === stop;
    // The attributes: to ask for tabIndex itself would have the browser work the page's styles out, number by number.
    setWhereOther(number, 'tabindex', isStop ? '0' : '-1');
    setWhereOther(number, 'data-stop', isStop && all.length > 1 ? 'here' : null);
  }
}

function setWhereOther(element: HTMLElement, name: string, value: string | null): void {
  if (element.getAttribute(name) === value) return;
  if (value === null) element.removeAttribute(name);
  else element.setAttribute(name, value);
}

const holdsNumber = (node: Node): boolean =>
  node instanceof Element && (node.matches(numbers) || node.querySelector(numbers) !== null);

/** Where an arrow leads among so many numbers; null for any other key. */
function placeAfter(key: string, at: number, count: number): number | null {
  if (key === 'ArrowRight' || key === 'ArrowDown') return Math.min(at + 1, count - 1);
  if (key === 'ArrowLeft' || key === 'ArrowUp') return Math.max(at - 1, 0);
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : null;
}

/**
 * Makes the numbers of each table, list or section one stop of the Tab key, with arrows, Home and End to go among them: a page
 * whose every number opens its working would otherwise take two hundred stops to cross.
 * @param root the page whose numbers these are, now and later
 * @returns ends it
 */
export function keepNumberStops(root: HTMLElement): () => void {
  const settle = () => {
    for (const group of new Set([...root.querySelectorAll(numbers)].map(groupOf))) if (group) makeOneStop(group);
  };
  const onKey = (event: KeyboardEvent) => {
    const number = event.target instanceof HTMLElement && event.target.matches(numbers) ? event.target : null;
    const group = number && groupOf(number);
    if (!group || event.altKey || event.ctrlKey || event.metaKey) return;
    const all = numbersOf(group);
    const to = placeAfter(event.key, all.indexOf(number), all.length);
    if (to === null) return;
    event.preventDefault();
    all[to]!.focus();
  };
  const onFocus = ({ target }: FocusEvent) => {
    if (!(target instanceof HTMLElement && target.matches(numbers))) return;
    const group = groupOf(target);
    if (group) makeOneStop(group, target);
  };
  let waiting = 0;
  const watcher = new MutationObserver((changes) => {
    if (waiting !== 0) return;
    if (!changes.some(({ addedNodes, removedNodes }) => [...addedNodes, ...removedNodes].some(holdsNumber))) return;
    // A task of its own: what brought the numbers has done enough in its own.
    waiting = window.setTimeout(() => {
      waiting = 0;
      settle();
    });
  });
  settle();
  watcher.observe(root, { childList: true, subtree: true });
  root.addEventListener('keydown', onKey);
  root.addEventListener('focusin', onFocus);
  return () => {
    watcher.disconnect();
    window.clearTimeout(waiting);
    root.removeEventListener('keydown', onKey);
    root.removeEventListener('focusin', onFocus);
  };
}
