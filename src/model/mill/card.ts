import type { Fibre } from '../fibre.ts';
import { breakByLength } from '../length/breakage.ts';
import { machineBreakagePerMm } from '../length/facts.ts';
import { removeByLength, solveRemoval } from '../length/removal.ts';
import { cardFacts } from './waste-facts.ts';

/** What a machine leaves of the fibre, and the share of the lint it takes. */
export interface Drawn {
  readonly fibre: Fibre;
  readonly removedFraction: number;
}

/** Share of the very short fibres that is lost whatever the card's setting. */
function lostShort(lengthMm: number): number {
  const { lostShare, lostLengthMm, lostLengthSpreadMm } = cardFacts;
  return lostShare.value / (1 + Math.exp((lengthMm - lostLengthMm.value) / lostLengthSpreadMm.value));
}

/**
 * Carding: breaks a little, loses the shortest fibres, and takes strips that favour short fibre, so that the published
 * share of the lint goes. Lint so short that the first loss alone is larger loses that.
 */
export function card(fibre: Fibre): Drawn {
  const { stripFloor, stripLengthMm, fibreLoss, mostStrips, nepsKept } = cardFacts;
  const broken = breakByLength(fibre.lengths, machineBreakagePerMm.card.value * fibre.breakTendency);
  const chance = (lengthMm: number, strips: number) => {
    const stripped = Math.min(1, strips * (stripFloor.value + Math.exp(-lengthMm / stripLengthMm.value)));
    return 1 - (1 - lostShort(lengthMm)) * (1 - stripped);
  };
  const strips = solveRemoval(broken, chance, fibreLoss.value, [0, mostStrips.value]);
  const { kept, removedFraction } = removeByLength(broken, (lengthMm) => chance(lengthMm, strips));
  return { fibre: { ...fibre, lengths: kept, nepsRatio: fibre.nepsRatio * nepsKept.value }, removedFraction };
}
