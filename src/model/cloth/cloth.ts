import type { ClothDescription } from './describe-cloth.ts';
import type { JerseyDescription } from './describe-jersey.ts';
import type { ClothFinish } from './facts.ts';
import type { Drape } from './feel.ts';

/** Percent along the cloth and across it. */
export interface BothWays {
  readonly length: number;
  readonly width: number;
}

/** The yarn a cloth is made of, as far as the cloth cares. */
export interface ClothYarn {
  readonly tex: number;
  readonly combed: boolean;
  readonly fibreEndsPerCm: number;
  readonly shortFibrePercentByWeight: number;
}

/** A length of finished cloth and what a sewist will notice. */
export interface Cloth {
  readonly finish: ClothFinish;
  /** As finished. */
  readonly description: ClothDescription | JerseyDescription;
  /** On the loom or off the knitting machine, with its size, conditioned. */
  readonly greyGramsPerSquareMetre: number;
  readonly gramsPerSquareMetre: number;
  readonly greySquareMetres: number;
  readonly squareMetres: number;
  readonly widthInches: number;
  readonly runningYards: number;
  /** Taken out by finishing. */
  readonly finishShrinkPercent: BothWays;
  /** Left for the first wash. */
  readonly shrinkLeftPercent: BothWays;
  readonly drape: Drape;
  readonly fuzz: 'little' | 'some' | 'much';
  readonly flameExempt: boolean;
  readonly ironDots: number;
  readonly ironCelsius: number;
  /** 'settIgnored': a knit takes no sett, its courses and wales follow from the loop. 'tightSett': above the handweaver's highest. */
  readonly notes: readonly ('settIgnored' | 'tightSett')[];
}
