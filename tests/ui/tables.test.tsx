// @vitest-environment happy-dom
import { afterEach, describe, expect, test } from 'vitest';
import { closingErrorRelative, type MassLedger } from '../../src/model/ledger.ts';
import { CountTable } from '../../src/ui/count-table.tsx';
import { FibreCard } from '../../src/ui/fibre-card.tsx';
import { LedgerTable } from '../../src/ui/ledger-table.tsx';
import { WhatChanged } from '../../src/ui/what-changed.tsx';
import { sampleCounts, sampleLedger, sampleLengths, sampleReadings } from './gallery/sample-lot.ts';
import { renderPart, textOf } from './render-part.ts';

const lotNames = { in: 'From Cleaning', out: 'On to Pressing' };
const ledgerTable = (ledger: Pick<MassLedger, 'in' | 'out'>) => (
  <LedgerTable ledger={ledger} closingErrorRelative={closingErrorRelative(ledger)} lotNames={lotNames} />
);
/** Numbers of a row, in hundredths so that sums are exact. */
const numbersOf = (row: Element): number[] =>
  [...row.querySelectorAll('td')].map((cell) =>
    Math.round(Number(textOf(cell).replaceAll(',', '').replace('−', '-')) * 100),
  );
const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const setWidth = (width: number) => {
  (window as unknown as { happyDOM: { setViewport(size: { width: number }): void } }).happyDOM.setViewport({ width });
};

afterEach(() => setWidth(1024));

describe('the ledger on a wide screen', () => {
  test.each(['us', 'metric'] as const)('adds in every row and every column, in %s units', async (unitSystem) => {
    const page = await renderPart(ledgerTable(sampleLedger), 'en', unitSystem);
    const rows = [...page.querySelectorAll('tbody tr')];
    expect(rows.length).toBeGreaterThan(4);
    for (const row of [...rows, page.querySelector('tfoot tr')!]) {
      const cells = numbersOf(row);
      expect(sum(cells.slice(0, -1)), textOf(row)).toBe(cells.at(-1));
    }
    const column = (at: number, selector: string) =>
      sum([...page.querySelectorAll(selector)].map((row) => numbersOf(row)[at]!));
    const width = numbersOf(rows[0]!).length;
    for (let at = 0; at < width; at++) {
      const came = column(at, '.came-in tr');
      expect(column(at, '.went-out tr:not(.sum)')).toBe(came);
      expect(column(at, '.went-out tr.sum')).toBe(came);
    }
    expect(numbersOf(page.querySelector('tfoot tr')!).every((cell) => cell === 0)).toBe(true);
  });

  test('has heads for rows and columns, names its accounts and says the closing error', async () => {
    const page = await renderPart(ledgerTable(sampleLedger));
    const heads = [...page.querySelectorAll('thead th[scope=col]')].map(textOf);
    expect(heads).toEqual(['Account', 'Lint', 'Seed', 'Burs', 'Sticks', 'Leaf', 'Motes', 'Dirt', 'Water', 'All']);
    expect([...page.querySelectorAll('tbody th[scope=row]')].map(textOf)).toEqual([
      'From Cleaning',
      'Seed house',
      'Gin trash',
      'Gin motes (lint cleaner waste)',
      'On to Pressing',
      'All that went out',
    ]);
    expect(textOf(page.querySelector('.closing'))).toMatch(/0\.0 lb left over.*Closing error \d\.\d × 10⁻[⁰¹²³⁴-⁹]+/);
    expect(textOf(page.querySelector('caption'))).toContain('pounds');
  });

  test('a ledger that does not close says so and shows how much', async () => {
    const leaking: MassLedger = { ...sampleLedger, out: sampleLedger.out.slice(1) };
    const page = await renderPart(ledgerTable(leaking));
    expect(textOf(page.querySelector('.closing'))).toContain('does not close');
    expect(numbersOf(page.querySelector('tfoot tr')!).at(-1)).toBe(73330);
  });

  test('gathers entries of one account into one row', async () => {
    const twice: MassLedger = {
      ...sampleLedger,
      in: [...sampleLedger.in, ...sampleLedger.in],
      out: [...sampleLedger.out, ...sampleLedger.out],
    };
    const page = await renderPart(ledgerTable(twice));
    expect(page.querySelectorAll('.came-in tr')).toHaveLength(1);
    expect(numbersOf(page.querySelector('.came-in tr')!).at(-1)).toBe(2 * 129360);
  });

  test('speaks Spanish', async () => {
    const page = await renderPart(ledgerTable(sampleLedger), 'es', 'metric');
    expect(textOf(page.querySelector('tfoot th'))).toBe('Sin explicar');
    expect(textOf(page.querySelector('caption'))).toContain('kilogramos');
  });
});

test('on a phone the ledger is a list whose parts unfold, with the same sums', async () => {
  setWidth(390);
  const page = await renderPart(ledgerTable(sampleLedger));
  expect(page.querySelector('table')).toBeNull();
  const details = [...page.querySelectorAll('details')];
  expect(details).toHaveLength(5);
  for (const each of details) {
    const parts = [...each.querySelectorAll('dd')].map((cell) =>
      Math.round(Number(textOf(cell).replaceAll(',', '')) * 10),
    );
    const total = Math.round(Number(textOf(each.nextElementSibling).replaceAll(',', '')) * 10);
    expect(sum(parts)).toBe(total);
  }
  expect(textOf(page.querySelector('.ledger-total.unaccounted'))).toContain('0.0');
});

test('a count table adds, and leaves nothing unaccounted', async () => {
  const page = await renderPart(<CountTable ledgers={sampleCounts} />);
  for (const body of page.querySelectorAll('tbody')) {
    const counts = [...body.querySelectorAll('td')].map((cell) =>
      Number(textOf(cell).split(' ')[0]!.replaceAll(',', '')),
    );
    const [whole, ...rest] = counts;
    expect(rest.at(-1)).toBe(0);
    expect(sum(rest)).toBe(whole);
  }
  expect(page.querySelectorAll('tbody')).toHaveLength(2);
});

describe('the fiber card', () => {
  const card = (
    <FibreCard
      lengthsMm={sampleLengths.after}
      beforeMm={sampleLengths.before}
      reading={sampleReadings.after}
      readingBefore={sampleReadings.before}
    />
  );
  test('has a drawing with words, readings before and after, and the array as a table', async () => {
    const page = await renderPart(card);
    const drawing = page.querySelector('svg[role=img]')!;
    expect(drawing.getAttribute('aria-label')).toMatch(/fibers laid side by side.*1\.11 inches.*half an inch: \d+/s);
    const rows = [...page.querySelectorAll('.what-changed tbody tr')].map(textOf);
    expect(rows[0]).toBe('Upper half mean length1.17 in1.11 in');
    expect(rows[4]).toBe('Micronairesame4.2');
    const twin = page.querySelectorAll('.twin-table tbody tr');
    expect(twin.length).toBeGreaterThan(4);
    expect(textOf(twin[3])).toMatch(/^50%\d\.\d\d in\d\.\d\d in$/);
  });
  test('draws as many threads as it says, the short ones apart', async () => {
    const page = await renderPart(card);
    const threads = [...page.querySelectorAll('.pad-thread')].map(
      (path) => path.getAttribute('d')!.split('M').length - 1,
    );
    const said = Number(/^\d+/.exec(textOf(page.querySelector('.fibre-pad p')))![0]);
    expect(sum(threads)).toBe(said);
    const short = sampleLengths.after.filter((mm) => mm < 12.7).length / sampleLengths.after.length;
    expect(Math.abs(threads[1]! / said - short)).toBeLessThan(0.02);
  });
});

test('what stayed the same says so, what changed is marked', async () => {
  const page = await renderPart(
    <WhatChanged
      heading="What changed"
      changes={[
        { label: 'Length', before: '1.17 in', after: '1.11 in' },
        { label: 'Micronaire', before: '4.2', after: '4.2' },
        { label: 'Leaf', after: '3' },
      ]}
    />,
  );
  const rows = [...page.querySelectorAll('tbody tr')];
  expect(rows.map((row) => row.className)).toEqual(['changed', '', '']);
  expect(textOf(rows[1])).toBe('Micronairesame4.2');
  expect(textOf(page.querySelector('h3'))).toBe('What changed');
});
