// @vitest-environment happy-dom
import { beforeEach, describe, expect, test } from 'vitest';
import type { Language } from '../../../src/language/language.ts';
import { farms } from '../../../src/model/farms.ts';
import { checkScenario, type Scenario } from '../../../src/model/scenario.ts';
import { inEra, thirtiesFarm } from '../../../src/pages/farm/era-change.ts';
import FarmPage from '../../../src/pages/farm/farm-page.tsx';
import { farmFileText } from '../../../src/pages/farm/read-farm-file.ts';
import { lookAgain, ownFarms } from '../../../src/pages/farm/shelf.ts';
import { decodeRun, encodeRun } from '../../../src/statechart/saved-run.ts';
import { afterwards, renderPart, textOf } from '../../ui/render-part.ts';

const river = farms.find(({ id }) => id === 'river-bottom')!;
const openFarm = (query = encodeRun({ scenario: river, seed: 4 }), language: Language = 'en') =>
  renderPart(<FarmPage query={query} theme="day" />, language);
const field = (page: HTMLElement, label: string): HTMLInputElement => {
  const found = [...page.querySelectorAll('label')].find((each) => textOf(each) === label);
  return page.querySelector<HTMLInputElement>(`[id="${found?.htmlFor}"]`)!;
};
const type = (input: HTMLInputElement, text: string) =>
  afterwards(() => {
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
const button = (page: HTMLElement, name: string) =>
  [...page.querySelectorAll('button')].find((each) => textOf(each) === name)!;
const press = (page: HTMLElement, name: string) => afterwards(() => button(page, name).click());
const choose = (page: HTMLElement, within: string, name: string) =>
  afterwards(() => {
    const choice = [...page.querySelectorAll<HTMLElement>(`${within} label.choice`)].find(
      (each) => textOf(each) === name,
    )!;
    choice.querySelector('input')!.click();
  });
/** Opens a file through the farm's own picker, as a visitor does. */
async function openFile(page: HTMLElement, text: string) {
  const input = page.querySelector<HTMLInputElement>('.farm-files input[type=file]')!;
  Object.defineProperty(input, 'files', { value: [new File([text], 'theirs.json')], configurable: true });
  await afterwards(() => input.dispatchEvent(new Event('change', { bubbles: true })));
  await afterwards(() => new Promise((done) => setTimeout(done, 20)) as unknown as undefined);
}

beforeEach(() => {
  localStorage.clear();
  lookAgain();
});

describe('a farm of one’s own', () => {
  test('begins as a copy, and is kept from the first change on', async () => {
    const page = await openFarm();
    expect(ownFarms()).toEqual([]);
    await choose(page, '[data-station=planting]', 'Upland, long');
    expect(ownFarms().map(({ scenario }) => scenario.decisions.planting.variety)).toEqual(['uplandLong']);
    expect(ownFarms()[0]!.scenario.id).toMatch(/^own-[0-9a-z]{8}$/);
    expect(textOf(page.querySelector('[data-station=planting]'))).toContain('Seed: Upland, long, there Upland, medium');
    expect(textOf(page.querySelector('.farm-quilt .caption'))).toBe(
      '1 thing unlike River bottom. Sewn blocks are yours.',
    );
    await press(page, 'Put back as on River bottom');
    expect(ownFarms()[0]!.scenario.decisions).toEqual(river.decisions);
  });

  test.each([
    [
      'en',
      'Name',
      'Field, acres',
      'Field, acres: 0 is not allowed. Allowed: 1 to 5,000 acres.',
      'Your farm is as it was.',
    ],
    [
      'es',
      'Nombre',
      'Campo, acres',
      'Campo, acres: 0 no se permite. Se permite: 1 a 5,000 acres.',
      'La granja quedó como estaba.',
    ],
  ] as const)(
    'in %s: names are typed, and a size that cannot be is refused in words',
    async (language, name, acres, refused, untouched) => {
      const page = await openFarm(undefined, language);
      await type(field(page, name), '<b>Loma</b> & hijos');
      expect(ownFarms()[0]!.scenario.name).toEqual({ en: '<b>Loma</b> & hijos', es: '<b>Loma</b> & hijos' });
      expect(textOf(page.querySelector('.farm-quilt h2'))).toBe('<b>Loma</b> & hijos');
      expect(page.querySelector('.farm-quilt h2 b')).toBeNull();
      await type(field(page, acres), '0');
      expect(textOf(page.querySelector('.place-plan [role=alert]'))).toContain(refused);
      expect(textOf(page.querySelector('.place-plan [role=alert]'))).toContain(untouched);
      expect(ownFarms()[0]!.scenario.acres).toBe(river.acres);
      await type(field(page, acres), '12.5');
      expect(page.querySelector('.place-plan [role=alert]')).toBeNull();
      expect(ownFarms()[0]!.scenario.acres).toBe(12.5);
    },
  );

  test('a name past its length is refused, stays in the field, and changes nothing', async () => {
    const page = await openFarm();
    await type(field(page, 'Name'), 'x'.repeat(201));
    expect(textOf(page.querySelector('.farm-texts [role=alert]'))).toContain(
      'Allowed: text of at most 200 characters.',
    );
    expect(field(page, 'Name').value).toHaveLength(201);
    expect(ownFarms()).toEqual([]);
  });

  test('a file that cannot be used is named, and the farm stays', async () => {
    const page = await openFarm();
    await type(field(page, 'Name'), 'Mine');
    const before = ownFarms();
    for (const junk of ['', 'null', '[]', '{"id":7}', farmFileText({ ...river, acres: -1 } as Scenario)]) {
      await openFile(page, junk);
      expect(textOf(page.querySelector('.farm-files [role=alert]'))).toContain('is not allowed. Allowed:');
      expect(ownFarms()).toEqual(before);
      expect(field(page, 'Name').value).toBe('Mine');
    }
  });

  test('a file comes back as it went out; one whose id is taken gets an id of its own', async () => {
    const page = await openFarm();
    const theirs: Scenario = { ...thirtiesFarm, id: 'theirs', name: { en: 'Theirs', es: 'Suya' }, acres: 7 };
    await openFile(page, farmFileText(theirs));
    expect(page.querySelector('.farm-files [role=alert]')).toBeNull();
    expect(ownFarms().map(({ scenario }) => scenario)).toEqual([theirs]);
    await openFile(page, farmFileText({ ...theirs, acres: 9 }));
    const [newer, older] = ownFarms();
    expect(older!.scenario).toEqual(theirs);
    expect({ ...newer!.scenario, id: 'theirs' }).toEqual({ ...theirs, acres: 9 });
    expect(newer!.scenario.id).not.toBe('theirs');
  });

  test('taken off the shelf, a farm can be put back', async () => {
    const page = await openFarm();
    await type(field(page, 'Name'), 'Mine');
    const before = ownFarms();
    await press(page, 'Take it off the shelf');
    expect(ownFarms()).toEqual([]);
    await press(page, 'Put it back');
    expect(ownFarms()).toEqual(before);
  });

  test('runs by a link that holds all but the name, and says so', async () => {
    const page = await openFarm();
    await type(field(page, 'Name'), 'Mine');
    await choose(page, '.place-plan', 'Low desert');
    expect(textOf(page.querySelector('.farm-link'))).toContain('the name and what is said of the farm');
    await press(page, 'Run this farm');
    const query = location.hash.split('?')[1]!;
    expect(query).toContain('&land=3---&own=own-');
    const { run } = decodeRun(query);
    expect(run.scenario).toEqual({ ...ownFarms()[0]!.scenario, name: river.name, story: river.story });
    expect(run.seed).toBe(4);
  });
});

describe('moved to the 1930s', () => {
  test.each(farms.map((farm) => [farm.id, farm] as const))(
    '%s has no machine of later years, and stays a legal farm',
    (_, farm) => {
      const moved = inEra(farm, 'thirties');
      expect(checkScenario(moved).ok).toBe(true);
      expect(moved.decisions.ginning.lintCleaners).toBe(0);
      expect(moved.decisions.cleaning.dryers).toBe(0);
      expect(moved.decisions.classing.moduleAveraging).toBe(false);
      expect(moved.decisions.planting).toEqual(farm.decisions.planting);
      expect(inEra(moved, 'present').era).toBe('present');
    },
  );
});
