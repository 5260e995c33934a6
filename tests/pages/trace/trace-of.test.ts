import { expect, test } from 'vitest';
import { run } from '../../../src/cli/main.ts';
import { clothOunces } from '../../../src/model/trace/cloth-weights.ts';
import { projectIds } from '../../../src/model/trace/project-facts.ts';
import { startIds } from '../../../src/model/trace/trace-forward.ts';
import { decodeTrace } from '../../../src/pages/trace/trace-link.ts';
import { throughOf, traceOf } from '../../../src/pages/trace/trace-of.ts';

/** What the command line prints as data. */
function command(line: string): Record<string, unknown> {
  const out: string[] = [];
  run(line.split(' '), {
    out: (text: string) => out.push(text),
    say: () => {},
    readFile: () => {
      throw new Error('no file');
    },
  });
  return JSON.parse(out.join('\n')) as Record<string, unknown>;
}

function page(query: string) {
  const { asked } = decodeTrace(query);
  const through = throughOf(asked.run ?? 'v=1&farm=coastal-plain&seed=1');
  const traced = traceOf(asked, asked.stated ? null : through.season);
  if (!('account' in traced)) throw new Error(query);
  return traced;
}

test.each(projectIds)('%s: the page has the numbers of the command line, in all three cases', (project) => {
  const { low, middle, high } = page(`project=${project}&count=2&v=1&farm=river-bottom&seed=4`).account.cases;
  const said = command(`trace --project ${project} --count 2 --scenario river-bottom --seed 4 --json`);
  expect(said).toEqual(JSON.parse(JSON.stringify({ scenario: 'river-bottom', seed: 4, ...middle, low, high })));
});
test('so it has for the default season, for own cloth and for the stated averages', () => {
  const defaults = command('trace --project jeans --json');
  expect(defaults.bolls).toBe(page('project=jeans').account.cases.middle.bolls);
  const own = command('trace --yards 2.5 --width 60in --weight denim --json');
  expect(own.bolls).toBe(
    page(`project=own&yards=2.5&width=60&weight=${clothOunces('denim')}`).account.cases.middle.bolls,
  );
  const stated = command('trace --project jeans --averages --json');
  expect(stated.bolls).toBe(page('project=jeans&through=averages').account.cases.middle.bolls);
});
test.each(startIds)('forward from %s: the same on both', (start) => {
  const { scenario, seed, ...said } = command(`trace --from ${start} --count 3 --json`);
  expect([scenario, seed]).toEqual(['coastal-plain', 1]);
  expect(said).toEqual(page(`from=${start}&of=3`).forward);
});
test('a season without lint, yarn or cloth says so and falls back on what is stated', () => {
  const late = throughOf('v=1&farm=high-plains-dryland&seed=1&set=003n');
  expect(late.season.field.crop).toBeNull();
  expect(late.missing).toBe('failed');
  const traced = traceOf(decodeTrace('').asked, late.season);
  expect('account' in traced && traced.season).toBeNull();
  expect(throughOf('v=1&farm=coastal-plain&seed=1').missing).toBeNull();
});
