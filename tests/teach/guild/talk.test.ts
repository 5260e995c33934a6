import { expect, test } from 'vitest';
import { guildTalk, slideIds, talkMinutes } from '../../../src/teach/guild/talk.ts';

test('every slide stands once, its minutes are whole, and they add up', () => {
  expect(guildTalk.map(({ id }) => id)).toEqual([...slideIds]);
  expect(guildTalk.every(({ minutes }) => Number.isInteger(minutes) && minutes >= 1)).toBe(true);
  expect(guildTalk.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(talkMinutes);
});
