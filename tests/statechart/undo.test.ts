import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { stationIds } from '../../src/model/station.ts';
import { encodeRun } from '../../src/statechart/saved-run.ts';
import { seasonMachine } from '../../src/statechart/season-machine.ts';
import { long, propertySeed } from '../laws/runs.ts';

function open(farm = farms[0]!) {
  const actor = createActor(seasonMachine, { input: { judge: () => null, scenario: farm, seed: 7 } });
  actor.start();
  const context = () => actor.getSnapshot().context;
  return {
    actor,
    context,
    link: () => encodeRun(context()),
    /** Every number of the season as it stands, as text. */
    season: () => JSON.stringify(runSeason(context().scenario, context().seed, null)),
    place: () => ({ station: context().station, sewn: context().sewn }),
  };
}

describe('taking back the last choice', () => {
  test.each(farms)('gives the same link and the same season to the last byte: $id', (farm) => {
    const { actor, link, season } = open(farm);
    const before = { link: link(), season: season() };
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 34 });
    expect(season()).not.toBe(before.season);
    actor.send({ type: 'UNDO' });
    expect({ link: link(), season: season() }).toEqual(before);
  });

  test('after going back and deciding otherwise, the blocks that were unpicked come back', () => {
    const { actor, link, season, place } = open();
    for (let i = 0; i < 8; i++) actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'GO_TO', station: 'harvest' });
    const before = { link: link(), season: season(), place: place() };
    actor.send({ type: 'DECIDE', station: 'harvest', key: 'method', value: 'hand' });
    expect(place()).toEqual({ station: 'harvest', sewn: 3 });
    actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'UNDO' });
    expect({ link: link(), season: season(), place: place() }).toEqual(before);
  });

  test('a slider’s many small steps are one choice, and another control another', () => {
    const { actor, context, link } = open();
    const [start] = [link()];
    for (const value of [37, 36, 35, 34]) actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value });
    const turned = link();
    actor.send({ type: 'DECIDE', station: 'planting', key: 'seedsPerFoot', value: 2 });
    actor.send({ type: 'UNDO' });
    expect(link()).toBe(turned);
    actor.send({ type: 'UNDO' });
    expect(link()).toBe(start);
    expect(context().taken).toEqual([]);
  });

  test('the same control, turned again after a block was sewn, is a second choice', () => {
    const { actor, link } = open();
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 34 });
    const first = link();
    actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'GO_TO', station: 'planting' });
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 30 });
    actor.send({ type: 'UNDO' });
    expect(link()).toBe(first);
  });

  test('with nothing to take back it does nothing, and another farm starts afresh', () => {
    const { actor, link, context } = open();
    actor.send({ type: 'UNDO' });
    expect(actor.getSnapshot().value).toBe('playing');
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 30 });
    actor.send({ type: 'OPEN', scenario: farms[1]!, seed: 2 });
    const opened = link();
    actor.send({ type: 'UNDO' });
    expect(link()).toBe(opened);
    expect(context().taken).toEqual([]);
  });

  test('law: whatever is decided and sewn in whatever order, taking all of it back gives the first link', () => {
    const move = fc.oneof(
      fc.record({ type: fc.constant('DECIDE' as const), inches: fc.integer({ min: 30, max: 40 }) }),
      fc.record({ type: fc.constant('AID' as const), on: fc.boolean() }),
      fc.record({ type: fc.constant('SEW_IN' as const) }),
      fc.record({ type: fc.constant('GO_TO' as const), station: fc.constantFrom(...stationIds.slice(0, 4)) }),
    );
    const numbers = open().season();
    fc.assert(
      fc.property(fc.array(move, { maxLength: 20 }), (moves) => {
        const { actor, link, season, context } = open();
        const start = link();
        for (const each of moves) {
          if (each.type === 'DECIDE')
            actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: each.inches });
          else if (each.type === 'AID')
            actor.send({ type: 'DECIDE', station: 'boll', key: 'harvestAid', value: each.on });
          else actor.send(each);
        }
        while (context().taken.length > 0) actor.send({ type: 'UNDO' });
        expect(link()).toBe(start);
        // To the last byte, every number of the season.
        expect(season()).toBe(numbers);
      }),
      { seed: propertySeed, numRuns: long ? 100 : 12 },
    );
  });

  test('a planted bug is seen: with one choice not taken back, neither the link nor the season is the first', () => {
    const { actor, link, season, context } = open();
    const [start, numbers] = [link(), season()];
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 34 });
    actor.send({ type: 'DECIDE', station: 'boll', key: 'openPercent', value: 40 });
    while (context().taken.length > 1) actor.send({ type: 'UNDO' });
    expect(link()).not.toBe(start);
    expect(season()).not.toBe(numbers);
  });

  test('law: going back to a station and deciding as before gives the same season to the last byte', () => {
    fc.assert(
      fc.property(fc.constantFrom(...farms), fc.integer({ min: 30, max: 40 }), (farm, rowInches) => {
        const { actor, link, season } = open(farm);
        const [start, numbers] = [link(), season()];
        const before = farm.decisions.planting.rowInches;
        actor.send({ type: 'SEW_IN' });
        actor.send({ type: 'SEW_IN' });
        actor.send({ type: 'GO_TO', station: 'planting' });
        actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: rowInches });
        actor.send({ type: 'SEW_IN' });
        actor.send({ type: 'GO_TO', station: 'planting' });
        actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: before });
        expect(link()).toBe(start);
        expect(season()).toBe(numbers);
      }),
      { seed: propertySeed, numRuns: long ? 50 : 6 },
    );
  });
});
