const ladder = [1, 2, 5] as const;

/**
 * How many things one drawn thing stands for, so that no more than a number of them are drawn: 1, 2, 5, 10, 20, 50 and so on.
 * @param most how many may be drawn
 */
export function standsFor(count: number, most: number): number {
  for (let power = 1; ; power *= 10) {
    for (const step of ladder) if (count / (step * power) <= most) return step * power;
  }
}

/** A length for a rule: the longest of 1, 2, 5, 10 and so on, or of their tenths, that is no longer than a room. */
export function ruleLength(room: number): number {
  const power = 10 ** Math.floor(Math.log10(room));
  return power * (ladder.filter((step) => step * power <= room).at(-1) ?? 1);
}
