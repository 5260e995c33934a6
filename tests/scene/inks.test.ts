import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  contrastRatio,
  graphicInks,
  type InkName,
  inkOnPad,
  inksOf,
  relativeLuminance,
  type Theme,
  textInks,
} from '../../src/style/inks.ts';

describe('contrast, as WCAG 2.2 defines it', () => {
  test('black on white is 21 to 1, and a colour on itself 1 to 1 — WCAG 2.2, contrast ratio', () => {
    expect(contrastRatio('#000000', '#FFFFFF')).toBeCloseTo(21, 10);
    expect(contrastRatio('#A5382A', '#A5382A')).toBe(1);
  });
  test('#767676 is the lightest grey that passes 4.5 on white and #777777 just fails — W3C, G18 worked example', () => {
    expect(contrastRatio('#767676', '#FFFFFF')).toBeGreaterThanOrEqual(4.5);
    expect(contrastRatio('#777777', '#FFFFFF')).toBeLessThan(4.5);
  });
  test('relative luminance of the primaries are the sRGB weights — IEC 61966-2-1', () => {
    expect(relativeLuminance('#FF0000')).toBeCloseTo(0.2126, 10);
    expect(relativeLuminance('#00FF00')).toBeCloseTo(0.7152, 10);
    expect(relativeLuminance('#0000FF')).toBeCloseTo(0.0722, 10);
  });
});

const themes: [Theme, number][] = [
  ['day', 4.5],
  ['projector', 7],
];
describe.each(themes)('the %s inks', (theme, least) => {
  const inks = inksOf[theme];
  test.each(textInks)(`%s carries words on cotton and muslin at ${least} to 1 — WCAG 2.2, 1.4.3 and 1.4.6`, (ink) => {
    expect(contrastRatio(inks[ink], inks.cotton)).toBeGreaterThanOrEqual(least);
    expect(contrastRatio(inks[ink], inks.muslin)).toBeGreaterThanOrEqual(least);
  });
  test.each(graphicInks)('%s stands alone on cotton at 3 to 1 — WCAG 2.2, 1.4.11', (ink) => {
    expect(contrastRatio(inks[ink], inks.cotton)).toBeGreaterThanOrEqual(3);
  });
  test.each(Object.entries(inkOnPad) as [InkName, InkName][])(`on %s words are sewn in %s`, (pad, ink) => {
    expect(contrastRatio(inks[ink], inks[pad])).toBeGreaterThanOrEqual(theme === 'day' ? 4.5 : 4.5);
  });
  test('the edges that hold pale pieces reach 3 to 1 on the piece and on the page — WCAG 2.2, 1.4.11', () => {
    for (const [edge, cloth] of [
      ['mid', 'lint'],
      ['mid', 'fadedThin'],
      ['walnut', 'weld'],
      ['iron', 'muslin'],
    ] as const)
      expect(contrastRatio(inks[edge], inks[cloth]), `${edge} round ${cloth}`).toBeGreaterThanOrEqual(3);
  });
});

test('weld, lint and the faded indigos never carry words', () => {
  for (const pale of ['weld', 'lint', 'faded', 'fadedPale', 'fadedThin', 'blush'] as const)
    expect(textInks).not.toContain(pale);
});

test('pictures and page are dyed in the same pots: the style sheet names the same colours', () => {
  const css = readFileSync(new URL('../../src/style/tokens.css', import.meta.url), 'utf8');
  const [day, projector] = css.split('html[data-theme="projector"]');
  const shared: [string, InkName][] = [
    ['ground', 'cotton'],
    ['paper', 'muslin'],
    ['lint', 'lint'],
    ['ink', 'ink'],
    ['indigo', 'indigo'],
    ['mid', 'mid'],
    ['faded', 'faded'],
    ['madder', 'madder'],
    ['weld', 'weld'],
    ['green', 'bollGreen'],
    ['walnut', 'walnut'],
    ['iron', 'iron'],
  ];
  for (const [token, ink] of shared) {
    const value = (text: string | undefined) =>
      text?.match(new RegExp(`--${token}: (#[0-9a-f]{6})`, 'i'))?.[1]?.toUpperCase();
    expect(value(day), `--${token}, day`).toBe(inksOf.day[ink].toUpperCase());
    expect(value(projector), `--${token}, projector`).toBe(inksOf.projector[ink].toUpperCase());
  }
});
