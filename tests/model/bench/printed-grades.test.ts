import { expect, test } from 'vitest';
import {
  colourAgreement,
  colourCodesOf,
  noGrades,
  stapleAgreement,
  stapleCodesOf,
} from '../../../src/model/bench/printed-grades.ts';
import { cardOf } from '../../../src/model/bench/set-up.ts';
import { colourOf } from '../../../src/model/classing/colour.ts';
import { quiltingSetUp } from './benches.ts';

const card = cardOf('uplandMedium');

test('1.17 in is staple 37 and 1.18 in is 38 (chart of the classing office)', () => {
  expect(stapleAgreement({ ...card, lengthIn: 1.17 }, 37)).toBe('agrees');
  expect(stapleAgreement({ ...card, lengthIn: 1.18 }, 38)).toBe('agrees');
  expect(stapleAgreement({ ...card, lengthIn: 1.18 }, 37)).toBe('differs');
});
test('a grade or a group beside the chart’s is near, two away differs', () => {
  const white = { ...card, reflectanceRd: 75, yellownessB: 8 };
  const { color } = colourOf('upland', 75, 8);
  expect(colourAgreement(white, color)).toBe('agrees');
  expect(colourAgreement(white, `${Number(color[0]) + 1}${color[1]}`)).toBe('near');
  expect(colourAgreement(white, `${color[0]}4`)).toBe('differs');
  expect(colourAgreement(white, '85')).toBe('differs');
});
test('the grades to choose from are those of 7 CFR 28.525 for upland, six for Pima', () => {
  expect(colourCodesOf('upland')).toContain('31');
  expect(colourCodesOf('upland')).toContain('85');
  expect(colourCodesOf('pima')).toEqual(['1', '2', '3', '4', '5', '6']);
  expect(stapleCodesOf('upland')).toContain(36);
});
test('nothing is typed to begin with', () => {
  expect(quiltingSetUp.printed).toEqual(noGrades);
});
