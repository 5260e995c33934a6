import { describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/main.ts';
import { startingSetUp } from '../../../src/model/bench/set-up.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { classOne } from '../../../src/model/classing/class-card.ts';
import { pimaBench, quiltingBench, quiltingSetUp } from './benches.ts';

/** What a command prints as JSON. */
function printed(line: string) {
  let out = '';
  const code = run(line.split(' '), {
    out: (text) => {
      out += text;
    },
    say: () => undefined,
    readFile: () => '',
  });
  expect(code).toBe(0);
  return JSON.parse(out);
}

describe('the bench and the command line give the same numbers', () => {
  test('of a cloth', () => {
    const { description } = workBench(startingSetUp('pima', 'lawn', 14)).cloth;
    expect(
      printed('cloth --warp 60Ne --weft 60Ne --ends 90 --picks 88 --warp-crimp 5 --weft-crimp 5 --json'),
    ).toMatchObject({
      gramsPerSquareMetre: description.gramsPerSquareMetre,
      tariffClass: description.tariffClass,
      ...(description.kind === 'woven'
        ? {
            clothCover: description.clothCover,
            thicknessMm: description.thicknessMm,
            threadCount: description.threadCount,
          }
        : {}),
    });
  });
  test('of a bale', () => {
    const { card } = quiltingSetUp;
    const bale = printed(
      `bale --length ${card.lengthIn} --uniformity ${card.uniformityPercent} --strength ${card.strengthGPerTex} --micronaire ${card.micronaire} --rd ${card.reflectanceRd} --b ${card.yellownessB} --leaf ${card.leaf} --json`,
    );
    const classed = classOne({ ...card, market: 'southeast', netLb: 480 });
    expect(bale).toMatchObject({ color: classed.color, staple32nds: classed.staple32nds });
    for (const system of ['ringCarded', 'ringCombed'] as const) {
      const { verdict } = workBench({ ...quiltingSetUp, system }).warp.spinning;
      expect(verdict.ceilingNe).toBeCloseTo(bale.limitNe[system], 9);
    }
  });
});

test('longer, finer, stronger cotton in the same threads: fewer fibre ends, a stronger yarn, a finer yarn in reach', () => {
  expect(pimaBench.warp.fibreEndsPerCm!).toBeLessThan(quiltingBench.warp.fibreEndsPerCm!);
  expect(pimaBench.warp.spinning.yarn!.tenacityCnPerTex).toBeGreaterThan(
    quiltingBench.warp.spinning.yarn!.tenacityCnPerTex,
  );
  expect(pimaBench.warp.spinning.verdict.comfortableNe).toBeGreaterThan(
    quiltingBench.warp.spinning.verdict.comfortableNe,
  );
  expect(pimaBench.cloth.description.gramsPerSquareMetre).toBe(quiltingBench.cloth.description.gramsPerSquareMetre);
});

test('the staple limit is the printed formula: mean length 1.10 in, micronaire 3.8 give 50.6 (Indian Central Cotton Committee)', () => {
  const { stapleLimitNe, meanLengthIn } = workBench({
    ...quiltingSetUp,
    card: { ...quiltingSetUp.card, lengthIn: 1.375, uniformityPercent: 80, micronaire: 3.8 },
  });
  expect(meanLengthIn).toBeCloseTo(1.1, 4);
  expect(stapleLimitNe).toBeCloseTo(50.6, 1);
});

test('lint for a yard of quilting cotton is near the 0.35 lb that its weight and losses come to', () => {
  // 124 g/m2 x 45 in x 36 in = 0.286 lb of cloth; over a yarn realisation of 0.88 and no loss in weaving, 0.325 lb.
  const pounds = quiltingBench.lintGramsPerYard! / 453.59237;
  expect(pounds).toBeGreaterThan(0.29);
  expect(pounds).toBeLessThan(0.35);
});

test('a yarn out of reach leaves lint and time open', () => {
  const bench = workBench({ ...quiltingSetUp, weft: '110Ne' });
  expect(bench.lintGramsPerYard).toBeNull();
  expect(bench.spindleMinutesPerYard).toBeNull();
});
