import { expect, test } from 'vitest';
import { farms } from '../../../src/model/farms.ts';
import { decodeRun, encodeRun } from '../../../src/statechart/saved-run.ts';
import { mostPupils, pupilNumber, seasonOfPupil, unreachable } from '../../../src/teach/class/class-seasons.ts';

test('each pupil has a season of their own, which its link brings back', () => {
  for (const seed of [7, 999_990]) {
    const run = { scenario: farms[0]!, seed };
    const own = Array.from({ length: mostPupils }, (_, i) => seasonOfPupil(run, i + 1));
    expect(new Set([seed, ...own.map((each) => each.seed)]).size).toBe(mostPupils + 1);
    for (const each of own) expect(decodeRun(encodeRun(each))).toEqual({ run: each, ignored: [] });
  }
});

test('a pupil’s number is a whole number of the class', () => {
  expect(['1', ' 12 ', '60'].map(pupilNumber)).toEqual([1, 12, 60]);
  expect(['0', '61', '-1', '2.5', '', 'ten', '1e1', '007'].map(pupilNumber)).toEqual(Array(8).fill(null));
});

test('addresses that lead back to the device itself cannot be reached (loopback: RFC 1122 3.2.1.3, RFC 6761 6.3, RFC 4291 2.5.3)', () => {
  expect(unreachable('file:', '')).toBe('file');
  for (const host of ['localhost', '127.0.0.1', '127.8.4.2', '[::1]', '0.0.0.0'])
    expect(unreachable('http:', host)).toBe('thisMachine');
  for (const host of ['192.168.1.20', 'school.example', '12.127.0.1', 'localhost.school.example'])
    expect(unreachable('https:', host)).toBeNull();
});
