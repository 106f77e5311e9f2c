import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { bottleSamples } from '../../fill/bottle-samples.ts';
import { bookReader } from '../book-reader.ts';
import { samplesAgainstBook } from './samples-against-book.ts';

const against = (format: object, bores: readonly number[]) => {
  const read = readBook(
    JSON.stringify({ twinfloor: 1, line: { formats: [{ tag: 'B', height: '305 mm', ...format }] } }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const samples = bores.map((bore) => ({ bore: bore / 1000, height: 0.305 + (bore - 21) / 1e4 }));
  return samplesAgainstBook(bookReader(read.value), '/line/formats/0', bottleSamples(samples)).map(
    ({ code, of }) => `${of} ${code}`,
  );
};

const bores = [20.9, 21, 21.1, 21.2];

describe('measured bottles against their format', () => {
  it('say nothing where the book says the same', () => {
    expect(against({ neck: '28 mm', neckBore: '21 mm' }, bores)).toEqual([]);
  });

  it('ask for a bore where the book has the outside of the neck alone', () => {
    expect(against({ neck: '28 mm' }, bores)).toEqual(['bore boreNotWritten']);
  });

  it('name what is unlike, and a bore that is wider than its neck', () => {
    expect(against({ neck: '28 mm', neckBore: '25 mm', height: '320 mm' }, bores)).toEqual([
      'height unlike',
      'bore unlike',
    ]);
    expect(against({ neck: '20 mm' }, bores)).toEqual(['bore boreOverNeck']);
  });
});
