import { expect, test } from 'vitest';
import { ginOfScenario, ginScenario } from '../../src/kiosk/own-gin.ts';
import { kioskLimits, mayStand } from '../../src/kiosk/settings.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { checkScenario } from '../../src/model/scenario.ts';

const gin = {
  farm: 'long-staple-valley',
  stand: 'saw',
  lintCleaners: 1,
  greeting: { en: 'Welcome to our gin', es: 'Bienvenidos a nuestra despepitadora' },
} as const;

test('the own gin is a farm file like any other, and its season runs with its stand and lint cleaners', () => {
  const scenario = ginScenario(gin);
  expect(checkScenario(JSON.parse(JSON.stringify(scenario)))).toEqual({ ok: true, value: scenario });
  expect(scenario.decisions.ginning).toMatchObject({ stand: 'saw', lintCleaner: 'saw', lintCleaners: 1 });
  const farm = farms.find(({ id }) => id === gin.farm)!;
  const patch = (of: typeof farm) => runSeason(of, 7, null).sewing?.patchInchesPerBoll;
  expect(patch(scenario)).toBeGreaterThan(1);
  expect(patch(scenario)).not.toBe(patch(farm));
});

test('a gin that was saved comes back with its stand, cleaners and greeting, and the cotton of its climate', () => {
  const back = ginOfScenario(ginScenario(gin));
  expect(back).toEqual({ ok: true, value: gin });
  for (const farm of farms) {
    const read = ginOfScenario(farm);
    expect(read.ok && mayStand('ownGin', read.value)).toBe(true);
    expect(read.ok && read.value.farm).toBe(farm.id);
  }
});

test('a name that is too long for a greeting is named, by language', () => {
  const long = 'x'.repeat(kioskLimits.greetingLetters + 1);
  const read = ginOfScenario({ ...farms[0]!, name: { en: 'Short', es: long } });
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(['name.es']);
});
