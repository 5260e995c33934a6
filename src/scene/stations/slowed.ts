/** A motion slowed so that an eye can follow it. */
export interface Slowed {
  readonly perSecond: number;
  /** How many times slower it is drawn: 1, 2 or 5 times a power of ten. */
  readonly times: number;
}

/** Turns or strokes a second that an eye follows with ease, at most. */
const FOLLOWED_PER_SECOND = 0.55;

/** @param perMinute turns or strokes a minute of the machine itself */
export function slowed(perMinute: number): Slowed {
  const perSecond = perMinute / 60;
  const least = perSecond / FOLLOWED_PER_SECOND;
  if (!(least > 1)) return { perSecond, times: 1 };
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 5, 10].find((nice) => nice * power >= least) ?? 10;
  return { perSecond: perSecond / (step * power), times: step * power };
}
