// @vitest-environment happy-dom
import { describe, expect, test } from 'vitest';
import { practices } from '../../../src/checks/practice.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farmOf } from '../../../src/model/farms.ts';
import { PracticePanel } from '../../../src/pages/season/practice-panel.tsx';
import { renderPart, textOf } from '../../ui/render-part.ts';

const season = runSeason(farmOf('river-bottom')!, 1, null);
const stations = [...new Set(practices.map(({ station }) => station))];

describe.each(stations)('at %s', (station) => {
  test('each row shows what is told, what is in print and its source', async () => {
    const page = await renderPart(<PracticePanel season={season} station={station} />);
    const rows = [...page.querySelectorAll('dl > div')];
    const expected = practices.filter((row) => row.station === station);
    expect(rows).toHaveLength(expected.length);
    for (const [i, { told, printed, unit, ours }] of expected.entries()) {
      const [tells, prints, gives] = [...rows[i]!.querySelectorAll('dd')].map(textOf);
      expect(tells).not.toBe('');
      expect(prints).toContain('In print: ');
      expect(prints).toContain(printed ? printed.source : 'no figure found');
      if (unit !== 'dayOfYear') {
        for (const bound of told ?? []) expect(tells).toContain(String(bound));
        for (const bound of printed?.range ?? []) expect(prints).toContain(String(bound));
      }
      expect(gives !== undefined).toBe(ours(season) !== null);
      if (gives !== undefined) expect(gives).toMatch(/^This season: .*\d/);
    }
  });
});

test('dates are dates: planting from late April, in print from the middle of it', async () => {
  const planting = textOf(await renderPart(<PracticePanel season={season} station="planting" />));
  expect(planting).toContain('April 20');
  expect(planting).toContain('April 15');
  expect(planting).toContain('bought each year, not saved');
});
test('a figure from memory says so', async () => {
  const ginning = textOf(await renderPart(<PracticePanel season={season} station="ginning" />));
  expect(ginning).toContain('20 to 25 short tons, from memory');
});
test('nothing is drawn where nothing is told', async () => {
  expect((await renderPart(<PracticePanel season={season} station="sewing" />)).textContent).toBe('');
});
test('in Spanish', async () => {
  const harvest = textOf(await renderPart(<PracticePanel season={season} station="harvest" />, 'es'));
  expect(harvest).toContain('La gente del oficio dice');
  expect(harvest).toContain('200 a 300 lb al día');
});
