import { expect, test } from 'vitest';
import { splitList } from '../../src/measure/parse.js';

test('a unit behind the last of a list holds for all that have none of their own', () => {
  expect(splitList('2, 4 cm')).toEqual(['2 cm', '4 cm']);
  expect(splitList('2 in, 4 cm')).toEqual(['2 in', '4 cm']);
  expect(splitList('2, 4 1/2')).toEqual(['2', '4 1/2']);
  expect(splitList('2; 4,5 cm', true)).toEqual(['2 cm', '4,5 cm']);
});
