import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { farms } from '../../src/model/farms.ts';

/** Runs a command with files that exist only here. */
function command(line: string, files: Record<string, string> = {}) {
  let out = '';
  let said = '';
  const code = run(line.split(' ').filter(Boolean), {
    out: (text) => {
      out += text;
    },
    say: (text) => {
      said += `${text}\n`;
    },
    readFile: (path) => {
      const text = files[path];
      if (text === undefined) throw Object.assign(new Error('no such file'), { code: 'ENOENT' });
      return text;
    },
  });
  return { code, out, said, json: () => JSON.parse(out) };
}

describe.each(farms.map(({ id }) => id))('season --json, %s', (id) => {
  const { code, json, out } = command(`season --scenario ${id} --json`);
  const report = json();

  test('holds every key it promises', () => {
    expect(code).toBe(0);
    expect(report).toMatchObject({ scenario: id, seed: 1, stopped: null });
    expect(report.stations).toHaveLength(12);
    expect(report.ledger.closingErrorRelative).toBeLessThan(1e-9);
    expect(report.ledger.inKg).toBeCloseTo(report.ledger.outKg, 6);
    for (const key of [
      'lintLbPerAcre',
      'firstFlowerDay',
      'openBollDay',
      'dd60PlantingToHarvest',
      'nodesAboveWhiteFlowerAtFirstFlower',
      'yieldShareFirstPosition',
    ]) {
      expect(report.field[key], key).toBeGreaterThan(0);
    }
    for (const key of ['turnout', 'seedCottonLbPer480LbBale', 'seedLbPer500LbBale', 'wasteLbPer480LbBale']) {
      expect(report.gin[key], key).toBeGreaterThan(0);
    }
    for (const key of ['ne', 'fibresInSection', 'cvPercent', 'tenacityCnPerTex']) {
      expect(report.yarn[key], key).toBeGreaterThan(0);
    }
    for (const key of ['gramsPerSquareMetre', 'yardsPerBale', 'patchInchesPerBoll']) {
      expect(report.cloth[key], key).toBeGreaterThan(0);
    }
    const places = report.fibre.map(({ after }: { after: string }) => after);
    expect(places.slice(0, 4)).toEqual(['boll', 'harvest', 'seedCottonCleaning', 'stand']);
    expect(places).toContain('card');
    for (const bale of report.bales) {
      expect(bale.netLb).toBeGreaterThan(bale.remnant ? 0 : 300);
      expect(bale.grossLb).toBeGreaterThan(bale.netLb);
      expect(bale.valueUsd).toBeGreaterThan(0);
      if (id === 'hand-picked-1930s') {
        expect(bale.tag).toBeNull();
        expect(bale.mark).toBeTruthy();
        expect(bale.byEye.grade).toBeTruthy();
      } else expect(bale.tag).toMatch(/^00000\d{7}$/);
    }
  });

  test('is byte-equal the second time', () => {
    expect(command(`season --scenario ${id} --json`).out).toBe(out);
  });

  test('reads as words and as CSV too', () => {
    expect(command(`season --scenario ${id}`).out).toContain('closing error');
    const rows = command(`season --scenario ${id} --csv`).out.trim().split('\n');
    expect(rows[0]).toContain('station,side,account,lintKg');
    expect(rows.length).toBeGreaterThan(30);
  });
});

describe('bale, cloth and trace', () => {
  test('a bale off the card', () => {
    const { json } = command(
      'bale --length 1.12in --uniformity 82 --strength 30 --micronaire 4.2 --rd 76 --b 8.5 --leaf 3 --json',
    );
    expect(json()).toMatchObject({ color: '31', leaf: 3, staple32nds: 36 });
    expect(json().limitNe.ringCombed).toBeGreaterThan(json().limitNe.rotor);
  });
  test('the same bale in other units', () => {
    const us = command('bale --length 1.12in --strength 30 --net 480lb --json').json();
    const metric = command('bale --length 28.448mm --strength 29.41995cN/tex --net 217.7243376kg --json').json();
    expect(metric.valueUsd).toBe(us.valueUsd);
    expect(metric.staple32nds).toBe(us.staple32nds);
  });
  test('a cloth: weight, cover, customs', () => {
    const cloth = command('cloth --warp 30Ne --weft 19.684708tex --ends 68/in --picks 26.77165/cm --json').json();
    expect(cloth.gramsPerSquareMetre).toBeCloseTo(112.25, 1);
    expect(cloth.tariffClass).toBe('printcloth');
  });
  test('a trace of a project and of own cloth', () => {
    const quilt = command('trace --project twin-quilt --averages --json').json();
    expect(quilt.lintKg / 0.45359237).toBeCloseTo(4.59, 1);
    expect(quilt.bolls).toBeGreaterThan(1300);
    const ofSeason = command('trace --project twin-quilt --scenario coastal-plain --seed 1 --json').json();
    expect(ofSeason).toEqual(command('trace --project twin-quilt --json').json());
    expect(ofSeason.low.bolls).toBeLessThan(ofSeason.bolls);
    expect(command('trace --project twin-quilt').out).toContain('Through coastal-plain, season 1');
    expect(command('trace --yards 3 --weight denim --json').json().ouncesPerSquareYard).toBeCloseTo(11.2, 1);
    expect(command('trace --yards 3 --width 44in --weight 4.3oz/yd2 --json').json().clothKg).toBeCloseTo(0.447, 2);
  });
});

describe('bad input: one line naming the field, the value and what is allowed, exit code 2, nothing on standard output', () => {
  const notJson = '{"version": 1,';
  const wrongRow = JSON.stringify({
    ...farms[0],
    decisions: { ...farms[0]!.decisions, planting: { ...farms[0]!.decisions.planting, rowInches: 5 } },
  });
  const noHigh = 'DATE,TMIN,PRCP\n2020-01-01,1,0\n';
  const gap = ['DATE,TMAX,TMIN,PRCP', '2020-01-01,20,10,0', '2020-12-31,20,10,0'].join('\n');
  test.each([
    ['fly', 'fly', 'season'],
    ['season --scenario nowhere', 'nowhere', 'coastal-plain'],
    ['season --scenario missing.json', 'missing.json', 'text file'],
    ['season --scenario broken.json', 'broken.json', 'JSON'],
    ['season --scenario row.json', 'decisions.planting.rowInches: 5', '15 to 40'],
    ['season --seed -3', '-3', '0 to 999999'],
    ['season --seed 2.5', '2.5', 'whole number'],
    ['season --json --csv', '--json, --csv', 'one of them'],
    ['season --latitude 33', '--latitude', '--weather'],
    ['season --weather missing.csv', 'missing.csv', 'text file'],
    ['season --weather nohigh.csv', 'TMAX', 'DATE'],
    ['season --weather gap.csv', '2020', 'missing'],
    ['season --wether x', '--wether', '--weather'],
    ['season --seed', '--seed', 'allowed'],
    ['season --seed 1 --seed 2', '--seed', 'once'],
    ['bale --leaf 11', '--leaf: 11', '1 to 8'],
    ['bale --length 3in', '--length: 3in', '0.5 to 1.8'],
    ['bale --length 1.1furlong', '1.1furlong', 'units'],
    ['bale --market moon', 'moon', 'southeast'],
    ['cloth --warp 30Ne', '--weft', 'such as'],
    ['cloth --warp 30q --weft 30 --ends 60 --picks 60', '30q', '30Ne'],
    ['cloth --warp 4 --weft 4 --ends 200 --picks 200', '--ends', 'fewer'],
    ['trace', '--project', 'twin-quilt'],
    ['trace --project moon-suit', 'moon-suit', 'twin-quilt'],
    ['trace --project twin-quilt --yards 3', '--yards', 'without --project'],
    ['trace --yards -1', '--yards', '0.125'],
    ['trace --yards 3 --weight moonsilk', 'moonsilk', 'denim'],
    ['trace --yards 3 --count 2', '--count', '--project'],
    ['trace --project tote --averages --seed 2', '--seed', 'without --averages'],
    ['trace --from moon', 'moon', 'rowFoot'],
    ['trace --project tote --count 0', '--count', '1 to 1000'],
  ])('%s', (line, named, allowed) => {
    const result = command(line, {
      'broken.json': notJson,
      'row.json': wrongRow,
      'nohigh.csv': noHigh,
      'gap.csv': gap,
    });
    expect(result.code).toBe(2);
    expect(result.out).toBe('');
    expect(result.said.trim().split('\n')).toHaveLength(1);
    expect(result.said).toContain(named);
    expect(result.said).toContain(allowed);
  });
});

/** A farm's file with some decisions of one station changed. */
function fileOf(id: string, station: 'planting' | 'ginning' | 'pressing', change: object): string {
  const farm = farms.find((candidate) => candidate.id === id)!;
  const decisions = { ...farm.decisions, [station]: { ...farm.decisions[station], ...change } };
  return JSON.stringify({ ...farm, decisions });
}

describe('words a person can read', () => {
  test('every sum of money names the year of its prices, or that they are mixed', () => {
    const present = command('season').out;
    expect(present).toMatch(/Bales: .*worth \$[\d,]+ in all, at prices of 20\d\d/);
    expect(present).toMatch(/Left to the farm: .*at prices of mixed years \(\d{4}, /);
    expect(command('season --scenario hand-picked-1930s').out).toMatch(/worth \$[\d,]+ in all, at prices of 1937/);
    expect(command('bale').out).toMatch(/Value \$[\d.]+ at prices of 20\d\d/);
  });
  test('and so do the data', () => {
    const { bales, money } = command('season --json').json();
    for (const bale of bales) expect(bale).toMatchObject({ priceYear: expect.any(Number), filled: expect.any(Array) });
    expect(money).toMatchObject({ mixedYears: true, years: expect.arrayContaining([bales[0].priceYear]) });
    expect(command('bale --json').json()).toMatchObject({ priceYear: expect.any(Number), filled: expect.any(Array) });
  });
  test.each([
    ['coastal-plain', 7.5, 'none', 0],
    ['coastal-plain', 8, 'waterDeducted', 0],
    ['long-staple-valley', 8, 'refusedForLoan', 1],
  ])(
    '%s pressed at %d %% moisture: %s, and the water that nobody pays for — National Cotton Council policy in Hughs et al. 2004',
    (id, restoreToPercent, rule, refused) => {
      const damp = { 'damp.json': fileOf(id, 'pressing', { restoreToPercent }) };
      const { bales, money, gin } = command('season --scenario damp.json --json', damp).json();
      type Row = Readonly<{ netLb: number; paidLb: number; waterRule: string }>;
      // Worked from the press's own moisture: dry pounds brought up to 7.5 %.
      const share = rule === 'none' ? 0 : 1 - (100 - gin.baleMoisturePercent) / 92.5;
      const netLb = bales.reduce((sum: number, bale: Row) => sum + bale.netLb, 0);
      expect(gin.baleMoisturePercent).toBeCloseTo(restoreToPercent, 6);
      for (const bale of bales as Row[]) {
        expect(bale.waterRule).toBe(rule);
        expect(bale.paidLb / bale.netLb).toBeCloseTo(1 - share, 2);
      }
      expect(money.waterDeductedLb / netLb).toBeCloseTo(share, 2);
      expect(money.balesRefusedForLoan).toBe(refused * bales.length);
    },
  );
  test.each(farms.map(({ id }) => id))('%s: nothing goes to a place by rounding alone', (id) => {
    const places = command(`season --scenario ${id}`).out.split('Where it went:')[1]!;
    expect(places.split('closing error')[0]).not.toMatch(/e-\d|\s0(\.0+)? lb/);
  });
  test('a crop that stops says why in a sentence', () => {
    const late = { 'late.json': fileOf('high-plains-dryland', 'planting', { plantingDayOfYear: 191 }) };
    const { out } = command('season --scenario late.json --seed 3', late);
    expect(out).toMatch(/Stopped at [A-Z]\w+\. [A-Z][^{}]+heat units gathered, .* needed\./);
    expect(out).not.toMatch(/noBollOpened|neverFlowered|neverSquared/);
  });
  test('more lint cleaners than their kind allows: how many were in line', () => {
    const air = { 'air.json': fileOf('coastal-plain', 'ginning', { lintCleaner: 'air', lintCleaners: 3 }) };
    expect(command('season --scenario air.json', air).out).toContain('1 of 3 lint cleaners');
    const { gin } = command('season --scenario air.json --json', air).json();
    expect(gin.lintCleaners).toEqual({ wanted: 3, inLine: 1 });
  });
  test.each([
    ['name', { ...farms[0], name: 'Plain' }, 'a text in en and one in es'],
    ['name.en', { ...farms[0], name: { en: 'x'.repeat(201), es: '' } }, 'text of at most 200 characters'],
    ['scenario', null, 'a group of fields'],
  ])('a scenario with a wrong %s is refused without words of the program', (field, scenario, allowed) => {
    const { code, said } = command('season --scenario bad.json', { 'bad.json': JSON.stringify(scenario) });
    expect(code).toBe(2);
    expect(said).toContain(`${field}: `);
    expect(said).toContain(`allowed: ${allowed}`);
    expect(said).not.toMatch(/Object|<=/);
  });
});

describe('files as they come', () => {
  test('a scenario with a byte-order mark is read', () => {
    const marked = { 'farm.json': `\uFEFF${JSON.stringify(farms[1])}` };
    expect(command('season --scenario farm.json --json', marked).json().scenario).toBe(farms[1]!.id);
  });
  const days = Array.from({ length: 365 }, (_, index) => {
    const date = new Date(Date.UTC(2013, 0, 1 + index)).toISOString().slice(0, 10);
    return `${date},30,20,3`;
  });
  const record = (latitude: string | null) =>
    [
      `DATE,TMAX,TMIN,PRCP${latitude === null ? '' : ',LATITUDE'}`,
      ...days.map((day) => (latitude === null ? day : `${day},${latitude}`)),
    ].join('\n');
  test('the latitude of a record is its own; the scenario’s where it has none; as asked only where asked', () => {
    const files = { 'own.csv': record('34.2'), 'none.csv': record(null) };
    expect(command('season --weather own.csv', files).said).toContain('latitude 34.2 (from the LATITUDE column)');
    expect(command('season --weather none.csv', files).said).toContain(
      'latitude 31.35 (none given, so that of the farm)',
    );
    expect(command('season --weather own.csv --latitude 30', files).said).toContain('latitude 30 (as asked)');
  });
  test('a latitude of 999 is refused', () => {
    const { code, said } = command('season --weather far.csv', { 'far.csv': record('999') });
    expect(code).toBe(2);
    expect(said).toContain('LATITUDE, line 2: 999 is not allowed; allowed: -60 to 60');
  });
});

test('30/20 tex at 40 x 30 per cm is described, and called tight — GATE 2009 Q37 (Indian Institutes of Technology)', () => {
  const line = 'cloth --warp 30tex --weft 20tex --ends 40/cm --picks 30/cm --warp-crimp 10 --weft-crimp 10';
  const { code, json } = command(`${line} --json`);
  expect(code).toBe(0);
  expect(json()).toMatchObject({ status: 'tight' });
  expect(json().gramsPerSquareMetre).toBeCloseTo(198, 6);
  expect(command(line).out).toMatch(/^Tight: /);
  expect(command('cloth --warp 30 --weft 30 --ends 68 --picks 68 --json').json().status).toBe('fits');
});

test('a crop that fails is a result: exit code 0, the rest null, the ledger closed', () => {
  const file = fileOf('high-plains-dryland', 'planting', { plantingDayOfYear: 191 });
  const { code, json } = command('season --scenario late.json --seed 3 --json', { 'late.json': file });
  expect(code).toBe(0);
  expect(json()).toMatchObject({ gin: null, fibre: null, bales: null, yarn: null, cloth: null });
  expect(json().stopped).toMatchObject({ station: expect.any(String), reason: expect.any(String) });
  expect(json().stopped.dd60).toBeGreaterThan(0);
  expect(json().ledger.closingErrorRelative).toBe(0);
});

test('help names scenarios, markets, weaves and projects', () => {
  const { code, out } = command('help');
  expect(code).toBe(0);
  for (const word of ['river-bottom', 'sanJoaquin', 'sateen', 'twin-quilt']) expect(out).toContain(word);
  expect(command('bale --help').out).toContain('--micronaire');
});
