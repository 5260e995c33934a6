/**
 * The inks. Every colour on screen is one of these names; a theme says what the name means. Dyes are named after the
 * pots a cotton dyer has used for centuries: indigo, madder, weld, walnut, and iron to sadden them.
 */
export type InkName = keyof typeof dayInks;
export type Theme = 'day' | 'projector';

const dayInks = {
  /** Unbleached cotton: the page. */
  cotton: '#EEE4CF',
  /** A second and a third unbleached cloth, for pieced grounds. */
  calico: '#E2D4B6',
  muslin: '#F8F2E4',
  lint: '#FDFAF1',
  /** Thread on dark cloth. */
  thread: '#F6EEDC',
  ink: '#1B2748',
  indigo: '#22356A',
  indigoWarm: '#2B4279',
  mid: '#43649C',
  faded: '#9DB3CE',
  fadedPale: '#B5C5D8',
  fadedThin: '#CAD5DF',
  madder: '#A5382A',
  spentMadder: '#B5685A',
  blush: '#DFA99A',
  weld: '#E0A92E',
  weldPale: '#EFCC73',
  weldOnIron: '#8E640C',
  bollGreen: '#496A34',
  leafGreen: '#5E8042',
  youngGreen: '#8DA25D',
  walnut: '#6B4529',
  walnutWarm: '#7D5535',
  walnutPale: '#B4946C',
  iron: '#2F2724',
  chalk: '#5F81A8',
  /** Threads that only quilt the ground: never data. */
  quilting: '#CDBC98',
} as const;

const projectorInks: Readonly<Record<keyof typeof dayInks, string>> = {
  cotton: '#FFFDF6',
  calico: '#EFE8D6',
  muslin: '#FFFFFF',
  lint: '#FFFFFF',
  thread: '#FFFFFF',
  ink: '#0D1530',
  indigo: '#152A66',
  indigoWarm: '#1D3674',
  mid: '#27498A',
  faded: '#6284B4',
  fadedPale: '#8BA6C9',
  fadedThin: '#AEC1DA',
  madder: '#861F15',
  spentMadder: '#8A4034',
  blush: '#C97F6E',
  weld: '#F0B01C',
  weldPale: '#F7CE63',
  weldOnIron: '#664500',
  bollGreen: '#2A4A1B',
  leafGreen: '#3C6129',
  youngGreen: '#6F8B3B',
  walnut: '#4B2C15',
  walnutWarm: '#5E3B20',
  walnutPale: '#94704A',
  iron: '#1C1613',
  chalk: '#3D628F',
  quilting: '#D8CBAE',
};

export const inksOf: Readonly<Record<Theme, Readonly<Record<InkName, string>>>> = {
  day: dayInks,
  projector: projectorInks,
};

/** Inks that may carry words on the page: 4.5 to 1 on cotton by day, 7 to 1 on the projector's bleached ground. */
export const textInks = ['ink', 'indigo', 'mid', 'madder', 'bollGreen', 'walnut', 'iron'] as const;

/** Inks that may stand alone as a shape or a line on the page: 3 to 1. Every other cloth needs an edge of one of these. */
export const graphicInks = [
  ...textInks,
  'weldOnIron',
  'indigoWarm',
  'spentMadder',
  'leafGreen',
  'walnutWarm',
  'chalk',
] as const;

/** Pads words may be sewn on, with the ink that reads there. */
export const inkOnPad = {
  lint: 'ink',
  muslin: 'ink',
  calico: 'ink',
  weld: 'ink',
  faded: 'ink',
  fadedPale: 'ink',
  indigo: 'lint',
  ink: 'lint',
  madder: 'lint',
  walnut: 'lint',
  bollGreen: 'lint',
  iron: 'lint',
} as const satisfies Partial<Record<InkName, InkName>>;

/** Stitches on the projector are half as thick again, so that the back row sees them. */
export const threadScaleOf: Readonly<Record<Theme, number>> = { day: 1, projector: 1.5 };

/** Relative luminance of an sRGB colour, 0 to 1, as WCAG 2.2 defines it. */
export function relativeLuminance(hex: string): number {
  const channel = (from: number) => {
    const value = Number.parseInt(hex.slice(from, from + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** Contrast ratio of two sRGB colours, 1 to 21, as WCAG 2.2 defines it. */
export function contrastRatio(one: string, other: string): number {
  const a = relativeLuminance(one);
  const b = relativeLuminance(other);
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
