import { expect, it } from 'vitest';
import { holdingUp } from './held-up.ts';

it('what can be done now comes first by how many others wait for it; what holds up none is not named', () => {
  const blocked = [
    { check: 'c', by: ['a'] },
    { check: 'd', by: ['a', 'b'] },
    { check: 'e', by: ['d', 'b', 'a'] },
  ];
  expect(holdingUp({ next: ['b', 'f', 'a'], blocked })).toEqual([
    { check: 'a', others: 3 },
    { check: 'b', others: 2 },
  ]);
});
