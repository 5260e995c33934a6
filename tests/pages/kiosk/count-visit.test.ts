import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import { visitCounter } from '../../../src/pages/kiosk/count-visit.ts';
import { type KioskEvent, kioskMachine } from '../../../src/statechart/kiosk.ts';

function counted(...events: (KioskEvent | number)[]) {
  let nowMs = 0;
  const told: string[] = [];
  const actor = createActor(kioskMachine, { input: { languages: ['en', 'es'], volume: 50 } }).start();
  const counter = visitCounter(
    (event, seconds) => told.push(seconds === undefined ? event : `${event} ${seconds}`),
    () => nowMs,
  );
  counter(actor.getSnapshot());
  actor.subscribe(counter);
  for (const event of events)
    if (typeof event === 'number') nowMs += event * 1000;
    else actor.send(event);
  actor.stop();
  return told;
}
const next: KioskEvent = { type: 'NEXT' };

test('a visit, its language, each stop with its seconds, and that it was finished, once', () => {
  const told = counted(
    { type: 'BEGIN' },
    5,
    { type: 'LANGUAGE', language: 'es' },
    10,
    next,
    20,
    next,
    next,
    next,
    next,
    7,
    next,
    {
      type: 'BACK',
    },
    next,
    { type: 'HOME' },
  );
  expect(told).toEqual([
    'visit',
    'language:es',
    'station:boll 10',
    'station:harvest 20',
    'station:ginning 0',
    'station:pressing 0',
    'station:spinning 0',
    'finished',
    'station:sewing 7',
    'station:sewing 0',
  ]);
});

test('what is left by Home is counted as it stood; the language switched later is not counted again', () => {
  const told = counted(
    { type: 'BEGIN' },
    { type: 'LANGUAGE', language: 'en' },
    3,
    { type: 'LANGUAGE', language: 'es' },
    4,
    {
      type: 'HOME',
    },
  );
  expect(told).toEqual(['visit', 'language:en', 'station:boll 7']);
});
