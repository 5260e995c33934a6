import type { StationId } from '../../../model/station.ts';
import type { Asked } from '../../../workings/work-out.ts';
import type { TwinRow } from './picture.ts';

/** What a value of a picture asks to be explained; null where there is nothing to explain. */
export function seenAsked(station: StationId, { key, text, steps, after }: TwinRow): Asked | null {
  if ('reading' in steps) return { topic: 'reading', station, key: steps.reading };
  if (steps.length === 0) return null;
  return { topic: 'seen', at: `${station}/row/${key}`, text, steps, ...(after ? { after } : {}) };
}
