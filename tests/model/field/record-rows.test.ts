import { expect, test } from 'vitest';
import { recordFacts } from '../../../src/model/field/record-facts.ts';
import { parseRecord } from '../../../src/model/field/record-rows.ts';

const header = 'DATE,TMAX,TMIN,PRCP';
const rows = (text: string) => {
  const result = parseRecord(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
test('a line becomes a row in its own units', () => {
  expect(rows(`${header}\n2013-03-01,20,-1.5,0`)).toEqual([
    { line: 2, year: 2013, dayOfYear: 60, max: 20, min: -1.5, rain: 0, latitude: null },
  ]);
});
test('an empty value is null, an empty line nothing', () => {
  expect(rows(`${header}\n2013-03-01,,3,\n\n2013-03-02,4,3,0`).map((row) => [row.line, row.max, row.rain])).toEqual([
    [2, null, null],
    [4, 4, 0],
  ]);
});
test('tabs and semicolons divide columns too', () => {
  for (const mark of ['\t', ';']) {
    expect(rows(`${header}\n2013-03-01,20,3,0`.replaceAll(',', mark))[0]!.max).toBe(20);
  }
});
test('of many bad lines the first few are named', () => {
  const bad = Array.from({ length: 40 }, (_, k) => `day ${k},1,0,0`).join('\n');
  const result = parseRecord(`${header}\n${bad}`);
  expect(result.ok).toBe(false);
  if (!result.ok) expect(result.problems).toHaveLength(recordFacts.mostProblems.value);
});
