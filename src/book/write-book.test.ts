import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBook } from './read-book.ts';
import { anyBook } from './testing/any-book.ts';
import { writeBook } from './write-book.ts';

const demo = readFileSync('src/book/demo/flagon-line.json', 'utf8');

describe('reading and writing a book', () => {
  it('is the identity on the data and on the text as it is stored, for any book', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const text = writeBook(book);
        const read = readBook(text);
        if (!read.ok) expect(read.problems).toEqual([]);
        if (!read.ok) return;
        expect(read.value).toEqual(JSON.parse(text));
        expect(writeBook(read.value)).toBe(text);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the units and the order of keys of who wrote it', () => {
    const text = `${JSON.stringify({ floors: [{ name: 'B', tag: 'B', room: { altitude: '1 000 ft', ambient: '60 degF' } }], twinfloor: 1 }, null, 2)}\n`;
    const read = readBook(text);
    expect(read.ok && writeBook(read.value)).toBe(text);
  });

  it('keeps every figure of the demonstration book', () => {
    const read = readBook(demo);
    expect(read.ok && JSON.parse(writeBook(read.value))).toEqual(JSON.parse(demo));
  });
});
