import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBook } from './read-book.ts';
import { restOfBook } from './rest-of-book.ts';
import { valueAt } from './value-at.ts';

const text = readFileSync('src/book/demo/flagon-line.json', 'utf8');

const restAfter = (change: (book: Record<string, never>) => void) => {
  const data = JSON.parse(text);
  change(data);
  const broken = JSON.stringify(data);
  const read = readBook(broken);
  if (read.ok) throw new Error('nothing is wrong with it');
  return { rest: restOfBook(broken, read.problems), problems: read.problems };
};

describe('the rest of a book', () => {
  it('has everything but the rod that is thicker than its bore, the humidity of 140 % and the negative length', () => {
    // biome-ignore lint/suspicious/noExplicitAny: a book that is broken on purpose
    const { rest, problems } = restAfter((book: any) => {
      book.line.cylinders[0].rod = '70 mm';
      book.floors[1].air.intake.relativeHumidity = '140 %';
      book.floors[1].air.run[0].length = '-3 m';
      book.floors[0].air.compressor.cutIn = '9 bar';
      book.floors[0].air.intake.pressure = '-1 bar(a)';
    });
    expect(problems.length).toBeGreaterThanOrEqual(5);
    expect(rest).toBeDefined();
    expect(valueAt(rest!, '/floors/1/air/run/0/bore')).toBe('20.9 mm');
    expect(valueAt(rest!, '/floors/1/air/run/0/length')).toBeUndefined();
    expect(rest!.line!.stations!.length).toBe(JSON.parse(text).line.stations.length);
  });
  it('is none where nothing holds: no JSON, no version', () => {
    expect(restOfBook('{', [{ code: 'X', path: '/a' }])).toBeUndefined();
    expect(restOfBook('{}', [{ code: 'BOOK_NOT_A_BOOK', path: '/twinfloor' }])).toBeUndefined();
  });
  it('never throws, and is a book whenever there is one', () => {
    fc.assert(
      fc.property(fc.json(), (json) => {
        const read = readBook(json);
        if (read.ok) return;
        const rest = restOfBook(json, read.problems);
        if (rest !== undefined) expect(readBook(rest).ok).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
