import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { bindShift } from '../../floor/shift/index.ts';
import { lineAt, traceShift } from '../../line/shift/index.ts';
import { drawnBottles, pictureOf } from './picture-layout.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const book = read.value;
const { line } = bindShift(book, 1);
if (line === undefined) throw new Error('the demo book has no line for a shift');
const picture = pictureOf(book, line, 600);
const trace = traceShift(line, 5, 0);
const moments = Array.from({ length: 60 }, (_, i) => lineAt(trace, i * 471.3));

describe('the picture of the line', () => {
  it('has every bottle of the moment once, inside its width, with motion and without', () => {
    for (const moment of moments) {
      const bottles = moment.groups.reduce((sum, group) => sum + group.bottles, 0);
      for (const moves of [true, false]) {
        const drawn = drawnBottles(picture, moment, moves);
        expect(drawn).toHaveLength(bottles);
        expect(new Set(drawn.map(({ key }) => key)).size).toBe(bottles);
        for (const { x, lane } of drawn) {
          expect(x).toBeGreaterThan(0);
          expect(x).toBeLessThan(picture.width);
          expect(lane).toBeLessThan(picture.deep);
        }
      }
    }
  });
  it('lets no bottle be closed that is not full', () => {
    const drawn = moments.flatMap((moment) => drawnBottles(picture, moment, true));
    expect(drawn.some(({ capped }) => capped)).toBe(true);
    expect(drawn.filter(({ capped, filled }) => capped && filled < 1)).toEqual([]);
  });
});
