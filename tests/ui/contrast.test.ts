import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inksOf } from '../../src/style/inks.ts';

const css = readFileSync(new URL('../../src/style/tokens.css', import.meta.url), 'utf8');
const inksIn = (selector: string): Record<string, string> => {
  const body = css.slice(css.indexOf(selector)).split('}')[0]!;
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, ink]) => [name!, ink!]));
};
const day = inksIn(':root');
const projector = { ...day, ...inksIn('html[data-theme="projector"]') };

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (W3C, definitions). */
function contrast(a: string, b: string): number {
  const luminance = (ink: string) => {
    const [r, g, bl] = [1, 3, 5].map((at) => {
      const c = Number.parseInt(ink.slice(at, at + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * bl!;
  };
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

const words: readonly (readonly [string, string])[] = [
  ...['ink', 'indigo', 'mid', 'madder', 'green', 'walnut', 'iron'].flatMap((ink) =>
    ['ground', 'paper'].map((cloth) => [ink, cloth] as const),
  ),
  ['ink', 'weld'],
  ['on-pad', 'indigo'],
  ['on-pad', 'ink'],
  ['chalk-on-pad', 'indigo'],
  ['weld-on-pad', 'indigo'],
  ['lint', 'madder'],
  ['lint', 'walnut'],
];
const graphics: readonly (readonly [string, string])[] = [
  ['mid', 'ground'],
  ['madder', 'ground'],
  ['walnut', 'lint'],
  ['chalk-on-pad', 'ink'],
  ['weld-on-pad', 'ink'],
];

describe('contrast, WCAG 2.2 criteria 1.4.3 and 1.4.11', () => {
  test('the ratio of black on white is 21 (W3C)', () => expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5));
  test.each(words)('%s on %s carries words: 4.5 by day, 7 on the projector', (ink, cloth) => {
    expect(contrast(day[ink]!, day[cloth]!)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(projector[ink]!, projector[cloth]!)).toBeGreaterThanOrEqual(7);
  });
  test.each(graphics)('%s on %s carries needed lines: 3 by day, 4.5 on the projector', (ink, cloth) => {
    expect(contrast(day[ink]!, day[cloth]!)).toBeGreaterThanOrEqual(3);
    expect(contrast(projector[ink]!, projector[cloth]!)).toBeGreaterThanOrEqual(4.5);
  });
});

test('the page and the scenes dip from the same pots', () => {
  const pots = {
    ground: 'cotton',
    'ground-deep': 'calico',
    paper: 'muslin',
    lint: 'lint',
    ink: 'ink',
    indigo: 'indigo',
    mid: 'mid',
    faded: 'faded',
    madder: 'madder',
    rose: 'spentMadder',
    weld: 'weld',
    bronze: 'weldOnIron',
    green: 'bollGreen',
    walnut: 'walnut',
    iron: 'iron',
    thread: 'thread',
  } as const;
  for (const [token, ink] of Object.entries(pots)) {
    expect(day[token], token).toBe(inksOf.day[ink].toLowerCase());
    expect(projector[token], token).toBe(inksOf.projector[ink].toLowerCase());
  }
});

test('styles ask no other host for anything', () => {
  for (const sheet of ['fonts', 'tokens', 'base', 'cloth', 'controls', 'tables', 'figures', 'frame', 'print']) {
    const text = readFileSync(new URL(`../../src/style/${sheet}.css`, import.meta.url), 'utf8');
    expect(text, sheet).not.toMatch(/url\(["']?(https?:|\/\/|data:)/);
  }
});
