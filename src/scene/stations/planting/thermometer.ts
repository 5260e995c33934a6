import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule, notchMarks } from '../../cloth/ruler.ts';
import { group, type Mark } from '../../display-list.ts';

/** A strip of temperature that hangs from the top of the picture to the soil. */
export interface ThermometerScale {
  readonly lowF: number;
  readonly highF: number;
  /** Heat counts from here, °F. */
  readonly baseF: number;
  readonly ticks: readonly { readonly fahrenheit: number; readonly text?: string }[];
}

export interface DayWarmth {
  readonly minF: number;
  readonly maxF: number;
  /** Heat units of the day: its mean above the base. */
  readonly dd60: number;
}

/** Where a temperature lies on the strip, y. */
const yOf = ({ lowF, highF }: ThermometerScale, box: Box, fahrenheit: number): number => {
  const share = (Math.min(highF, Math.max(lowF, fahrenheit)) - lowF) / (highF - lowF);
  return box.y + box.height * (0.96 - 0.9 * share);
};

/** The strip with its ticks, and a notch where heat begins to count. */
export function thermometerMarks(scale: ThermometerScale, box: Box, textPx: number): Mark[] {
  const foot = yOf(scale, box, scale.lowF);
  const edge = box.x + box.width - textPx * 1.1;
  return [
    patch('thermometer', rectangle(box.x, box.y, box.width, box.height), 'muslin', {
      shadow: 2.6,
      seam: 0,
      grain: null,
      scissors: { miss: 0.8, snip: 160, bow: 0.002 },
    }),
    ...chalkRule(
      [edge, foot],
      foot - yOf(scale, box, scale.highF),
      scale.ticks.map(({ fahrenheit, text }) => {
        const at = foot - yOf(scale, box, fahrenheit);
        return text === undefined ? { at } : { at, text };
      }),
      { direction: 'up', ink: 'ink', size: textPx },
    ),
    ...notchMarks('thermometer/base', [box.x + box.width + 9, yOf(scale, box, scale.baseF)], 'right', 'madder'),
  ];
}

/** The day's span from its low to its high, and in weld what its mean stands above the base: the heat that counts. */
export function warmthMarks(scale: ThermometerScale, box: Box, day: DayWarmth, textPx: number): Mark {
  const left = box.x + box.width - textPx * 1.1;
  const [low, high] = [yOf(scale, box, day.minF), yOf(scale, box, day.maxF)];
  const base = yOf(scale, box, scale.baseF);
  const mean = yOf(scale, box, scale.baseF + day.dd60);
  const flat = { seam: 0, grain: null, scissors: { miss: 0.4, snip: 60, bow: 0.002 } } as const;
  const marks: Mark[] = [
    patch('warmth/span', rectangle(left + textPx * 0.22, high, textPx * 0.4, Math.max(1, low - high)), 'madder', {
      shadow: 1.2,
      ...flat,
    }),
  ];
  if (base - mean > 1)
    marks.push(
      patch('warmth/heat', rectangle(left, mean, textPx * 0.84, base - mean), 'weld', { shadow: 1.2, ...flat }),
      {
        kind: 'stitches',
        stitches: [
          [left, mean, left + textPx * 0.84, mean],
          [left, base, left + textPx * 0.84, base],
        ],
        ink: 'walnut',
        width: 1.4,
        flat: true,
      },
    );
  return group('warmth', marks, Math.round(day.dd60));
}
