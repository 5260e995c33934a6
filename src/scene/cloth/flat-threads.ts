import type { InkName } from '../../style/inks.ts';
import type { Mark, Stitch } from '../display-list.ts';

/** Threads of one ink and width, px, without a shadow of their own: where they cross, the later lies on the earlier. */
export const flatThreads = (stitches: readonly Stitch[], ink: InkName, width: number): Mark => ({
  kind: 'stitches',
  stitches,
  ink,
  width,
  flat: true,
});
