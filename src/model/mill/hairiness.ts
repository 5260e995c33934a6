const mmPerCm = 10;

/** Fibre ends in a centimetre of yarn: each fibre has two, so 2 n / mean length by number. Every hair starts at an end. */
export const fibreEndsPerCm = (fibres: number, meanLengthMm: number): number => (2 * fibres * mmPerCm) / meanLengthMm;
