import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook, tryPatches, valueAt } from '../../book/index.ts';
import { removalOf } from '../book-page/references.ts';
import { inversePatches } from '../commands/inverse-patches.ts';
import { followedPath } from './followed-path.ts';
import type { Edit } from './page-state.ts';
import { bookBefore, rebasedEdit, rebasedEdits, rebasedHistory } from './rebased-edit.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo: Book = read.value;
const lanes = '/line/stations/4/lanes';

const edit = (book: Book, forward: Edit['forward'], reason = 'r'): Edit => ({
  reason,
  forward,
  back: inversePatches(book, forward),
});
/** Another tab took the first lane away. */
const without1 = tryPatches(demo, removalOf(demo, `${lanes}/0`).patches);

describe('an edit laid over a book that another tab changed', () => {
  it('reaches the lane that it was meant for, wherever that stands now', () => {
    const made = rebasedEdit(edit(demo, [{ path: `${lanes}/2/kv`, value: 'Kv 2.5' }]), demo, without1);
    expect(made?.forward).toEqual([{ path: `${lanes}/1/kv`, value: 'Kv 2.5' }]);
    expect(made?.back[0]?.value).toEqual(valueAt(demo, `${lanes}/2/kv`));
  });
  it('is lost where its lane is gone, and the others are not', () => {
    const first = edit(demo, [{ path: `${lanes}/0/kv`, value: 'Kv 2.5' }], 'first');
    const second = edit(demo, [{ path: `${lanes}/1/kv`, value: 'Kv 2.6' }], 'second');
    const { edits, lost } = rebasedEdits([first, second], demo, without1);
    expect(lost.map(({ reason }) => reason)).toEqual(['first']);
    expect(edits.map(({ forward }) => forward[0]?.path)).toEqual([`${lanes}/0/kv`]);
  });
  it('puts a new member behind the one that it followed', () => {
    const add = edit(demo, [{ path: `${lanes}/3`, op: 'insert', value: { tag: '-Y20' } }]);
    const book = patchBook(without1, rebasedEdit(add, demo, without1)?.forward ?? []);
    const tags = book.ok && (valueAt(book.value, lanes) as { tag: string }[]).map(({ tag }) => tag);
    expect(tags).toEqual(['-Y12', '-Y13', '-Y20', '-Y14']);
  });
  it('follows a piece of a run without a tag by what it is', () => {
    const run = '/floors/1/supply/run';
    const before = tryPatches(demo, [
      { path: `${run}/0`, op: 'insert', value: { kind: 'pipe', bore: '50 mm', length: '1 m' } },
    ]);
    expect(followedPath(`${run}/1/kv`, demo, before)).toBe(`${run}/2/kv`);
    expect(followedPath(`${run}/2`, before, demo)).toBe(`${run}/1`);
    expect(followedPath(`${run}/0`, before, demo)).toBeUndefined();
  });
});

describe('what can be undone after another tab changed the book', () => {
  it('goes back at the thing that it was done to', () => {
    const first = edit(demo, [{ path: `${lanes}/2/kv`, value: 'Kv 2.5' }]);
    const mine = tryPatches(demo, first.forward);
    const second = edit(mine, [{ path: `${lanes}/3/preset`, value: 790 }]);
    const both = tryPatches(mine, second.forward);
    expect(bookBefore(both, [first, second])).toEqual(demo);
    const theirs = tryPatches(both, removalOf(both, `${lanes}/0`).patches);
    const { done } = rebasedHistory({ done: [first, second], undone: [] }, both, theirs);
    expect(done).toHaveLength(2);
    expect(bookBefore(theirs, done)).toEqual(without1);
  });
});
