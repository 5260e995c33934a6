import { heatingFacts as facts } from './facts.ts';

/** What the grower should do about a module. */
export type ModuleVerdict = 'sound' | 'ginSoon' | 'ginNow';

/** The rule of the thermometer: a long probe pushed to the core. */
export function moduleVerdict(riseF: number, coreF: number): ModuleVerdict {
  if (coreF >= facts.ginNowF.value) return 'ginNow';
  return riseF >= facts.ginSoonRiseF.value ? 'ginSoon' : 'sound';
}

/** The rise that a core of this moisture levels off at, F. An assumed curve through the published rule. */
export function settledRiseF(moisturePercent: number): number {
  const above = moisturePercent - facts.soundAtPercent.value;
  const slope = above > 0 ? facts.wetSlopeF.value : facts.drySlopeF.value;
  const rise = facts.riseAtSoundF.value + slope * above;
  return Math.min(facts.hottestF.value - facts.startF.value, Math.max(facts.leastRiseF.value, rise));
}

/**
 * The core after some days at one moisture, F, in closed form: it goes the same share of the way to the temperature its
 * moisture calls for in every day.
 */
export function nextCoreF(coreF: number, moisturePercent: number, days = 1): number {
  const target = facts.startF.value + settledRiseF(moisturePercent);
  return target + (coreF - target) * Math.exp(-days / facts.daysConstant.value);
}
