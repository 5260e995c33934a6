import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf, farms } from '../../src/model/farms.ts';
import { checkScenario } from '../../src/model/scenario.ts';

test('the six farms of content/scenarios, the default first, each valid and named by its file', () => {
  const files = readdirSync('content/scenarios').map((name) => name.replace(/\.json$/, ''));
  expect(new Set(farms.map(({ id }) => id))).toEqual(new Set(files));
  expect(farms[0]!.id).toBe('coastal-plain');
  for (const farm of farms) expect(checkScenario(farm)).toMatchObject({ ok: true });
});

test('every farm has its words in both languages and says that it is invented', () => {
  for (const { name, story } of farms) {
    expect(name.en).not.toBe('');
    expect(name.es).not.toBe('');
    expect(story.en).toContain('invented');
    expect(story.es).toContain('inventada');
  }
});

test('the hand-picked farm has a wagon, no lint cleaner and no harvest aid; the Pima farm a roller stand', () => {
  const thirties = farmOf('hand-picked-1930s')!;
  expect(thirties).toMatchObject({
    era: 'thirties',
    decisions: { module: { kind: 'wagon' }, ginning: { lintCleaners: 0 }, boll: { harvestAid: false } },
  });
  expect(farmOf('long-staple-valley')!.decisions.ginning).toMatchObject({ stand: 'roller', lintCleaner: 'roller' });
  expect(farmOf('nowhere')).toBeUndefined();
});

test('the damp bales of the hand-picked farm are paid as they weigh: no limit of moisture held before 2006 — Federal Register 71:51422', () => {
  const { pressing, classing, payments } = runSeason(farmOf('hand-picked-1930s')!, 1, null);
  expect(classing!.moisture.percent).toBeGreaterThan(9);
  expect(pressing!.warnings).not.toContain('baleTooDamp');
  expect(classing!.moisture.overLimit).toBe(false);
  for (const { paidLb, netLb } of classing!.classed) expect(paidLb).toBe(netLb);
  expect(payments).toMatchObject({ waterDeductedLb: 0, balesRefusedForLoan: 0 });
});
