import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { patchBook, readBook, valueAt } from '../../book/index.ts';
import type { FoundReading } from '../../floor/found/index.ts';
import { assessBook } from '../../floor/index.ts';
import { observe } from '../state/observed.ts';
import { emptyPage, type PageState } from '../state/page-state.ts';
import { withShown } from '../state/shown-book.ts';
import { bookOn, hasTemporary, stateOn } from './found-state.ts';
import { readablePlaces } from './readable-places.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const book = read.value;
const cutIn = '/floors/1/air/compressor/cutIn';
const reading: FoundReading = {
  floor: 'LARKMOOR',
  of: 'air/compressor/cutIn',
  value: '60 psi',
  by: 'the engineer',
  at: '2027-04-19T09:10:00Z',
};
const begin = () => observe<PageState>(withShown({ ...emptyPage, load: 'ready', book }));
const verdictOf = ({ assessment }: PageState) =>
  assessment?.floors[1]?.utilities.findings.find(({ id }) => id === 'airPressure AIR-1')?.verdict;

describe('the state of a page on what was found', () => {
  it('shows and assesses what was read; what is under it stays as promised', () => {
    const under = begin();
    const on = stateOn(under, 'found', [reading]);
    expect(verdictOf(on.get())).toBe('short');
    expect(valueAt(on.get().shown, `${cutIn}/value`)).toBe('60 psi');
    expect(on.get().laid).toEqual([cutIn]);
    expect(verdictOf(under.get())).toBe('carries');
    // the same answer to the same state: who watches it would draw forever else
    expect(on.get()).toBe(on.get());
  });

  it('lets a command through without a reading in what it leaves', () => {
    const under = begin();
    const on = stateOn(under, 'found', [reading]);
    on.set({ ...on.get(), units: 'us' });
    expect(under.get().units).toBe('us');
    expect(under.get().laid).toBeUndefined();
    expect(under.get().book).toBe(book);
    expect(under.get().shown).toBe(book);
    expect(verdictOf(under.get())).toBe('carries');
    const patched = patchBook(book, [{ path: '/floors/1/air/coldest', value: '50 degF' }]);
    if (!patched.ok) throw new Error('not patched');
    on.set(withShown({ ...on.get(), book: patched.value }));
    expect(valueAt(under.get().shown, `${cutIn}/value`)).toBe('88 psi');
    expect(valueAt(on.get().shown, '/floors/1/air/coldest')).toBe('50 degF');
    expect(valueAt(on.get().shown, `${cutIn}/value`)).toBe('60 psi');
    expect(verdictOf(on.get())).toBe('short');
  });

  it('lays a remedy on trial over what was read', () => {
    const patch = [{ path: cutIn, value: '95 psi' }];
    const tried = patchBook(book, patch);
    if (!tried.ok) throw new Error('not patched');
    const under = begin();
    const on = stateOn(under, 'found', [reading]);
    const trial = { floor: 'LARKMOOR', finding: 'x', lever: 'x', label: 'x', patch, book: tried.value };
    on.set(withShown({ ...on.get(), trial }));
    expect(verdictOf(on.get())).toBe('carries');
    const { trial: _trial, ...rest } = on.get();
    on.set(withShown(rest));
    expect(verdictOf(on.get())).toBe('short');
  });
});

describe('a book on its temporary supplies', () => {
  it('has them in the place of the lasting ones, on the floors that have one', () => {
    const source = { kind: 'main', static: '2 bar' };
    const patched = patchBook(book, [{ path: '/floors/1/temporarySupply', value: { source } }]);
    if (!patched.ok) throw new Error('not patched');
    const on = bookOn(patched.value, 'temporary', [reading]);
    expect(on.laid).toEqual(['/floors/1/supply']);
    expect(valueAt(on.book, '/floors/1/supply/source')).toEqual(source);
    expect(on.book.floors![0]).toBe(patched.value.floors![0]);
    expect(valueAt(on.book, `${cutIn}/value`)).toBe('88 psi');
    expect([hasTemporary(book), hasTemporary(patched.value)]).toEqual([false, true]);
  });
});

describe('what can be read on a floor', () => {
  const places = readablePlaces(book, assessBook(book), 'LARKMOOR');
  it('is every quantity that has a value and every place that is asked, each once', () => {
    const ofs = places.map(({ of }) => of);
    expect(new Set(ofs).size).toBe(ofs.length);
    expect(places.find(({ of }) => of === 'air/compressor/cutIn')).toEqual({
      path: cutIn,
      of: 'air/compressor/cutIn',
      asked: false,
    });
    expect(places.some(({ asked }) => asked)).toBe(true);
    expect(ofs.filter((of) => /(^|\/)(tag|name|role|kind)$/.test(of))).toEqual([]);
  });
  it('is nothing on a floor that is not there', () => {
    expect(readablePlaces(book, assessBook(book), 'MOON')).toEqual([]);
  });
});
