import type { Words } from '../../../language/words.ts';
import { MM_PER_INCH } from '../../../model/units.ts';

/** The thickness of a thread: ten-thousandths of an inch, or hundredths of a millimeter. */
export function thicknessText(mm: number, { formats, unitSystem, messages }: Words): string {
  const us = unitSystem === 'us';
  const number = us ? formats.number(mm / MM_PER_INCH, 4) : formats.number(mm, 2);
  return `${number}\u00a0${us ? messages.units.inches.sign : messages.units.millimetres.sign}`;
}
