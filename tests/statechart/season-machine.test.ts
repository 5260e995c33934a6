import { describe, expect, test } from 'vitest';
import { createActor, fromCallback } from 'xstate';
import { farms } from '../../src/model/farms.ts';
import { stationIds } from '../../src/model/station.ts';
import { type Judge, type RunnerCommand, seasonMachine } from '../../src/statechart/season-machine.ts';

function open(judge: Judge = () => null) {
  const commands: RunnerCommand[] = [];
  const machine = seasonMachine.provide({
    actors: { runner: fromCallback<RunnerCommand>(({ receive }) => receive((c) => commands.push(c as RunnerCommand))) },
  });
  const actor = createActor(machine, { input: { judge, scenario: farms[0]!, seed: 1 } });
  actor.start();
  return { actor, commands, context: () => actor.getSnapshot().context, state: () => actor.getSnapshot().value };
}

describe('the season statechart', () => {
  test('opens at planting, running', () => {
    const { commands, state, context } = open();
    expect(state()).toBe('playing');
    expect(context().station).toBe('planting');
    expect(commands.map((c) => c.type)).toEqual(['enter', 'run']);
  });

  test('sews twelve blocks in and finishes', () => {
    const { actor, state, context } = open();
    for (const station of stationIds) {
      expect(context().station).toBe(station);
      actor.send({ type: 'STATION_ENDED' });
      expect(state()).toBe('ended');
      actor.send({ type: 'SEW_IN' });
    }
    expect(state()).toBe('finished');
    expect(context().sewn).toBe(12);
  });

  test('by stage it sews itself on to the end', () => {
    const { actor, state, context } = open();
    actor.send({ type: 'SPEED', speed: 'byStage' });
    for (let i = 0; i < 12; i++) actor.send({ type: 'STATION_ENDED' });
    expect(state()).toBe('finished');
    expect(context().sewn).toBe(12);
  });

  test('a refusal says why and stays; deciding otherwise clears it', () => {
    const judge: Judge = (scenario, _seed, station) =>
      station === 'boll' && scenario.decisions.boll.openPercent < 30
        ? { station, reason: 'notEnoughBollsOpen', values: { openPercent: 20 } }
        : null;
    const { actor, context, state } = open(judge);
    actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'DECIDE', station: 'boll', key: 'openPercent', value: 20 });
    actor.send({ type: 'SEW_IN' });
    expect(context().station).toBe('boll');
    expect(context().refusal?.reason).toBe('notEnoughBollsOpen');
    actor.send({ type: 'DECIDE', station: 'boll', key: 'openPercent', value: 60 });
    expect(context().refusal).toBeNull();
    actor.send({ type: 'SEW_IN' });
    expect(context().station).toBe('harvest');
    expect(state()).toBe('playing');
  });

  test('going back keeps the blocks; deciding there unpicks what follows', () => {
    const { actor, context } = open();
    for (let i = 0; i < 7; i++) actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'GO_TO', station: 'harvest' });
    expect(context()).toMatchObject({ station: 'harvest', sewn: 7 });
    actor.send({ type: 'DECIDE', station: 'harvest', key: 'method', value: 'hand' });
    expect(context()).toMatchObject({ station: 'harvest', sewn: 3 });
    expect(context().scenario.decisions.harvest.method).toBe('hand');
  });

  test('no station beyond the next block can be reached', () => {
    const { actor, context } = open();
    actor.send({ type: 'GO_TO', station: 'classing' });
    expect(context().station).toBe('planting');
  });

  test('pausing, stepping and changing speed reach the runner', () => {
    const { actor, commands, state } = open();
    actor.send({ type: 'PAUSE' });
    expect(state()).toBe('resting');
    actor.send({ type: 'STEP_DAY' });
    actor.send({ type: 'STEP_STATION' });
    actor.send({ type: 'PLAY' });
    actor.send({ type: 'SPEED', speed: 'byDay' });
    expect(commands.map((c) => c.type)).toEqual(['enter', 'run', 'hold', 'stepDay', 'toEnd', 'run', 'hold', 'run']);
    expect(commands.at(-1)).toEqual({ type: 'run', speed: 'byDay' });
  });

  test('starting over unpicks the quilt and keeps the decisions', () => {
    const { actor, context } = open();
    actor.send({ type: 'DECIDE', station: 'planting', key: 'rowInches', value: 30 });
    actor.send({ type: 'SEW_IN' });
    actor.send({ type: 'START_OVER' });
    expect(context()).toMatchObject({ station: 'planting', sewn: 0 });
    expect(context().scenario.decisions.planting.rowInches).toBe(30);
  });
});
