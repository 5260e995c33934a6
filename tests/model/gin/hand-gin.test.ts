import { describe, expect, test } from 'vitest';
import { handGinDays } from '../../../src/model/gin/hand-gin.ts';
import { handGinFacts } from '../../../src/model/gin/speed-facts.ts';
import { kilogramsFromPounds } from '../../../src/model/units.ts';

describe('the hand-cranked gin of 1793', () => {
  test('a task of fifty pounds is one day — letter of 24 November 1793, Founders Online, National Archives', () => {
    expect(handGinDays(kilogramsFromPounds(50))).toBeCloseTo(1, 12);
    expect(handGinDays(0)).toBe(0);
  });
  test('fifteen hundred weight took about four weeks of six days: no more days than the task allows, no fewer than the best days — the same letter', () => {
    const workingDays = 4 * 6;
    const atTask = handGinDays(kilogramsFromPounds(1500));
    const [least, most] = handGinFacts.lintLbPerDay.range;
    expect(workingDays).toBeLessThanOrEqual(atTask);
    expect(workingDays).toBeGreaterThanOrEqual((atTask * least) / most);
  });
});
