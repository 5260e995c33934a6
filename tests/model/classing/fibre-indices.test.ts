import { expect, test } from 'vitest';
import { shortFibreIndex } from '../../../src/model/classing/fibre-indices.ts';

test('the short fibre formula does not reach to Pima', () => {
  expect(shortFibreIndex(1.43, 88)).toBeNull();
});
