import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook, tagsOf, valueAt } from '../../book/index.ts';
import { inversePatches } from '../commands/inverse-patches.ts';
import { typedPatches } from '../commands/typed-patches.ts';
import { copiedPart, newPart } from './new-part.ts';
import { freeTag } from './new-tag.ts';
import { outlineOf, trailTo } from './outline.ts';
import { placeAt } from './place-at.ts';
import { removalOf } from './references.ts';
import { kvOf, pieceNames, usualPiece } from './usual-pieces.ts';

const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!read.ok) throw new Error('the demo book does not read');
const demo: Book = read.value;
const empty: Book = { twinfloor: 1 };

const patched = (book: Book, patches: Parameters<typeof patchBook>[1]): Book => {
  const result = patchBook(book, patches);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('the way back of a change', () => {
  it.each([
    ['a value', [{ path: '/floors/0/supply/run/1/bore', value: '32 mm' }]],
    ['a value that was not there', [{ path: '/floors/0/room/slab/thickness', value: '0.2 m' }]],
    ['a value that is taken away', [{ path: '/floors/1/air/compressor/pressure' }]],
    ['a member that is put in between', [{ path: '/line/drives/1', op: 'insert', value: { tag: '-M9' } }]],
    ['the first member of a list', [{ path: '/line/blowOffs/0', op: 'insert', value: { tag: '-V1' } }]],
    ['a member behind the last', [{ path: '/line/drives/-', value: { tag: '-M9' } }]],
    [
      'a move',
      [
        { path: '/line/drives/0', op: 'remove' },
        { path: '/line/drives/2', op: 'insert', value: valueAt(demo, '/line/drives/0') },
      ],
    ],
    ['a removal with all that refers to it', removalOf(demo, '/line/stations/4').patches],
  ] as const)('leads to the same book again: %s', (_, forward) => {
    const back = inversePatches(demo, forward);
    const changed = patched(demo, forward);
    expect(changed).not.toEqual(demo);
    expect(patched(changed, [...back].reverse())).toEqual(demo);
  });

  it('leaves an empty book as empty as it was', () => {
    const forward = [{ path: '/line/stations/0', op: 'insert', value: { kind: 'fill', tag: 'F' } }] as const;
    const back = inversePatches(empty, forward);
    expect(patched(patched(empty, forward), back)).toEqual(empty);
  });
});

describe('removing a thing to which others refer', () => {
  it('names every place and takes away no more than cannot stand without it', () => {
    const { references, patches } = removalOf(demo, '/line/stations/4/lanes/1');
    expect(references).toEqual(['/line/stopDevices/0/effects/4/on']);
    const book = patched(demo, patches);
    expect(tagsOf(book).map(({ tag }) => tag)).not.toContain('-Y12');
    expect(book.line?.stopDevices?.[0]?.effects).toHaveLength(6);
    expect(book.line?.stopDevices?.[1]).toEqual(demo.line?.stopDevices?.[1]);
  });
  it('goes on through what falls with it: without a section there is no split and no join', () => {
    const book = patched(demo, removalOf(demo, '/line/sections/0').patches);
    expect(book.line?.splits).toEqual([]);
    expect(book.line?.joins?.every(({ split }) => split === undefined)).toBe(true);
    expect(book.line?.joins).toHaveLength(demo.line!.joins!.length);
  });
  it('leaves a book that reads, whichever thing of the demo book goes', () => {
    for (const { path } of tagsOf(demo)) {
      expect([path, patchBook(demo, removalOf(demo, path).patches).ok]).toEqual([path, true]);
    }
  });
});

describe('a copy', () => {
  it('reads beside its original, whichever thing of the demo book is copied', () => {
    for (const { path } of tagsOf(demo)) {
      const form = placeAt(demo, path)?.form;
      if (form === undefined) throw new Error(path);
      const value = copiedPart(demo, valueAt(demo, path), form);
      expect([path, patchBook(demo, [{ path, op: 'insert', value }]).ok]).toEqual([path, true]);
    }
  });
  it('refers to its own inner things', () => {
    const drives = { zones: [{ tag: '+Z1' }], tag: '+W', kind: 'washer' };
    const book = patched(empty, [{ path: '/line/stations/0', value: drives }]);
    const form = placeAt(book, '/line/stations/0')?.form;
    expect(form && copiedPart(book, drives, form)).toEqual({
      kind: 'washer',
      tag: '+W2',
      zones: [{ tag: '+Z2' }],
    });
  });
});

describe('a new thing', () => {
  it('reads at the end of its list, in the demo book and, where it needs nothing, in an empty one', () => {
    const lists = outlineOf(demo).filter(({ count }) => count !== undefined);
    expect(lists.length).toBeGreaterThan(20);
    for (const { path: list } of lists) {
      for (const book of [demo, empty]) {
        const form = placeAt(book, list)?.form;
        if (form?.is !== 'list') throw new Error(list);
        const kinds = form.of.is === 'choice' ? [...form.of.options.keys()] : [undefined];
        for (const kind of kinds) {
          const made = newPart(book, list, form.of, kind);
          if ('needs' in made) {
            expect([list, book === empty]).toEqual([list, true]);
            continue;
          }
          const result = patchBook(book, [{ path: `${list}/-`, value: made.value }]);
          expect([list, kind, result.ok ? [] : result.problems]).toEqual([list, kind, []]);
        }
      }
    }
  });
  it('has a tag that goes on from the last of its list', () => {
    const form = placeAt(demo, '/line/stations/4/lanes')?.form;
    expect(form?.is === 'list' && newPart(demo, '/line/stations/4/lanes', form.of)).toEqual({
      value: { tag: '-Y15' },
    });
    expect(freeTag('+FILL', new Set(['+FILL', '+FILL2']))).toBe('+FILL3');
  });
  it('of a run reads with its usual values', () => {
    for (const name of pieceNames) {
      const value = usualPiece(name, demo.floors?.[1]?.supply?.run ?? [], name);
      expect([name, patchBook(demo, [{ path: '/floors/1/supply/run/-', value }]).ok]).toEqual([name, true]);
    }
  });
});

describe('what a typed text means', () => {
  it('for a tag: whatever refers to it follows', () => {
    const book = patched(demo, typedPatches(demo, '/line/stations/4/tag', '+FILLER'));
    expect(book.line?.holdRules?.[0]?.while).toBe('+FILLER');
    expect(book.line?.sections?.[1]?.holds).toContain('+FILLER');
  });
  it('for the spread of a quantity that was one text: the text becomes its value', () => {
    const at = '/floors/1/supply/run/0/bore';
    const with1 = patched(demo, typedPatches(demo, `${at}/spread`, '0.3 mm'));
    expect(valueAt(with1, at)).toEqual({ value: '47.5 mm', spread: '0.3 mm' });
    const with2 = patched(with1, typedPatches(with1, `${at}/standing`, 'measured'));
    expect(valueAt(with2, at)).toEqual({ value: '47.5 mm', spread: '0.3 mm', standing: 'measured' });
    const without1 = patched(with1, typedPatches(with1, `${at}/spread`, undefined));
    expect(without1).toEqual(demo);
  });
});

describe('the flow coefficient of a piece that is known by its loss coefficient', () => {
  // IEC 60534-2-1 relates the two as K = 0.0016 d^4 / Kv^2 with d in mm, from memory; its constant is rounded
  it.each([
    [0.5, 0.0475],
    [3, 0.026],
    [7, 0.0205],
  ])('K %d at a bore of %d m', (k, bore) => {
    const published = Math.sqrt((0.0016 * (bore * 1000) ** 4) / k);
    expect(kvOf(k, bore) / published).toBeCloseTo(1, 3);
  });
});

describe('the outline', () => {
  it('leads to every thing of the book', () => {
    const nodes = outlineOf(demo);
    const lost = tagsOf(demo).filter(({ path }) => trailTo(nodes, path).length === 0);
    expect(lost).toEqual([]);
    expect(trailTo(nodes, '/floors/1/supply/run/0').map(({ path }) => path)).toEqual([
      '/floors',
      '/floors/1',
      '/floors/1/supply',
      '/floors/1/supply/run',
      '/floors/1/supply/run/0',
    ]);
  });
  it('stands for an empty book, too', () => {
    expect(outlineOf(empty).length).toBe(outlineOf(demo).length);
  });
});
