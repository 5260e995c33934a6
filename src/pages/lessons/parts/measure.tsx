import { makeWords, useWords } from '../../../language/words.ts';
import { useLesson } from '../lesson-frame.ts';

export interface MeasureProps {
  readonly value: number;
  /** in, yd, oz, or seam: inches of a seam allowance. */
  readonly unit: string;
}

const centimetresPerInch = 2.54;
const gramsPerOunce = 28.35;
const metresPerYard = 0.9144;

/** Steps of a home measure: half centimeters for the small, whole ones above. */
const toNearest = (value: number, step: number): number => Math.round(value / step) * step;

/** A measure to take oneself, in round numbers of the reader's units: an instruction, not a claim. */
export function Measure({ value, unit }: MeasureProps) {
  const { formats, language, messages, unitSystem } = useWords();
  const { still } = useLesson();
  const { units } = messages;
  const us: Record<string, string> = {
    seam: makeWords(language, 'us', messages).formats.seam(value).text,
    in: `${value}\u00a0${units.inches.sign}`,
    yd: formats.plural(value, units.yards.name),
    oz: `${value}\u00a0${units.ounces.sign}`,
  };
  const cm = value * centimetresPerInch;
  const metric: Record<string, string> = {
    seam: makeWords(language, 'metric', messages).formats.seam(value).text,
    in: `${formats.number(toNearest(cm, cm < 10 ? 0.5 : 1), cm < 10 && toNearest(cm, 0.5) % 1 ? 1 : 0)}\u00a0${units.centimetres.sign}`,
    yd: `${formats.number(value * metresPerYard, 1)}\u00a0${units.metres.sign}`,
    oz: `${formats.number(toNearest(value * gramsPerOunce, 5), 0)}\u00a0${units.grams.sign}`,
  };
  const text = us[unit];
  if (text === undefined) throw new RangeError(`no measure in ${unit}`);
  const shown = still ? `${text} (${metric[unit]})` : unitSystem === 'us' ? text : metric[unit];
  return <span class="measure">{shown}</span>;
}
