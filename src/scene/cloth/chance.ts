/** Uniform numbers in [0, 1), always the same for the same name. */
export type Chance = () => number;

/**
 * Chance for drawing, keyed by the name of the piece, so that a piece is cut the same way in every frame, on every
 * machine and in print. Separate from the model's streams: a picture never moves a number.
 * Names are hashed (FNV-1a), then stepped by a Weyl sequence whose values are mixed (the finaliser of MurmurHash3).
 */
export function chanceOf(name: string): Chance {
  let state = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) state = Math.imul(state ^ name.charCodeAt(i), 0x01000193);
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 0x1_0000_0000;
  };
}

/** A number from -half to +half. */
export const spread = (chance: Chance, half: number): number => (chance() * 2 - 1) * half;
