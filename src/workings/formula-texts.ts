import { traceFormulaTexts } from './trace-formula-texts.ts';

/**
 * The closed forms behind the numbers of a season, as plain expressions: letters (with an index after an underline), numbers,
 * + - * / ^ and max, min, round, floor, sqrt. They are never run: a test evaluates each and holds it to the function of the
 * model that computes the number, and the build turns each into a formula to look at.
 */
export const formulaTexts = {
  /** Plants an acre: row feet in an acre (43,560 square feet, rows in inches) x seeds a foot x share up. */
  stand: '43560 * 12 / r * s * e',
  seedsSown: '43560 * 12 / r * s * A',
  /** Pounds an acre: plants x bolls x grams. */
  lintYield: 'P * b * g / 453.59237',
  turnout: '100 * L / S',
  seedCottonPerBale: '480 * S / L',
  seedPerBale: '480 * Z / L',
  /** Wet basis. */
  moisture: '100 * w / (w + d)',
  trashTaken: '100 * (1 - F_2 / F_1)',
  modules: 'max(1, round(S / (0.45359237 * m)))',
  personDays: 'S / (0.45359237 * h)',
  machineHours: 'A / a',
  /** To the cent; the price first to the hundredth of a cent. */
  baleValue: 'round(W * max(0, round(100 * B + P) / 100)) / 100',
  seedCredit: 'S * p / 2000',
  ginCharge: 'W / 480 * c',
  classFee: 'n * c',
  pickingPay: 'S / 100 * c',
  crushed: 'M * f',
  crushingLoss: 'M - M * o - M * e - M * h - M * l',
  fibresInSection: '1000 * T / H',
  spinLimit: 'floor(453592.37 / (840 * 0.9144) * 1000 / (n * H))',
  spinLimitRotor: 'floor(min(c, 453592.37 / (840 * 0.9144) * 1000 / (n * H)))',
  randomEvenness: 'f / sqrt(n)',
  evenness: 'max(b * v, (i + a * (s - r)) * v - k * u * p)',
  strengthUse: 'min(h, max(l, (u + a * (L - q) + b * (n - m)) * (1 + g * p)))',
  yarnStrength: 'S * c * z',
  twist: 'k * sqrt(N)',
  fibreEnds: '2 * 10 * n / L',
  micronaire: '(sqrt(max(0, (b / 2)^2 - a * (c - H * M))) - b / 2) / a',
  clothWeight: '(e * (1 + c_1 / 100) * T_1 + p * (1 + c_2 / 100) * T_2) / 25.4',
  knitWeight: 'c * w / (l / 10)^2 * l * T / 100',
  threadCount: 'e + p',
  clothCover: 'K_1 + K_2 - K_1 * K_2 / f',
  meanOfIndex: 'L * U / 100',
  nominalFineness: '1000 * m / 25.4',
  stapleLimit: 'a * L - b * H * 25.4 / 1000 / 28.349523125 - c',
  pliedEvenness: 'v / sqrt(k)',
  washedWeight: 'W / ((1 - l / 100) * (1 - w / 100))',
  stripStrength: 'e * b / 25.4 * T * z * r / 100',
  patch: '1000 / 25.4 * sqrt(A / n)',
  yardsPerBale: 'Y * 480 * 0.45359237 / W',
  ...traceFormulaTexts,
} as const;
export type FormulaId = keyof typeof formulaTexts;
