/** What every painter agrees on. */
export const TEXT_FACE = 'Seam Text';
export const DISPLAY_FACE = 'Seam Display';
/** Shadows are hard and walnut-dark; thread sinks a little into the cloth. */
export const SHADE = { color: '#2b1d12', underCloth: 0.26, underThread: 0.22 } as const;
export const GRAIN_LIGHT = { color: '#ffffff', alpha: 0.11 } as const;
export const GRAIN_DARK = { color: '#000000', alpha: 0.055 } as const;

/** The light stands at the upper left: a shadow falls right and down. */
export const shadowOffset = (height: number): readonly [number, number] => [
  Math.round(height * 7) / 10,
  Math.round(height * 10) / 10,
];
