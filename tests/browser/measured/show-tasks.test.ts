import { expect, test } from 'vitest';
import { encodePlan } from '../../../src/teach/plan/plan-link.ts';
import { stopOf } from '../../../src/teach/plan/stop-list.ts';
import { showSteps } from '../../../src/teach/show/show-steps.ts';
import { everyPlan } from '../../teach/plan/any-plan.ts';
import { openPage, useBrowser } from '../browser.ts';
import { longTasksDuring } from '../long-tasks.ts';

useBrowser();

const patience = 120_000;
/** The seasons of a question run in tasks of their own. */
const settleMs = 700;
const { plan } = everyPlan.find(({ name }) => name === '45 minutes, adults, staple')!;

test(
  'turning the steps of a show keeps the page free, but for a scene’s first build',
  async () => {
    const { page, finish } = await openPage({ path: `#/teach/show?${encodePlan(plan)}`, reducedMotion: true });
    await page.locator('.show-step').waitFor({ timeout: patience });
    await page.waitForTimeout(1000);
    const steps = showSteps(plan);
    // Once through: every scene is built.
    for (let i = 1; i < steps.length; i++) {
      await page.keyboard.press('PageDown');
      await page.waitForTimeout(settleMs);
    }
    const tooLong: string[] = [];
    for (let i = steps.length - 2; i >= 0; i--) {
      const { phase, stop } = steps[i]!;
      const draws = phase === 'see' && stopOf(stop.id)!.aim.kind === 'station';
      const turn = async (key: string) =>
        longTasksDuring(page, async () => {
          await page.keyboard.press(key);
          await page.waitForTimeout(settleMs);
        });
      let long = await turn('PageUp');
      if (long.length > 0 && !draws) {
        await page.keyboard.press('PageDown');
        await page.waitForTimeout(settleMs);
        long = await turn('PageUp');
      }
      if (long.length > 0) tooLong.push(`${i} ${phase} ${stop?.id}${draws ? ' (scene)' : ''}: ${long.join(', ')}`);
    }
    console.log(tooLong.join('\n'));
    expect(tooLong.filter((line) => !line.includes('(scene)'))).toEqual([]);
    await finish();
  },
  patience,
);
