import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../book/index.ts';
import type { Encoding } from '../../../table/index.ts';
import { readList } from './read-list.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const book = demo.value;
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('a list whose columns are matched by hand', () => {
  const strange = bytes('Works list\n\nAlpha;Beta;Gamma\nX1:51;X3:31;white\nX1:52;X3:32;white\n');
  it('offers the fullest row as headings, with what stands below them', () => {
    const read = readList(strange, book, {});
    expect(read.ok && read.value.list).toBeUndefined();
    expect(read.ok ? read.value.columns : []).toMatchObject([
      { heading: 'Alpha', key: 'alpha', samples: ['X1:51', 'X1:52'], by: 'nothing' },
      { heading: 'Beta' },
      { heading: 'Gamma', samples: ['white'] },
    ]);
  });
  it('is read once its ends are named, by the keys that were offered', () => {
    const read = readList(strange, book, {
      kind: 'conductor',
      remembered: { alpha: 'from', beta: 'to', gamma: 'colour' },
    });
    expect(read.ok ? read.value.list?.joins : []).toMatchObject([
      { from: 'X1:51', to: 'X3:31', colour: 'white' },
      { from: 'X1:52', to: 'X3:32', colour: 'white' },
    ]);
  });
  it('with a page of text in one cell tells it, and shows no more of it than tells which it is', () => {
    const page = 'x'.repeat(100_000);
    const read = readList(bytes(`From;To;Split\n${page};X3:31;${page}\nX1:52;X3:32;\n`), book, {
      kind: 'conductor',
    });
    expect(read.ok ? read.value.list?.problems : []).toMatchObject([
      { code: 'JOIN_ROW_TOO_LONG', path: '/2/from' },
      { code: 'JOIN_ROW_TOO_LONG', path: '/2/split' },
    ]);
    expect(JSON.stringify(read).length).toBeLessThan(5000);
  });
  it('shows texts by which a person sees whether its letters were read well, and takes what is said of them', () => {
    const list = Uint8Array.from([...bytes('From;To;Colour\nX1:51;X3:31;gr'), 0x9f, ...bytes('n\n')]);
    const read = (said?: Encoding) => {
      const got = readList(list, book, { kind: 'conductor' }, said);
      return got.ok ? got.value.letters : got.problems.map(({ code }) => code);
    };
    expect(read()).toEqual({ taken: 'macintosh', samples: ['grün'] });
    expect(read('windows-1252')).toEqual({ taken: 'windows-1252', samples: ['grŸn'] });
    expect(read('utf-8')).toEqual(['TABLE_NOT_IN_ENCODING']);
  });
  it('that is no list is refused', () => {
    expect(readList(bytes('a word\n'), book, {})).toMatchObject({
      ok: false,
      problems: [{ code: 'JOIN_LIST_NO_ROWS' }],
    });
    expect(readList(new Uint8Array([80, 75, 3, 4, 0, 0]), book, {}).ok).toBe(false);
  });
});
