import { expect, test } from 'vitest';
import { judgeDevice, type Probed, selfTestParts } from '../../src/kiosk/self-test.ts';

const good: Probed = {
  graphics: 'chip',
  storage: 'promised',
  keptFiles: 250,
  served: true,
  fingers: 10,
  voices: ['en', 'es'],
};
const grades = (probed: Partial<Probed>, wanted: readonly ('en' | 'es')[] = ['en', 'es']) =>
  Object.fromEntries(
    judgeDevice({ ...good, ...probed }, wanted).map(({ part, grade, says }) => [part, `${grade} ${says}`]),
  );

test('a sound device has a good line for each part', () => {
  const lines = judgeDevice(good, ['en', 'es']);
  expect(lines.map(({ part }) => part)).toEqual([...selfTestParts]);
  expect(new Set(lines.map(({ grade }) => grade))).toEqual(new Set(['good']));
});

test.each<[Partial<Probed>, string, string]>([
  [{ graphics: 'processor' }, 'graphics', 'enough processor'],
  [{ graphics: 'canvas' }, 'graphics', 'enough canvas'],
  [{ graphics: 'none' }, 'graphics', 'missing none'],
  [{ storage: 'kept' }, 'storage', 'enough kept'],
  [{ storage: 'none' }, 'storage', 'missing none'],
  [{ keptFiles: 0, served: false }, 'offline', 'missing none'],
  [{ served: false }, 'offline', 'enough notYet'],
  [{ fingers: 0 }, 'touch', 'missing none'],
  [{ voices: ['en'] }, 'sound', 'enough some'],
  [{ voices: [] }, 'sound', 'missing none'],
])('%j: %s is %s', (probed, part, line) => {
  expect(grades(probed)[part]).toBe(line);
});

test('only the voices of languages that are offered count', () => {
  expect(grades({ voices: ['en'] }, ['en']).sound).toBe('good all');
  expect(grades({ voices: ['en'] }, ['es']).sound).toBe('missing none');
});
