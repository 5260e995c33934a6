// @vitest-environment happy-dom
import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Coverage } from '../../../src/pages/sources/coverage.tsx';
import { findFacts, findTables, markOrder } from '../../../src/pages/sources/fact-rows.ts';
import { renderPart, textOf } from '../../ui/render-part.ts';

type Cited = Readonly<{ mark: string; value?: unknown }>;

/** All that cites a source in the facts files as they lie on the disk, without the list of the model. */
async function citedOnDisk() {
  const cited: Cited[] = [];
  const walk = (value: unknown) => {
    if (typeof value !== 'object' || value === null) return;
    if ('source' in value && 'mark' in value) cited.push(value as Cited);
    else for (const inner of Object.values(value)) walk(inner);
  };
  const files = readdirSync('src/model', { recursive: true, encoding: 'utf8' }).filter((name) =>
    /(^|[/-])facts\.ts$/.test(name),
  );
  expect(files.length).toBeGreaterThan(40);
  for (const file of files) walk({ ...(await import(/* @vite-ignore */ `../../../src/model/${file}`)) });
  const isFact = ({ value }: Cited) => typeof value === 'number';
  return { facts: cited.filter(isFact), tables: cited.filter((each) => !isFact(each)) };
}
const disk = await citedOnDisk();
const withMark = (cited: readonly Cited[], mark: string) => cited.filter((each) => each.mark === mark).length;

test('the page says how many constants and tables bear each mark, as counted from the files themselves', async () => {
  const page = await renderPart(<Coverage />);
  const items = [...page.querySelectorAll('.coverage-list li')];
  expect(items.map((item) => item.getAttribute('data-mark'))).toEqual(markOrder);
  for (const [i, mark] of markOrder.entries()) {
    const facts = withMark(disk.facts, mark);
    const percent = Math.round((100 * facts) / disk.facts.length);
    expect(textOf(items[i]).replaceAll('\u202f', ' ')).toContain(
      `${facts} of ${disk.facts.length}, ${percent}%; ${withMark(disk.tables, mark)} of ${disk.tables.length} tables`,
    );
  }
});
test('the marks together are all there is', () => {
  expect(markOrder.reduce((sum, mark) => sum + withMark(disk.facts, mark), 0)).toBe(disk.facts.length);
  expect(markOrder.reduce((sum, mark) => sum + withMark(disk.tables, mark), 0)).toBe(disk.tables.length);
});
test('a search by mark finds what the coverage counts, tables among it', () => {
  for (const mark of markOrder) {
    expect(findFacts('', mark)).toHaveLength(withMark(disk.facts, mark));
    expect(findTables('', mark)).toHaveLength(withMark(disk.tables, mark));
  }
  expect(findFacts('', null)).toHaveLength(disk.facts.length);
  expect(findTables('zyzzyva', null)).toEqual([]);
  expect(findTables('month lengths', null).map(({ name }) => name)).toContain('field/calendar-facts.monthLengths');
});
