import { describe, expect, test } from 'vitest';
import { workingWords as english } from '../../src/language/messages/en/working-words.ts';
import { parts } from '../../src/model/lot.ts';
import type { Season } from '../../src/model/season.ts';
import { bookedKg, causeSteps } from '../../src/workings/ledger-causes.ts';
import type { Step } from '../../src/workings/working.ts';
import { farmSeasons } from './farm-seasons.ts';

/** Every number that a season's ledgers hold, and the steps that are said to lead to it. */
const cellsOf = (season: Season) =>
  season.ledgers.flatMap((ledger) =>
    (['in', 'out'] as const).flatMap((side) =>
      [...new Set(ledger[side].map((entry) => entry.account))].flatMap((account) =>
        [...parts, 'water' as const].flatMap((column) => {
          const kg = bookedKg(ledger, side, account, column);
          const where = `${ledger.station}, ${side}, ${account}, ${column}`;
          return kg > 0 ? [{ where, side, account, kg, steps: causeSteps(season, ledger, side, account, column) }] : [];
        }),
      ),
    ),
  );
const kgOf = ({ value }: Step): number => (value.as === 'mass' ? value.value : 0);
const sum = (steps: readonly Step[]): number => steps.reduce((total, step) => total + kgOf(step), 0);
const isOf = (side: 'in' | 'out') => (step: Step) => 'account' in step.name && step.name.side === side;
const isMachine = (step: Step) => 'machine' in step.name;

describe.each(farmSeasons)('%s', (_, season) => {
  const cells = cellsOf(season);
  const closeTo = (kg: number, wanted: number) => Math.abs(kg - wanted) / wanted;

  test('a lot that came in is what the station before handed on', () => {
    const handed = cells.filter(({ side, account }) => side === 'in' && account === 'lot');
    expect(handed.length).toBeGreaterThan(20);
    for (const { where, kg, steps } of handed) expect(closeTo(sum(steps), kg), where).toBeLessThan(1e-9);
  });

  test('a lot that goes on is what came in less what went elsewhere', () => {
    const passedOn = cells.filter(({ side, account }) => side === 'out' && account === 'lot');
    expect(passedOn.length).toBeGreaterThan(20);
    for (const { where, kg, steps } of passedOn) {
      expect(closeTo(sum(steps.filter(isOf('in'))) - sum(steps.filter(isOf('out'))), kg), where).toBeLessThan(1e-6);
    }
  });

  test('what machines took adds up to the account', () => {
    const byMachine = cells.filter(({ steps }) => steps.some(isMachine));
    expect(byMachine.length).toBeGreaterThan(15);
    for (const { where, kg, steps } of byMachine) {
      expect(closeTo(sum(steps.filter(isMachine)), kg), where).toBeLessThan(1e-9);
    }
  });

  test('every step has a name', () => {
    const words = cells.flatMap(({ steps }) => steps.flatMap(({ name }) => ('word' in name ? [name.word] : [])));
    expect(words.filter((word) => !(word in english.names))).toEqual([]);
  });
});
