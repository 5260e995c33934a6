import { farmOf, farms } from '../model/farms.ts';
import type { Checked } from '../model/problem.ts';
import type { Scenario } from '../model/scenario.ts';
import { kioskLimits, type OwnGin } from './settings.ts';

/** The id under which the site's own gin goes as a farm file. */
const ginId = 'own-gin';

/** The cotton of one of the six farms, ginned as the site gins. */
export function ginnedAs({ farm: id, stand, lintCleaners }: OwnGin): Scenario {
  const farm = farmOf(id) ?? farms[0]!;
  const ginning = { ...farm.decisions.ginning, stand, lintCleaner: stand, lintCleaners };
  return { ...farm, decisions: { ...farm.decisions, ginning } };
}

/** The site's gin as a farm that every page can open, with its greeting for a name. */
export function ginScenario(gin: OwnGin): Scenario {
  const { name, ...farm } = ginnedAs(gin);
  const { en, es } = gin.greeting;
  return { ...farm, id: ginId, name: { en: en || name.en, es: es || name.es } };
}

/**
 * The gin of a farm file: its stand, its lint cleaners and its name as the greeting. The cotton is that of the farm of the same id
 * or, failing that, of the first farm with its climate.
 * @returns the gin, or what of the file does not fit a greeting
 */
export function ginOfScenario(scenario: Scenario): Checked<OwnGin> {
  const { id, climate, name, decisions } = scenario;
  const { greetingLetters } = kioskLimits;
  const long = (['en', 'es'] as const).filter((language) => name[language].length > greetingLetters);
  if (long.length > 0)
    return {
      ok: false,
      problems: long.map((language) => ({
        field: `name.${language}`,
        value: name[language],
        rule: { kind: 'type', expected: `text of at most ${greetingLetters} characters` },
      })),
    };
  const farm = farmOf(id) ?? farms.find((known) => known.climate === climate) ?? farms[0]!;
  const { stand, lintCleaners } = decisions.ginning;
  return { ok: true, value: { farm: farm.id, stand, lintCleaners, greeting: name } };
}
