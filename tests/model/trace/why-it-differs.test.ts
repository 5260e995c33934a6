import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { seasonAverages } from '../../../src/model/trace/season-chain.ts';
import { traceProject } from '../../../src/model/trace/trace-project.ts';
import { linkNames, whyItDiffers } from '../../../src/model/trace/why-it-differs.ts';

const request = { project: 'twin-quilt' } as const;
const bolls = (averages = {}) => {
  const traced = traceProject(request, averages);
  if (!traced.ok) throw new Error('twin');
  return traced.value.bolls;
};

test.each(farms.map((farm) => [farm.id, farm] as const))('%s: what the links do adds up to the whole', (_, farm) => {
  const own = seasonAverages(runSeason(farm, 1, null));
  const found = whyItDiffers(request, own);
  if (!found.ok) throw new Error(farm.id);
  expect(found.value.map(({ link }) => link)).toEqual([...linkNames]);
  const sum = found.value.reduce((total, { bollsBefore, bollsAfter }) => total + bollsAfter - bollsBefore, 0);
  expect(sum).toBeCloseTo(bolls(own) - bolls(), 8);
});
test('cloth without batting has no say on batting, and nothing differs from itself', () => {
  const own = { battingYield: 0.8, bollGrams: 4 };
  const found = whyItDiffers({ project: 'tote' }, own);
  expect(found).toMatchObject({ ok: true, value: [{ link: 'bollGrams', stated: 4, own: 4 }] });
  expect(whyItDiffers({ project: 'tent' }, own)).toMatchObject({ ok: false });
});
