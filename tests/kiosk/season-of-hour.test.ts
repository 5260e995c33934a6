import { expect, test } from 'vitest';
import { scenarioOfHour, seasonOfHour } from '../../src/kiosk/season-of-hour.ts';
import { newKiosk } from '../../src/kiosk/settings.ts';

const at = (hour: number) => new Date(2025, 4, 20, hour, 30);
const gin = { farm: 'river-bottom', stand: 'roller', lintCleaners: 1, greeting: { en: 'Hello', es: 'Hola' } } as const;

test('every hour another farm of the pool, and the same within the hour', () => {
  const hours = Array.from({ length: 12 }, (_, hour) => scenarioOfHour(newKiosk, at(hour)).scenario.id);
  expect(new Set(hours.slice(0, 6))).toEqual(new Set(newKiosk.scenarios));
  expect(hours.slice(6)).toEqual(hours.slice(0, 6));
  expect(seasonOfHour(newKiosk, at(9))).toBe(seasonOfHour(newKiosk, new Date(2025, 4, 20, 9, 59)));
});

test('the site’s own gin takes its turn, gins as it says and greets', () => {
  const settings = { ...newKiosk, scenarios: ['coastal-plain'], ownGin: gin };
  const [one, other] = [scenarioOfHour(settings, at(0)), scenarioOfHour(settings, at(1))];
  const [own, farm] = one.greeting ? [one, other] : [other, one];
  expect(own.greeting).toEqual(gin.greeting);
  expect(own.scenario.id).toBe('river-bottom');
  expect(own.scenario.decisions.ginning).toMatchObject({ stand: 'roller', lintCleaner: 'roller', lintCleaners: 1 });
  expect(farm).toMatchObject({ greeting: null, scenario: { id: 'coastal-plain' } });
});

test('only seasons that end in cloth are shown, another each day', () => {
  const dry = { ...newKiosk, scenarios: ['high-plains-dryland'] };
  const seasons = Array.from({ length: 6 }, (_, day) => seasonOfHour(dry, new Date(2025, 2, 1 + day, 10)).season);
  expect(new Set(seasons.map(({ seed }) => seed)).size).toBe(6);
  for (const { sewing } of seasons) expect(sewing?.patchInchesPerBoll).toBeGreaterThan(0);
});
