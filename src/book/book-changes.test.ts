import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book } from './book.ts';
import { bookChanges } from './book-changes.ts';
import { tryPatches } from './patch-book.ts';
import { anyBook } from './testing/any-book.ts';

describe('the changes between two books', () => {
  it('are none between a book and itself', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        expect(bookChanges(book, structuredClone(book))).toEqual([]);
      }),
      { numRuns: 50, seed: 3 },
    );
  });
  it('put onto the first book give the second', () => {
    fc.assert(
      fc.property(anyBook, anyBook, (from, to) => {
        const patches = bookChanges(from, to).map(({ path, to: value }) => ({ path, value }));
        expect(bookChanges(tryPatches(from as Book, patches), to)).toEqual([]);
      }),
      { numRuns: 50, seed: 4 },
    );
  });
  it('name a value at its place, and a quantity with its standing as one', () => {
    const from = { about: { title: 'a' }, floors: [{ tag: 'X', h: { value: '1 m', spread: '1 cm' } }] };
    const to = { about: {}, floors: [{ tag: 'X', h: { value: '2 m', spread: '1 cm' } }] };
    expect(bookChanges(from, to)).toEqual([
      { path: '/about/title', from: 'a' },
      { path: '/floors/0/h', from: { value: '1 m', spread: '1 cm' }, to: { value: '2 m', spread: '1 cm' } },
    ]);
  });
});
