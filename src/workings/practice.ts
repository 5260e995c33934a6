import { type PracticeId, practices, toldTenth } from '../checks/practice.ts';
import { harvestFacts } from '../model/harvest/facts.ts';
import type { Season } from '../model/season.ts';
import { bloomWorkings } from './bloom.ts';
import { bollWorkings } from './boll.ts';
import { pressingWorkings } from './pressing.ts';
import { above, atStation, count, day, decided, exact, procedure, read, step } from './steps.ts';
import type { Printed, Step, Working } from './working.ts';

const usd = (value: number): Printed => ({ as: 'money', value, decimals: 2 });

const stepsOf = (working: Working | null | undefined): readonly Step[] =>
  working?.kind === 'procedure' ? working.steps : [];

/** The better quarter of the bales, which stand for good quality. */
function premiumSteps({ classing }: Season): Step[] {
  const points = (classing?.classed ?? []).map(({ premiumPoints }) => premiumPoints).sort((a, b) => b - a);
  const best = points.slice(0, Math.ceil(points.length / 4));
  const mean = best.reduce((sum, each) => sum + each, 0) / best.length;
  const at = atStation('classing');
  return [
    step('balesPressed', count(points.length), at),
    step('bestQuarter', count(best.length), above),
    step('bestPoints', exact(mean, 'points'), at),
  ];
}

function valueSteps({ classing }: Season): Step[] {
  const values = (classing?.classed ?? []).map(({ valueUsd }) => valueUsd);
  const at = atStation('classing');
  return [
    step('valueOfBales', usd(values.reduce((sum, each) => sum + each, 0)), at),
    step('balesPressed', count(values.length), at),
  ];
}

const steps: Readonly<Partial<Record<PracticeId, (season: Season) => readonly Step[]>>> = {
  plantingDate: ({ field }) => [step('plantedOn', day(field.plantedDay), decided('planting'))],
  firstBloom: (season) => stepsOf(bloomWorkings.firstFlower?.(season)),
  lastPicking: (season) => stepsOf(bollWorkings.harvestDay?.(season)),
  pickingRate: () => [
    step('handPace', exact(harvestFacts.handPoundsPerDay.value, 'poundsPerDay'), read(harvestFacts.handPoundsPerDay)),
  ],
  grossBale: (season) => [
    ...stepsOf(pressingWorkings.baleWeight?.(season)),
    ...stepsOf(pressingWorkings.tare?.(season)),
  ],
  premium: premiumSteps,
  baleValue: valueSteps,
};

/** The working of this season's figure beside what practitioners say; null where the season has none. */
export function practiceWorking(season: Season, id: PracticeId): Working | null {
  const practice = practices.find((each) => each.id === id);
  const ours = practice?.ours(season) ?? null;
  if (!practice || ours === null) return null;
  return procedure(steps[id]?.(season) ?? [], { as: 'told', unit: practice.unit, value: toldTenth(ours) });
}
