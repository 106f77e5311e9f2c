import { expect, it } from 'vitest';
import { partOf } from './byte-range.ts';

// RFC 9110, 14.1.2: examples over a representation of 10 000 bytes (memory)
it.each([
  ['bytes=0-499', { from: 0, to: 500 }],
  ['bytes=500-999', { from: 500, to: 1000 }],
  ['bytes=-500', { from: 9500, to: 10_000 }],
  ['bytes=9500-', { from: 9500, to: 10_000 }],
  ['bytes=9500-20000', { from: 9500, to: 10_000 }],
  ['bytes=-20000', { from: 0, to: 10_000 }],
  ['bytes=10000-', 'outside'],
  ['bytes=-0', 'outside'],
  // several parts, another unit, nonsense: the whole
  ['bytes=0-0,-1', undefined],
  ['lines=1-2', undefined],
  ['bytes=5-4', undefined],
  ['bytes=-', undefined],
  [undefined, undefined],
])('of 10 000 bytes %s is the part that the standard says', (range, part) => {
  expect(partOf(range, 10_000)).toEqual(part);
});
