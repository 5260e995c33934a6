// @vitest-environment happy-dom
import { afterEach, expect, test } from 'vitest';
import { keepNumberStops } from '../../src/ui/number-stops.ts';

const number = (name: string) => `<button class="working-number" id="${name}">1</button>`;
const page = `<main>
  <section>${number('a')}${number('b')}<table><tr><td>${number('c')}</td><td>${number('d')}</td></tr></table></section>
  <dl><dd>${number('e')}</dd></dl>
</main>`;

let end = () => {};
afterEach(() => end());
function open(): (name: string) => HTMLElement {
  document.body.innerHTML = page;
  end = keepNumberStops(document.body);
  return (name) => document.getElementById(name)!;
}
const stops = () =>
  [...document.querySelectorAll<HTMLElement>('.working-number')]
    .filter(({ tabIndex }) => tabIndex === 0)
    .map(({ id }) => id);
const press = (key: string, more: KeyboardEventInit = {}) => {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more });
  document.activeElement!.dispatchEvent(event);
  return event;
};

test('each group is one stop, and a table within a section is a group of its own', () => {
  open();
  expect(stops()).toEqual(['a', 'c', 'e']);
});

test('arrows, Home and End go among the numbers of a group and no further, and the Tab key comes back to the last', () => {
  const at = open();
  at('c').focus();
  expect(press('ArrowRight').defaultPrevented).toBe(true);
  expect(document.activeElement!.id).toBe('d');
  press('ArrowDown');
  expect(document.activeElement!.id).toBe('d');
  expect(stops()).toEqual(['a', 'd', 'e']);
  press('Home');
  expect(document.activeElement!.id).toBe('c');
  press('End');
  expect(document.activeElement!.id).toBe('d');
  press('ArrowLeft');
  expect(document.activeElement!.id).toBe('c');
});

test('other keys, and arrows with Alt, are left to the browser', () => {
  const at = open();
  at('a').focus();
  expect(press('Enter').defaultPrevented).toBe(false);
  expect(press('ArrowLeft', { altKey: true }).defaultPrevented).toBe(false);
  expect(document.activeElement!.id).toBe('a');
});

test('a number that comes later joins its group, and when the stop goes away another takes its place', async () => {
  const at = open();
  at('d').focus();
  at('c').insertAdjacentHTML('afterend', number('late'));
  await new Promise((done) => setTimeout(done, 20));
  expect(at('late').tabIndex).toBe(-1);
  at('d').remove();
  await new Promise((done) => setTimeout(done, 20));
  expect(stops()).toEqual(['a', 'c', 'e']);
});
