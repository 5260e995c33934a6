import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DecisionsOf } from '../../src/model/decisions.ts';
import { decisionTable, type NumberDecision } from '../../src/model/decisions.ts';
import { cleanSeedCotton } from '../../src/model/gin/clean.ts';
import { ginLot } from '../../src/model/gin/gin-lot.ts';
import type { MachineStep } from '../../src/model/gin/machine-step.ts';
import { distribute, removedInAllRounds } from '../../src/model/gin/overflow.ts';
import { emptyHopper, stepHopper } from '../../src/model/gin/overflow-steps.ts';
import { pressBales } from '../../src/model/gin/press.ts';
import { splitAtStand } from '../../src/model/gin/stand.ts';
import { harvest } from '../../src/model/harvest/harvest.ts';
import { chainLedger, closingErrorRelative, type MassLedger, massEntry } from '../../src/model/ledger.ts';
import {
  addMasses,
  groupDryKg,
  type Lot,
  partMasses,
  parts,
  scaleMasses,
  totalDryKg,
  totalKg,
  trashParts,
  waterGroups,
} from '../../src/model/lot.ts';
import { storeModules } from '../../src/model/module/store.ts';
import { openStream } from '../../src/model/random.ts';
import { type Cotton, evenlyMoist, fibreOf } from '../model/gin/hand-made-lot.ts';
import { propertySeed, runs } from './runs.ts';

type Masses = Pick<Lot, 'dryKg' | 'waterKg'>;
const tolerance = 1e-9;

/** Scaled whole numbers: a failing case then shrinks to one that can be read. */
const thousandths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const legal = ({ low, high, step }: NumberDecision) =>
  fc.integer({ min: 0, max: Math.round((high - low) / step) }).map((n) => low + n * step);
const option = <T>(options: readonly T[]) => fc.constantFrom(...options);

const { harvest: h, module: m, cleaning: c, ginning: g, pressing: p } = decisionTable;
const harvestDecisions: fc.Arbitrary<DecisionsOf<'harvest'>> = fc.record({
  method: option(h.method.options),
  daysToHarvest: legal(h.daysToHarvest),
  pickings: legal(h.pickings),
  moisturePercent: legal(h.moisturePercent),
});
const moduleDecisions: fc.Arbitrary<DecisionsOf<'module'>> = fc.record({
  kind: option(m.kind.options),
  cover: option(m.cover.options),
  storageDays: legal(m.storageDays),
});
const cleaningDecisions: fc.Arbitrary<DecisionsOf<'cleaning'>> = fc.record({
  dryers: legal(c.dryers),
  dryerAirF: legal(c.dryerAirF),
  cylinderCleaners: legal(c.cylinderCleaners),
  stickMachines: legal(c.stickMachines),
});
const ginningDecisions: fc.Arbitrary<DecisionsOf<'ginning'>> = fc.record({
  stand: option(g.stand.options),
  lintCleaner: option(g.lintCleaner.options),
  lintCleaners: legal(g.lintCleaners),
  moistureAddedPoints: legal(g.moistureAddedPoints),
});
const pressingDecisions: fc.Arbitrary<DecisionsOf<'pressing'>> = fc.record({
  netPounds: legal(p.netPounds),
  restoreToPercent: legal(p.restoreToPercent),
});
const decisions = fc.record({
  harvest: harvestDecisions,
  module: moduleDecisions,
  cleaning: cleaningDecisions,
  ginning: ginningDecisions,
  pressing: pressingDecisions,
});
const context = fc.record({
  outsideF: thousandths(20, 110),
  outsideHumidity: thousandths(0.05, 1),
  loadingBalesPerHourFoot: thousandths(0.5, 6),
  overflowShare: thousandths(0, 0.5),
});
const cotton = option<Cotton>(['short', 'medium', 'long', 'pima']);

/** A crop of 1 kg to 100,000 kg of lint, any seed, any motes, any air-dry water. */
const crop = fc
  .record({
    lint: thousandths(1, 100_000),
    seedPerLint: thousandths(0.8, 2.5),
    motesPerLint: thousandths(0, 0.1),
    moisture: thousandths(0, 20),
    cotton,
    weatheredFraction: thousandths(0, 0.9),
    leafRemaining: thousandths(0, 1),
    acres: thousandths(1, 5000),
    lintLbPerAcre: thousandths(1, 3000),
  })
  .map(({ lint, seedPerLint, motesPerLint, moisture, cotton: kind, ...rest }) => {
    const dryKg = partMasses({ lint, seed: lint * seedPerLint, motes: lint * motesPerLint });
    return { grown: { dryKg, waterKg: evenlyMoist(dryKg, moisture), fibre: fibreOf(kind) }, ...rest };
  });

/** Any seed cotton a gin may get, some parts missing, each group with a moisture of its own. */
const seedCotton: fc.Arbitrary<Lot> = fc
  .record({
    lint: thousandths(1, 50_000),
    seed: thousandths(0, 90_000),
    trash: fc.tuple(...trashParts.map(() => thousandths(0, 20_000))),
    moistures: fc.tuple(thousandths(0, 30), thousandths(0, 30), thousandths(0, 30)),
    cotton,
  })
  .map(({ lint, seed, trash, moistures, cotton: kind }) => {
    const dryKg = partMasses({ lint, seed, ...Object.fromEntries(trashParts.map((part, i) => [part, trash[i]!])) });
    const water = (group: 'lint' | 'seed' | 'trash', percent: number) =>
      (groupDryKg(dryKg, group) * percent) / (100 - percent);
    const [lintWater, seedWater, trashWater] = moistures;
    return {
      dryKg,
      waterKg: { lint: water('lint', lintWater), seed: water('seed', seedWater), trash: water('trash', trashWater) },
      fibre: fibreOf(kind),
    };
  });

const check = <T>(arbitrary: fc.Arbitrary<T>, full: number, law: (value: T) => void) =>
  fc.assert(fc.property(arbitrary, law), { seed: propertySeed, numRuns: runs(full), endOnFailure: true });

/** No mass of a set may be negative. */
function assertNotNegative(masses: Masses) {
  // Thousands of masses: the faults are gathered, and expected once. A mass that is no number is a fault too.
  const faults = [
    ...parts.filter((part) => !(masses.dryKg[part] >= 0)),
    ...waterGroups.filter((group) => !(masses.waterKg[group] >= 0)).map((group) => `water of ${group}`),
  ];
  expect(faults).toEqual([]);
}
function assertLedger(ledger: Pick<MassLedger, 'in' | 'out'>) {
  expect(closingErrorRelative(ledger)).toBeLessThanOrEqual(tolerance);
  const faults = [...ledger.in, ...ledger.out].flatMap(({ account, dryKg, waterKg }) => [
    ...parts.filter((part) => !(dryKg[part] >= 0)).map((part) => `${account} ${part}`),
    ...(waterKg >= 0 ? [] : [`${account} water`]),
  ]);
  expect(faults).toEqual([]);
}
/** A machine balances: what entered and was added is what was removed and went on, part by part and group by group. */
function assertStep(step: MachineStep) {
  const entered = step.added.reduce((sum, { masses }) => addMasses(sum, masses), step.in);
  const left = step.removed.reduce((sum, { masses }) => addMasses(sum, masses), step.out);
  const closes = (into: number, out: number) => Math.abs(into - out) <= tolerance * into;
  const faults = [
    ...parts.filter((part) => !closes(entered.dryKg[part], left.dryKg[part])),
    ...waterGroups
      .filter((group) => !closes(entered.waterKg[group], left.waterKg[group]))
      .map((group) => `${group} water`),
  ];
  expect(faults, step.machine).toEqual([]);
  for (const masses of [step.in, step.out, ...step.removed.map((r) => r.masses), ...step.added.map((a) => a.masses)])
    assertNotNegative(masses);
}

const season = fc.tuple(crop, decisions, context, thousandths(0, 30), fc.integer({ min: 0, max: 2 ** 31 - 1 }));
type Season = typeof season extends fc.Arbitrary<infer T> ? T : never;

/** From the field to the bale, every station's ledger and machine. */
function runSeason([standing, decided, gin, rainInchesInStorage, seed]: Season) {
  const harvested = harvest(standing, decided.harvest);
  const stored = storeModules(harvested.lot, decided.module, { rainInchesInStorage });
  const cleaned = cleanSeedCotton(stored.lot, decided.cleaning, { ...gin, harvestMethod: decided.harvest.method });
  const ginned = ginLot(cleaned.lot, decided.ginning);
  const pressed = pressBales(ginned.lot, decided.pressing, 'present', openStream(seed, 'press'));
  const ledgers = [harvested, stored, cleaned, ginned, pressed].map(({ ledger }) => ledger);
  const machines = [...cleaned.machines, ...ginned.machines, ...pressed.machines];
  return { harvested, stored, cleaned, ginned, pressed, ledgers, machines };
}

describe('mass', () => {
  test('closes at every station, at every machine, and from the field to the bale', () => {
    check(season, 1000, (input) => {
      const { ledgers, machines, pressed } = runSeason(input);
      ledgers.forEach(assertLedger);
      machines.forEach(assertStep);
      assertLedger(chainLedger(ledgers));
      const netKg = pressed.bales.reduce((sum, bale) => sum + bale.netKg, 0);
      expect(Math.abs(netKg / totalKg(pressed.lot) - 1)).toBeLessThanOrEqual(tolerance);
      for (const bale of pressed.bales) expect(bale.netKg).toBeGreaterThan(0);
    });
  });
  test('closes for seed cotton of any make-up, parts missing or odd', () => {
    check(fc.tuple(seedCotton, cleaningDecisions, ginningDecisions, context), 1000, ([lot, cleaning, ginning, gin]) => {
      const cleaned = cleanSeedCotton(lot, cleaning, { ...gin, harvestMethod: 'stripper' });
      const ginned = ginLot(cleaned.lot, ginning);
      for (const { ledger, machines } of [cleaned, ginned]) {
        assertLedger(ledger);
        machines.forEach(assertStep);
      }
    });
  });
  test('is seen lost: a machine that spills a millionth, a ledger that forgets its trash, a split below nothing', () => {
    const [sample] = fc.sample(season, { seed: propertySeed, numRuns: 1 });
    const { machines, ledgers } = runSeason(sample!);
    const spilling: MachineStep = { ...machines[0]!, out: scaleMasses(machines[0]!.out, 1 - 1e-6) };
    expect(() => assertStep(spilling)).toThrow();
    const drying: MachineStep = {
      ...machines[0]!,
      out: { ...machines[0]!.out, waterKg: { lint: 0, seed: 0, trash: 0 } },
    };
    expect(() => assertStep(drying)).toThrow();
    const cleaning = ledgers[2]!;
    const forgetting = { ...cleaning, out: cleaning.out.filter(({ account }) => account !== 'ginTrash') };
    expect(() => assertLedger(forgetting)).toThrow();
    const negative = scaleMasses(machines[0]!.out, -1);
    expect(() => assertNotNegative(negative)).toThrow();
    const cancelling = {
      in: [massEntry('lot', machines[0]!.in)],
      out: [massEntry('lot', scaleMasses(machines[0]!.in, 2)), massEntry('ginTrash', scaleMasses(machines[0]!.in, -1))],
    } as const;
    expect(() => assertLedger(cancelling)).toThrow();
  });
});

describe('the overflow', () => {
  const loop = fc.record({ share: thousandths(0, 0.6), removed: thousandths(0, 1), drawn: thousandths(0.05, 1) });
  type Loop = typeof loop extends fc.Arbitrary<infer T> ? T : never;
  /** The time-stepped hopper, run until it is empty, removes what the closed form says. */
  const agree = ({ share, removed, drawn }: Loop, closed: (share: number, removed: number) => number) => {
    let state = emptyHopper;
    for (let step = 0; step < 30; step++) {
      state = stepHopper(state, 7, share, removed, drawn);
      const held = state.toFeedersKg + state.removedKg + state.hopperKg;
      if (!(Math.abs(held / state.fedKg - 1) < tolerance)) expect.fail(`step ${step}: ${held} of ${state.fedKg} kg`);
    }
    for (let step = 0; state.hopperKg > 1e-12 && step < 5000; step++)
      state = stepHopper(state, 0, share, removed, drawn);
    expect(Math.abs(state.removedKg / state.fedKg - closed(share, removed))).toBeLessThan(tolerance);
    expect(Math.abs(state.toFeedersKg / state.fedKg - (1 - closed(share, removed)))).toBeLessThan(tolerance);
  };
  test('stepped through time equals the closed form', () => {
    check(loop, 1000, (input) => agree(input, removedInAllRounds));
  });
  test('is seen to differ when the return is forgotten', () => {
    expect(() => check(loop, 1000, (input) => agree(input, (share, removed) => share * removed))).toThrow();
  });

  /** feeders + removed = feed; distributed = feed + returned = overflow + feeders. */
  const closes = (feed: Masses, flows: ReturnType<typeof distribute>) => {
    const pairs = [
      [addMasses(flows.toFeeders, flows.removed), feed],
      [addMasses(feed, flows.returned), flows.distributed],
      [addMasses(flows.overflow, flows.toFeeders), flows.distributed],
    ] as const;
    for (const [left, right] of pairs) {
      for (const part of parts)
        expect(Math.abs(left.dryKg[part] - right.dryKg[part])).toBeLessThanOrEqual(tolerance * right.dryKg[part]);
      for (const group of waterGroups)
        expect(Math.abs(left.waterKg[group] - right.waterKg[group])).toBeLessThanOrEqual(
          tolerance * right.waterKg[group],
        );
    }
    Object.values(flows).forEach(assertNotNegative);
  };
  const fractions = fc.record({ lint: thousandths(0, 1), leaf: thousandths(0, 1), dirt: thousandths(0, 1) });
  test('keeps its identities in dry matter and in water', () => {
    check(fc.tuple(seedCotton, thousandths(0, 0.95), fractions), 1000, ([lot, share, removed]) =>
      closes(lot, distribute(lot, share, removed)),
    );
  });
  test('is seen to break them when the return is counted twice', () => {
    expect(() =>
      check(fc.tuple(seedCotton, thousandths(0.05, 0.95), fractions), 1000, ([lot, share, removed]) => {
        const flows = distribute(lot, share, removed);
        closes(lot, { ...flows, returned: scaleMasses(flows.returned, 2) });
      }),
    ).toThrow();
  });
});

describe('order', () => {
  test('the same input gives the same season', () => {
    check(season, 200, (input) => {
      expect(JSON.stringify(runSeason(input))).toBe(JSON.stringify(runSeason(input)));
    });
  });
  test('is seen broken when chance comes from outside', () => {
    let calls = 0;
    const careless = (input: Season) => runSeason([input[0], input[1], input[2], input[3], ++calls]).pressed.bales;
    expect(() =>
      check(season, 200, (input) => {
        expect(JSON.stringify(careless(input))).toBe(JSON.stringify(careless(input)));
      }),
    ).toThrow();
  });

  const trashOf = (masses: Masses) => groupDryKg(masses.dryKg, 'trash');
  type Cleaned = (lot: Lot, decided: DecisionsOf<'cleaning'>) => Masses;
  const cleaned: Cleaned = (lot, decided) => cleanSeedCotton(lot, decided, { harvestMethod: 'spindle' }).lot;
  /** One more machine never leaves more trash, nor more lint. */
  const oneMore = (run: Cleaned, lot: Lot, decided: DecisionsOf<'cleaning'>) => {
    const more = [
      { ...decided, stickMachines: decided.stickMachines + 1 },
      { ...decided, cylinderCleaners: decided.cylinderCleaners + 1 },
    ].filter(({ stickMachines, cylinderCleaners }) => stickMachines <= 2 && cylinderCleaners <= 3);
    const before = run(lot, decided);
    for (const next of more) {
      const after = run(lot, next);
      expect(trashOf(after)).toBeLessThanOrEqual(trashOf(before) * (1 + tolerance));
      expect(after.dryKg.lint).toBeLessThanOrEqual(before.dryKg.lint * (1 + tolerance));
    }
  };
  const lotAndLine = fc.tuple(seedCotton, cleaningDecisions);
  test('one more machine never leaves more trash or lint', () => {
    check(lotAndLine, 500, ([lot, decided]) => oneMore(cleaned, lot, decided));
  });
  test('is seen broken by a cleaner that puts trash back', () => {
    const dirty: Cleaned = (lot, decided) => scaleMasses(cleaned(lot, decided), 2 ** decided.stickMachines);
    expect(() => check(lotAndLine, 500, ([lot, decided]) => oneMore(dirty, lot, decided))).toThrow();
  });

  type Ginned = (lot: Lot, decided: DecisionsOf<'ginning'>) => Masses;
  const ginned: Ginned = (lot, decided) => ginLot(lot, decided).lot;
  /** One more lint cleaner never leaves more of anything. */
  const oneMoreCleaner = (run: Ginned, lot: Lot, decided: DecisionsOf<'ginning'>) => {
    const [before, after] = [run(lot, decided), run(lot, { ...decided, lintCleaners: decided.lintCleaners + 1 })];
    for (const part of parts) expect(after.dryKg[part]).toBeLessThanOrEqual(before.dryKg[part]);
  };
  const lotAndStand = fc.tuple(
    seedCotton,
    ginningDecisions.map((decided) => ({ ...decided, lintCleaners: Math.min(2, decided.lintCleaners) })),
  );
  test('one more lint cleaner never leaves more of any part', () => {
    check(lotAndStand, 300, ([lot, decided]) => oneMoreCleaner(ginned, lot, decided));
  });
  test('is seen broken by a lint cleaner that gives lint back', () => {
    const generous: Ginned = (lot, decided) => scaleMasses(ginned(lot, decided), 1 + 0.1 * decided.lintCleaners);
    expect(() => check(lotAndStand, 300, ([lot, decided]) => oneMoreCleaner(generous, lot, decided))).toThrow();
  });

  test('a stand makes three streams of what enters, none below nothing', () => {
    const three = (split: typeof splitAtStand, lot: Lot, kind: 'saw' | 'roller') => {
      const { lint, seed, waste } = split(lot, kind);
      [lint, seed, waste].forEach(assertNotNegative);
      const sum = totalDryKg(lint.dryKg) + totalDryKg(seed.dryKg) + totalDryKg(waste.dryKg);
      expect(Math.abs(sum / totalDryKg(lot.dryKg) - 1)).toBeLessThanOrEqual(tolerance);
    };
    const input = fc.tuple(seedCotton, option(['saw', 'roller'] as const));
    check(input, 500, ([lot, kind]) => three(splitAtStand, lot, kind));
    const doubling: typeof splitAtStand = (masses, kind) => {
      const streams = splitAtStand(masses, kind);
      return { ...streams, waste: addMasses(streams.waste, streams.lint) };
    };
    expect(() => check(input, 500, ([lot, kind]) => three(doubling, lot, kind))).toThrow();
  });
});
