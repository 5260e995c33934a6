import { expect, test } from 'vitest';
import { encodePlan } from '../../../src/teach/plan/plan-link.ts';
import { showSteps } from '../../../src/teach/show/show-steps.ts';
import { everyPlan } from '../../teach/plan/any-plan.ts';
import { openPage, useBrowser } from '../browser.ts';
import { longTasksDuring, measuredAgain } from '../long-tasks.ts';

useBrowser([]);

const patience = 240_000;
/** What a step leaves to be drawn, and a question's seasons, run in tasks of their own. */
const settleMs = 500;
const name = '45 minutes, adults, staple';
const { plan } = everyPlan.find((each) => each.name === name)!;

test(
  'turning the steps of a show keeps the page free once its scenes are built',
  async () => {
    const { page, finish } = await openPage({ path: `#/teach/show?${encodePlan(plan)}`, reducedMotion: true });
    await page.locator('.show-step').waitFor({ timeout: patience });
    await page.waitForTimeout(1000);
    const steps = showSteps(plan);
    const turn = async (key: string) => {
      await page.keyboard.press(key);
      await page.waitForTimeout(settleMs);
    };
    for (let i = 1; i < steps.length; i++) await turn('PageDown');
    for (let i = steps.length - 2; i >= 0; i--) {
      let tried = 0;
      const tooLong = await measuredAgain(async () => {
        if (tried++ > 0) await turn('PageDown');
        return longTasksDuring(page, () => turn('PageUp'));
      });
      expect(tooLong, `step ${i}, ${steps[i]!.phase} of ${steps[i]!.stop?.id}`).toEqual([]);
    }
    await finish();
  },
  patience,
);
