import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Book } from './book.ts';
import { type Patch, patchBook, tryPatches } from './patch-book.ts';
import { readBook } from './read-book.ts';
import { valueAt } from './value-at.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
const demo = read.ok ? read.value : ({ twinfloor: 1 } satisfies Book);

const patched = (...patches: readonly Patch[]): Book => {
  const result = patchBook(demo, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const bore = '/floors/1/supply/run/0/bore';

describe('patching a book', () => {
  it('puts a value, shares all that it does not touch and leaves the old book as it was', () => {
    const before = JSON.stringify(demo);
    const next = patched({ path: bore, value: '60 mm' });
    expect(valueAt(next, bore)).toBe('60 mm');
    expect(JSON.stringify(demo)).toBe(before);
    expect(next.line).toBe(demo.line);
    expect(next.floors?.[0]).toBe(demo.floors?.[0]);
    expect(next.floors?.[1]?.supply?.source).toBe(demo.floors?.[1]?.supply?.source);
    expect(Object.keys(next.floors![1]!)).toEqual(Object.keys(demo.floors![1]!));
  });

  it('changed nothing where nothing changes', () => {
    expect(patched()).toBe(demo);
    expect(patched({ path: bore, value: valueAt(demo, bore) })).toEqual(demo);
  });

  it('takes away what is given as unknown, and what is not there stays away', () => {
    expect(valueAt(patched({ path: bore, value: undefined }), bore)).toBeUndefined();
    expect(patched({ path: '/floors/1/heat/steam/dryness', value: undefined })).toEqual(demo);
  });

  it('makes the parts on the way to a new value', () => {
    const next = patched({ path: '/floors/1/heat/steam/pressure', value: '6 bar' });
    expect(next.floors?.[1]?.heat?.steam).toEqual({ pressure: '6 bar' });
    const settings = patched({ path: '/floors/1/settings/-', value: { lane: '-Y11', preset: 810 } });
    expect(settings.floors?.[1]?.settings).toEqual([{ lane: '-Y11', preset: 810 }]);
  });

  it('begins a member of a list with one of its fields, by its place or by the end', () => {
    const bare: Book = { twinfloor: 1, floors: [{ tag: 'F1' }] };
    for (const at of ['0', '-']) {
      const next = patchBook(bare, [{ path: `/floors/0/air/filters/${at}/name`, value: 'coarse' }]);
      expect(next.ok && valueAt(next.value, '/floors/0/air/filters')).toEqual([{ name: 'coarse' }]);
    }
    const none = patchBook(bare, [{ path: '/floors/1/name', op: 'remove' }]);
    expect(none.ok ? [] : none.problems.map(({ code }) => code)).toEqual(['BOOK_PLACE_UNKNOWN']);
    // on the way to a floor that is not there no list of floors is made
    const alone = patchBook({ twinfloor: 1 }, [{ path: '/floors/1/air/coldest', value: '5 degC' }]);
    expect(alone.ok ? [] : alone.problems.map(({ path }) => path)).toEqual(['/floors']);
  });

  it('inserts into a list, removes from it, and moves by both', () => {
    const run = (book: Book) => book.floors![1]!.supply!.run!.map((piece) => piece.name);
    const piece = { kind: 'pipe', name: 'new', bore: '50 mm', length: '1 m' };
    const at = '/floors/1/supply/run';
    expect(run(patched({ path: `${at}/1`, op: 'insert', value: piece }))).toEqual([
      '2 in run',
      'new',
      'strainer',
    ]);
    expect(run(patched({ path: `${at}/-`, op: 'insert', value: piece }))).toEqual([
      '2 in run',
      'strainer',
      'new',
    ]);
    expect(run(patched({ path: `${at}/0`, op: 'remove' }))).toEqual(['strainer']);
    const first = valueAt(demo, `${at}/0`);
    expect(
      run(patched({ path: `${at}/0`, op: 'remove' }, { path: `${at}/1`, op: 'insert', value: first })),
    ).toEqual(['strainer', '2 in run']);
  });

  it('refuses a change that breaks the book, and says what it breaks', () => {
    const codes = (...patches: readonly Patch[]) => {
      const result = patchBook(demo, patches);
      return result.ok ? [] : result.problems.map(({ code, path }) => `${code} ${path}`);
    };
    expect(codes({ path: bore, value: '60' })).toEqual([`QUANTITY_UNIT_MISSING ${bore}`]);
    expect(codes({ path: bore, value: '0 mm' })).toEqual([`BOOK_OUT_OF_RANGE ${bore}`]);
    expect(codes({ path: '/line/products/1', op: 'remove' })).toEqual([
      'BOOK_TAG_UNKNOWN /line/formats/0/product',
      'BOOK_TAG_UNKNOWN /floors/1/liquid/product',
    ]);
    expect(codes({ path: '/floors/9/name', value: 'x' })).toEqual(['BOOK_PLACE_UNKNOWN /floors/9/name']);
    expect(codes({ path: '/floors/x', value: {} })).toEqual(['BOOK_PLACE_UNKNOWN /floors/x']);
    expect(codes({ path: `${bore}/deeper`, value: 'x' })).toEqual([`BOOK_PLACE_UNKNOWN ${bore}/deeper`]);
    expect(codes({ path: '', value: undefined })).toEqual(['BOOK_NOT_JSON ']);
  });

  it('says of texts put at any places what a reading of the whole book says', () => {
    const leaves = (part: unknown, path: string): readonly string[] =>
      typeof part === 'object' && part !== null
        ? Object.entries(part).flatMap(([key, inner]) => leaves(inner, `${path}/${key}`))
        : [path];
    // read, read in another unit, too little, too much, of no unit, of no meaning
    const texts = ['1', '3 mm', '-4 bar', '9e9 m', '20 degC', '12 furlongs', '10 ± 2 %', '60 psi', ''];
    for (const [i, path] of leaves(demo, '').entries()) {
      // every thirteenth place, with another text from place to place
      if (i % 13 > 0) continue;
      const change = [{ path, value: texts[(i / 13) % texts.length] }];
      // and every third time with another beside it
      if (i % 39 === 0) change.push({ path: bore, value: texts[(i / 39) % 3] });
      expect({ change, is: patchBook(demo, change) }).toEqual({
        change,
        is: readBook(tryPatches(demo, change)),
      });
    }
  });

  it('cannot reach the prototype of an object', () => {
    const result = patchBook(demo, [{ path: '/about/__proto__/polluted', value: 'yes' }]);
    expect(result.ok).toBe(false);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(valueAt(demo, '/about/constructor')).toBeUndefined();
  });
});
