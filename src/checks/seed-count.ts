/** Seasons behind a mean: seeds 1 to this. */
export const seedCount = 40;
