import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withFactsMoved } from '../../src/doubt/move-facts.ts';
import { decisionTable } from '../../src/model/decisions.ts';
import { dry, dryerEquilibrium, dryingMoisture, dryingRatePerSecond } from '../../src/model/gin/dryer.ts';
import { dryingFacts } from '../../src/model/gin/facts.ts';
import { emptyHopper, stepHopper } from '../../src/model/gin/overflow-steps.ts';
import { breakByLength } from '../../src/model/length/breakage.ts';
import { breakageLaw, machineBreakagePerMm } from '../../src/model/length/facts.ts';
import { type LengthDistribution, lengthCount, normalised } from '../../src/model/length/length-distribution.ts';
import { meanLengthMm, shortFibrePercent } from '../../src/model/length/statistics.ts';
import { moistureFraction, partMasses, waterGroups } from '../../src/model/lot.ts';
import { heatingFacts, storageFacts } from '../../src/model/module/facts.ts';
import { nextCoreF, settledRiseF } from '../../src/model/module/heating.ts';
import { storeModules } from '../../src/model/module/store.ts';
import { type Cotton, evenlyMoist, fibreOf } from '../model/gin/hand-made-lot.ts';
import { propertySeed, runs } from './runs.ts';

const thousandths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const check = <T>(arbitrary: fc.Arbitrary<T>, full: number, law: (value: T) => void) =>
  fc.assert(fc.property(arbitrary, law), { seed: propertySeed, numRuns: runs(full) });

/** A rate of change followed in equal steps, each with the slope at its middle: the error falls with the square of the step. */
function inSteps(start: number, slope: (value: number) => number, length: number, steps: number): number {
  const step = length / steps;
  let value = start;
  for (let i = 0; i < steps; i++) value += step * slope(value + (step / 2) * slope(value));
  return value;
}

const { dryerAirF } = decisionTable.cleaning;
const drying = fc.record({
  airF: fc.integer({ min: dryerAirF.low, max: dryerAirF.high }),
  outsideF: thousandths(20, 110),
  outsideHumidity: thousandths(0.05, 1),
  moisturePercent: thousandths(2, 30),
});

/** The lint's drying has no step: it is the exponential. Its time cut in two is the same time, and steps end up there. */
const dryingHasNoStep = (closed: typeof dryingMoisture) =>
  check(drying, 1000, ({ airF, moisturePercent, ...outside }) => {
    const start = moisturePercent / 100;
    const equilibrium = dryerEquilibrium(airF, outside);
    const rate = dryingRatePerSecond(airF);
    const seconds = dryingFacts.exposureSeconds.value;
    const once = closed(start, equilibrium, rate, seconds);
    const twice = closed(closed(start, equilibrium, rate, seconds / 2), equilibrium, rate, seconds / 2);
    expect(Math.abs(twice - once)).toBeLessThan(1e-12);
    const slope = (moisture: number) => -rate * (moisture - equilibrium);
    expect(Math.abs(inSteps(start, slope, seconds, 500) - once)).toBeLessThan(1e-6);
  });

/** A pass cut into two of half the time, points of moisture: what the model says of seed and trash is a share of it. */
const passCutInTwo = (cut: (whole: number) => number) =>
  check(drying, 500, ({ airF, moisturePercent, ...outside }) => {
    const dryKg = partMasses({ lint: 380, seed: 600, leaf: 30, sticks: 20, burs: 40, motes: 10, dirt: 5 });
    const before = { dryKg, waterKg: evenlyMoist(dryKg, moisturePercent) };
    const fibre = fibreOf('medium');
    const once = dry('dryer', before, fibre, airF, outside).out;
    const half = [{ fact: dryingFacts.exposureSeconds, to: cut(dryingFacts.exposureSeconds.value) }];
    const twice = withFactsMoved(half, () =>
      dry('dryer', dry('dryer', before, fibre, airF, outside).out, fibre, airF, outside),
    ).out;
    for (const group of waterGroups)
      expect(100 * Math.abs(moistureFraction(twice, group) - moistureFraction(once, group)), group).toBeLessThan(
        group === 'lint' ? 1e-9 : 0.5,
      );
  });

const overflow = fc.record({
  share: thousandths(0, 0.6),
  removed: thousandths(0, 1),
  drawn: thousandths(0.05, 0.9),
  steps: fc.integer({ min: 1, max: 60 }),
});

/** The distributor fed in some steps, or in twice as many of half the time, and then run empty, kg. */
function runHopper(
  step: typeof stepHopper,
  { share, removed, drawn, steps }: { share: number; removed: number; drawn: number; steps: number },
  halvings: 0 | 1,
) {
  const feedKg = 100 / 2 ** halvings;
  // Two draws of half the time leave what one of the whole leaves.
  const drawnFraction = 1 - (1 - drawn) ** (1 / 2 ** halvings);
  let state = emptyHopper;
  for (let i = 0; i < steps * 2 ** halvings; i++) state = step(state, feedKg, share, removed, drawnFraction);
  const fed = state;
  for (let i = 0; state.hopperKg > 1e-12 && i < 20_000; i++) state = step(state, 0, share, removed, drawnFraction);
  return { fed, end: state };
}
/** Half the step removes the same share in the end; while it feeds, the hopper differs by less than one step's feed. */
const overflowHasNoStep = (step: typeof stepHopper) =>
  check(overflow, 500, (input) => {
    const [whole, half] = [runHopper(step, input, 0), runHopper(step, input, 1)];
    expect(Math.abs(half.end.removedKg / half.end.fedKg - whole.end.removedKg / whole.end.fedKg)).toBeLessThan(1e-9);
    expect(Math.abs(half.end.toFeedersKg - whole.end.toFeedersKg) / whole.end.fedKg).toBeLessThan(1e-9);
    expect(Math.abs(half.fed.hopperKg - whole.fed.hopperKg)).toBeLessThan(100);
  });

const moistures = fc.array(thousandths(4, 25), { minLength: 1, maxLength: 90 });

/** A day at the core has no step: it is the exponential at that day's moisture. */
const coreHasNoStep = (next: typeof nextCoreF) =>
  check(moistures, 200, (days) => {
    let [whole, halves, stepped]: number[] = [75, 75, 75];
    for (const moisture of days) {
      whole = next(whole!, moisture);
      halves = next(next(halves!, moisture, 0.5), moisture, 0.5);
      const target = heatingFacts.startF.value + settledRiseF(moisture);
      stepped = inSteps(stepped!, (f) => (target - f) / heatingFacts.daysConstant.value, 1, 50);
      expect(Math.abs(halves - whole)).toBeLessThan(1e-9);
      expect(Math.abs(stepped - whole)).toBeLessThan(1e-3);
    }
  });

const { kind, cover, storageDays } = decisionTable.module;
const stored = fc.record({
  kind: fc.constantFrom(...kind.options),
  cover: fc.constantFrom(...cover.options),
  storageDays: fc.integer({ min: storageDays.low, max: storageDays.high }),
  rainInches: thousandths(0, 12),
  moisturePercent: thousandths(4, 22),
});

/** Half the step of storage: the core within 0.2 F, the water within 0.003 points, yellowness within 0.001. */
const halfTheStepStores = (driftAtHalf: number) =>
  check(stored, 500, ({ rainInches, moisturePercent, ...decided }) => {
    const dryKg = partMasses({ lint: 3800, seed: 6000, leaf: 300, sticks: 200, burs: 400, motes: 100, dirt: 50 });
    const lot = { dryKg, waterKg: evenlyMoist(dryKg, moisturePercent), fibre: fibreOf('medium') };
    const run = () => storeModules(lot, decided, { rainInchesInStorage: rainInches });
    const whole = run();
    const { stepsPerDay, driftPerDay } = storageFacts;
    const moves = [
      { fact: stepsPerDay, to: 2 * stepsPerDay.value },
      { fact: driftPerDay, to: driftAtHalf * driftPerDay.value },
    ];
    const half = withFactsMoved(moves, run);
    expect(half.coreTemperatureF.map(({ day }) => day)).toEqual(whole.coreTemperatureF.map(({ day }) => day));
    half.coreTemperatureF.forEach(({ f }, day) => {
      expect(Math.abs(f - whole.coreTemperatureF[day]!.f)).toBeLessThan(0.2);
    });
    expect(Math.abs(half.moisturePercent - whole.moisturePercent)).toBeLessThan(0.003);
    expect(Math.abs(half.yellowing - whole.yellowing)).toBeLessThan(0.001);
    expect(half.lostFraction).toBe(whole.lostFraction);
  });

const anyLengths = fc
  .array(fc.tuple(fc.nat({ max: lengthCount - 1 }), fc.integer({ min: 1, max: 1000 })), { minLength: 1, maxLength: 40 })
  .map((places) => {
    const numbers = new Float64Array(lengthCount);
    for (const [place, count] of places) numbers[place] = numbers[place]! + count;
    return normalised(numbers);
  });
const cottons: readonly Cotton[] = ['short', 'medium', 'long', 'pima'];
const strongest = Math.max(...Object.values(machineBreakagePerMm).map(({ value }) => value));
/** Twice the steps at the harshest machine, for any fibres at all: 0.05 mm and 0.002 points. */
const halfTheStepBreaks = (steps: number) =>
  check(fc.tuple(anyLengths, thousandths(0, 1)), 1000, ([lengths, share]) =>
    breaksAlike(lengths, share * strongest, steps, 0.05, 0.002),
  );
/** The same for the fibres of a boll: 0.002 mm and 0.0005 points. */
const halfTheStepBreaksCotton = (steps: number) =>
  check(fc.tuple(fc.constantFrom(...cottons), thousandths(0, 1)), 200, ([cotton, share]) =>
    breaksAlike(fibreOf(cotton).lengths, share * strongest, steps, 0.002, 0.0005),
  );
function breaksAlike(lengths: LengthDistribution, theta: number, steps: number, mm: number, points: number) {
  const [whole, half] = [steps, 2 * steps].map((n) => breakByLength(lengths, theta, breakageLaw.exponent.value, n));
  expect(Math.abs(meanLengthMm(whole!, 'weight') - meanLengthMm(half!, 'weight'))).toBeLessThan(mm);
  expect(Math.abs(shortFibrePercent(whole!, 'weight') - shortFibrePercent(half!, 'weight'))).toBeLessThan(points);
}

describe('laws of the step', () => {
  test('lint dries by a closed form, and steps of time end up at it', () => dryingHasNoStep(dryingMoisture));
  test('a dryer passed twice in half the time dries the lint the same, seed and trash within half a point', () =>
    passCutInTwo((whole) => whole / 2));
  test('half the step at the overflow changes nothing that leaves it', () => overflowHasNoStep(stepHopper));
  test('the core warms by a closed form, and steps of time end up at it', () => coreHasNoStep(nextCoreF));
  test('half the step of storage changes core, water and color by less than what is stated', () =>
    halfTheStepStores(1));
  test('half the step of breakage changes any lengths by less than what is stated', () =>
    halfTheStepBreaks(breakageLaw.steps.value));
  test('and those of cotton by far less', () => halfTheStepBreaksCotton(breakageLaw.steps.value));
});

describe('each law is seen to fail', () => {
  test('on lint that dries in a straight line', () => {
    expect(() =>
      dryingHasNoStep((start, end, rate, seconds) => start + (end - start) * Math.min(1, rate * seconds)),
    ).toThrow();
  });
  test('on a rate a hundredth too fast', () => {
    expect(() =>
      dryingHasNoStep((start, end, rate, seconds) => dryingMoisture(start, end, 1.01 * rate, seconds)),
    ).toThrow();
  });
  test('on passes that are not half as long', () => {
    expect(() => passCutInTwo((whole) => 0.51 * whole)).toThrow();
  });
  test('on a separator that takes its toll by the step', () => {
    expect(() =>
      overflowHasNoStep((state, feed, share, removed, drawn) => {
        const next = stepHopper(state, feed, share, removed, drawn);
        const toll = 0.001 * next.hopperKg;
        return { ...next, hopperKg: next.hopperKg - toll, removedKg: next.removedKg + toll };
      }),
    ).toThrow();
  });
  test('on a core that takes each step for a whole day', () => {
    expect(() => coreHasNoStep((f, moisture) => nextCoreF(f, moisture))).toThrow();
  });
  test('on a drift that takes each step for a whole day', () => {
    expect(() => halfTheStepStores(2)).toThrow();
  });
  test('on breakage in a single step', () => {
    expect(() => halfTheStepBreaks(1)).toThrow();
    expect(() => halfTheStepBreaksCotton(1)).toThrow();
  });
});
