import { describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { type Book, type Patch, patchBook, readBook } from '../../book/index.ts';
import { bookReader } from '../book-reader.ts';
import { fillFloor } from './fill-floor.ts';

const demo = readBook(demoText);
if (!demo.ok) throw new Error('the demo book does not read');
const there = 1;

/** The demo book with walls of 2 mm on all pipes of the floor that the line is bound for. */
const walled = (elasticity: string): Book => {
  const patches = (demo.value.floors![there]!.supply!.run ?? []).flatMap((piece, i): Patch[] =>
    piece.kind === 'pipe'
      ? [
          { op: 'put', path: `/floors/${there}/supply/run/${i}/wall`, value: '2 mm' },
          { op: 'put', path: `/floors/${there}/supply/run/${i}/elasticity`, value: elasticity },
        ]
      : [],
  );
  const result = patchBook(demo.value, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const floorOf = (book: Book, measured?: { readonly shift: number; readonly deviation: number }) =>
  fillFloor(bookReader(book), there, undefined, measured);

describe('the liquid in the run while lanes close', () => {
  it('is not counted where the book does not say how stiff the run is, and it is said how much it would be', () => {
    const { column, uncertain } = floorOf(demo.value);
    expect(column).toMatchObject({ source: 'not counted', share: 0 });
    expect(column!.volume).toBeGreaterThan(0);
    expect(uncertain!.column).toBeUndefined();
  });
  it('is counted behind walls of steel, and not behind a soft hose', () => {
    expect(floorOf(walled('200 GPa')).uncertain!.column?.share).toBe(1);
    expect(floorOf(walled('5 MPa')).column?.source).toBe('not counted');
  });
  it('is counted as measured, whatever the book says', () => {
    const measured = { shift: 0.6, deviation: 0.1 };
    expect(floorOf(walled('200 GPa'), measured).uncertain!.column).toEqual({ share: 0.6, deviation: 0.1 });
  });
});
