import { standFacts as facts } from './facts.ts';

/** How a stand takes cotton of some moisture. */
export interface StandRun {
  /** 'runs' at its rated pace, 'slows', or 'chokes': the roll has to be raked out again and again. */
  readonly verdict: 'runs' | 'slows' | 'chokes';
  /** Pace over the rated pace, 0 to 1. */
  readonly paceShare: number;
  /** Share of what is fed that is raked out of the roll box and lost as trash, 0 to 1. */
  readonly rakedOutFraction: number;
}

/**
 * Damp lint parts badly from the seed: above the moisture gins work at the stand slows, and above that of storable seed
 * cotton it chokes. The direction is published, the line is drawn through one pair of rates.
 * @param lintMoisturePercent lint in the stand, % wet basis
 */
export function standRun(lintMoisturePercent: number): StandRun {
  const { fullPaceToPercent, chokesAbovePercent, paceAtChoke, rakedOutSlowPerPoint, rakedOutPerPoint, mostRakedOut } =
    facts;
  if (lintMoisturePercent <= fullPaceToPercent.value) return { verdict: 'runs', paceShare: 1, rakedOutFraction: 0 };
  const damp = lintMoisturePercent - fullPaceToPercent.value;
  const way = Math.min(1, damp / (chokesAbovePercent.value - fullPaceToPercent.value));
  const over = Math.max(0, lintMoisturePercent - chokesAbovePercent.value);
  return {
    verdict: over > 0 ? 'chokes' : 'slows',
    paceShare: 1 - way * (1 - paceAtChoke.value),
    rakedOutFraction: Math.min(mostRakedOut.value, damp * rakedOutSlowPerPoint.value + over * rakedOutPerPoint.value),
  };
}
