import { describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { type Book, type Patch, patchBook, readBook } from '../../book/index.ts';
import { openRun, stiffRun } from '../../fill/column-shares.ts';
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
const removed = patchBook(demo.value, [{ op: 'remove', path: `/floors/${there}/supply/run/0/material` }]);
if (!removed.ok) throw new Error(JSON.stringify(removed.problems));
const unsaid = removed.value;

const floorOf = (book: Book, measured?: { readonly shift: number; readonly deviation: number }) =>
  fillFloor(bookReader(book), there, undefined, measured);

describe('the liquid in the run while lanes close', () => {
  it('is all of it where the pipes are made of metal', () => {
    expect(floorOf(demo.value).column).toMatchObject({ source: 'stiff run', share: 1, unsaid: [] });
  });
  it('is between nothing and all of it where nobody says what a pipe is made of, and that pipe is named', () => {
    const { column, uncertain } = floorOf(unsaid);
    expect(column).toMatchObject({ source: 'not said', unsaid: [`/floors/${there}/supply/run/0`] });
    expect(uncertain!.column).toEqual(openRun);
  });
  it('goes by wall and elasticity before the material: steel is stiff, a soft hose leaves it open', () => {
    expect(floorOf(walled('200 GPa')).uncertain!.column).toEqual(stiffRun);
    expect(floorOf(walled('5 MPa')).column?.source).toBe('soft run');
    expect(floorOf(walled('5 MPa')).uncertain!.column).toEqual(openRun);
  });
  it('is counted as measured, whatever the book says', () => {
    const measured = { shift: 0.6, deviation: 0.1 };
    expect(floorOf(walled('200 GPa'), measured).uncertain!.column).toEqual({ share: 0.6, deviation: 0.1 });
  });
});
