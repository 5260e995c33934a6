import { describe, expect, test } from 'vitest';
import { moistureFraction, totalKg, totalWaterKg } from '../../../src/model/lot.ts';
import { drifted, rainTakenUpKg, roomForWaterKg, soaked } from '../../../src/model/module/wetting.ts';
import { delivered } from '../gin/hand-made-lot.ts';

const damp = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent: 14 });

test('an inch of rain on an open conventional module weighs 1,330 lb, of which a share soaks in', () => {
  // 256 ft2 x 1 in = 21.33 ft3 of water at 62.3 lb.
  const openKg = rainTakenUpKg(1, 'conventional', 'none');
  expect(openKg / 0.35 / 0.45359237).toBeCloseTo(1329.3, 0);
});
test('a better cover lets less in, and more rain brings more', () => {
  const kg = (cover: 'good' | 'poor' | 'none', inches = 2) => rainTakenUpKg(inches, 'round', cover);
  expect(kg('good')).toBeLessThan(kg('poor'));
  expect(kg('poor')).toBeLessThan(kg('none'));
  expect(kg('poor', 3)).toBeCloseTo(1.5 * kg('poor', 2), 9);
});
test('soaking adds just that water, and the room for it shrinks by as much', () => {
  const waterKg = soaked(damp, 500);
  expect(totalWaterKg(waterKg) - totalWaterKg(damp.waterKg)).toBeCloseTo(500, 6);
  expect(roomForWaterKg(damp) - roomForWaterKg({ ...damp, waterKg })).toBeCloseTo(500, 6);
  const full = { ...damp, waterKg: soaked(damp, roomForWaterKg(damp)) };
  expect(totalWaterKg(full.waterKg) / totalKg(full)).toBeCloseTo(0.25, 9);
  expect(roomForWaterKg({ ...damp, waterKg: soaked(damp, 1e6) })).toBe(0);
});
describe('drift', () => {
  test('damp cotton dries slowly, dry cotton takes moisture up', () => {
    const dry = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent: 4 });
    expect(totalWaterKg(drifted(damp))).toBeLessThan(totalWaterKg(damp.waterKg));
    expect(totalWaterKg(drifted(dry))).toBeGreaterThan(totalWaterKg(dry.waterKg));
  });
  test('ends with lint at 7-8 % regain — Morton & Hearle, 65 % humidity', () => {
    let now = damp;
    for (let day = 0; day < 3000; day++) now = { ...now, waterKg: drifted(now) };
    const lint = moistureFraction(now, 'lint');
    expect(lint / (1 - lint)).toBeGreaterThan(0.07);
    expect(lint / (1 - lint)).toBeLessThan(0.08);
  });
});
