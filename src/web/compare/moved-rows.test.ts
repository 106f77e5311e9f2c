import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook } from '../../book/index.ts';
import { assessBook, compareBooks } from '../../floor/index.ts';
import { movedRows } from './moved-rows.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo = read.value;
const rowsAt = (floor: number, patches: Parameters<typeof patchBook>[1]) => {
  const patched = patchBook(demo, patches);
  if (!patched.ok) throw new Error(JSON.stringify(patched.problems));
  const to: Book = patched.value;
  const moves = compareBooks(demo, to).floors[floor]!;
  return movedRows(moves, assessBook(demo).floors[floor]!, assessBook(to).floors[floor]!);
};

describe('the rows of a comparison', () => {
  const strainer = [{ path: '/floors/1/supply/run/1/kv', value: 'Kv 16' }];

  it('are none on a floor that nothing moved', () => {
    expect(rowsAt(0, strainer)).toEqual([]);
  });
  it('stand in the order of the spine, each figure once, the verdict beside it where it turned', () => {
    const rows = rowsAt(1, strainer);
    expect(rows[0]).toMatchObject({ id: 'runningRate', verdict: { from: 'short', to: 'carries' } });
    const figures = rows.flatMap(({ move }) => (move === undefined ? [] : [move.id]));
    expect(figures).toContain('manifoldFlow');
    const own = figures.filter((id) => id !== 'manifoldPressure' && id !== 'runningRate');
    expect(new Set(own).size).toBe(own.length);
  });
  it('hold a row of which only what is asked moved', () => {
    const rows = rowsAt(1, [{ path: '/agreement/rates/0/rate', value: '900 bottles/h' }]);
    const row = rows.find(({ id }) => id === 'runningRate');
    expect(row?.move).toBeUndefined();
    expect(row?.left?.demand.value).not.toBe(row?.right?.demand.value);
  });
});
