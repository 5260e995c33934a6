import { expect, test } from 'vitest';
import { evennessIds, readSample, sampleCottonIds, sampleCottons } from '../../src/lessons/sample-cottons.ts';
import { readBeard } from '../../src/model/length/beard.ts';
import { lengthsFromClassCard } from '../../src/model/length/class-card.ts';

test.each([...sampleCottonIds, ...evennessIds])('%s is the cotton that the model fits to its class card', (id) => {
  const { kind, card, centreMm, breaksPerMm } = sampleCottons[id];
  const fit = lengthsFromClassCard(card, kind);
  expect(centreMm).toBeCloseTo(fit.centreMm, 3);
  expect(breaksPerMm).toBeCloseTo(fit.breaksPerMm, 6);
  const read = readSample(id, 1);
  expect(read.upperHalfMeanMm).toBeCloseTo(card.upperHalfMeanMm, 2);
  expect(read.uniformityPercent).toBeCloseTo(readBeard(fit.lengths).uniformityPercent, 2);
});

test('a longer cotton has fewer short fibers, laid out longest first', () => {
  const all = sampleCottonIds.map((id) => readSample(id, 100));
  for (let i = 1; i < all.length; i++)
    expect(all[i]!.shortPercentByNumber).toBeLessThan(all[i - 1]!.shortPercentByNumber);
  for (const { lengthsMm } of all) expect([...lengthsMm].sort((a, b) => b - a)).toEqual(lengthsMm);
});

test('USDA-AMS crops: the ordinary bale is of staple 35.5 (2010 to 2012), which is 1.11 in', () => {
  expect(readSample('medium', 1).upperHalfMeanMm / 25.4).toBeCloseTo(35.5 / 32, 2);
});
