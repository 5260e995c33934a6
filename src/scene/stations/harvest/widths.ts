import { widthOf } from '../flow/account-bands.ts';
import { entryOf } from '../flow/labelled-entry.ts';
import type { HarvestRoom } from './harvest-input.ts';

/** Widths of the bands that come in at the row and of the one that goes on, px. */
export const widthsOf = ({ input, scale }: HarvestRoom) => ({
  grown: widthOf(entryOf(input.inflow, 'grown'), scale),
  along: widthOf(entryOf(input.inflow, 'takenAlong'), scale),
  lot: widthOf(entryOf(input.outflow, 'lot'), scale),
});
