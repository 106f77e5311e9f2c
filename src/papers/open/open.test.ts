import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { recorded, type Said } from '../../proof/testing/demo-proof.ts';
import type { Envelope } from '../../record/envelope.ts';
import { importRecords } from '../../record/record-file.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import type { PageSize } from '../paper-head.ts';
import { printPaper } from '../print-paper.ts';
import { bookOf, hash } from '../testing/books.ts';
import { fontsOf, outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const file = importRecords(readFileSync('examples/records/protocol.records', 'utf8'));
if (!file.ok) throw new Error(JSON.stringify(file.problems));
const { records, heads } = file.value;
const noKeys = /\b(?:open|proof|protocol|paper)\.[a-zA-Z]|\{[a-z]+\}|undefined|NaN|\[object/;
const flat = (text: string): string => text.replace(/\s+/g, ' ');

interface Asked {
  readonly book?: Book;
  readonly told?: readonly Envelope[];
  readonly floor?: string;
  readonly page?: PageSize;
  /** Day of printing. */
  readonly on?: string;
}

const print = ({ book = demo, told = records, floor, page = 'a4', on = '2027-05-03' }: Asked = {}) =>
  printPaper({ paper: 'open', book, records: told, heads, floor }, { date: on, hash, page }, typesetter)
    .bytes;

const point = (body: object, at?: string): Said => ({
  kind: 'punch',
  version: 2,
  body: { state: 'open', by: 'the fitter', ...body },
  ...(at === undefined ? {} : { at }),
});

describe('the list of what is open', () => {
  let text: string;
  let pdf: ReadPdf;
  beforeAll(async () => {
    pdf = await readPdf(print());
    text = flat(pdf.text);
  }, 30_000);

  it('names each open point with what it keeps, who holds it, and that its day is past', () => {
    expect(text).toContain('Keeps nothing: it is done afterwards');
    expect(text).toMatch(/P1 paint of the frame at the discharge .*Oxbow Works 2027-05-01 !/);
  });

  it('marks no day that is still to come', async () => {
    const early = flat((await readPdf(print({ on: '2027-04-30' }))).text);
    expect(early).toContain('2027-05-01');
    expect(early).not.toContain('2027-05-01 !');
  });

  it('has what goes over to the next floor with the reason, and what others still owe', () => {
    expect(text).toContain('From Oxbow to Larkmoor');
    expect(text).toMatch(
      /level: -Y11 (?:only shown there|the book has changed since): .*manifold pressure, all lanes open/,
    );
    expect(text).toContain('Awaited from others');
    expect(text).toContain('asked for');
  });

  it('leaves room for points that nobody recorded, and is signed by both', () => {
    expect(text).toContain('for the builder');
    expect(text).toContain('for the site');
    expect(text).not.toMatch(noKeys);
    expect(text).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
    expect(pdf.tagged).toBe(true);
    for (const head of heads) expect(pdf.text.replace(/\s+/g, '')).toContain(head.hash);
  });

  it('puts the gravest first, and what was put right behind, with the digests of what shows it', async () => {
    const digest = 'ab12cd34ef56'.padEnd(64, '7');
    const told = recorded([
      point({ point: 'P1', text: 'paint', class: 'C' }),
      point({
        point: 'P2',
        text: 'guard rattles',
        class: 'A',
        of: ['-S2'],
        floor: 'LARKMOOR',
        owner: 'the fitter',
      }),
      point({ point: 'P3', text: 'label gone' }),
      point({ point: 'P4', text: 'hose weeps', class: 'B' }, '2027-03-08T10:00:00Z'),
      point(
        {
          point: 'P4',
          text: 'hose weeps',
          class: 'B',
          state: 'closed',
          why: 'new clamp',
          evidence: [digest],
        },
        '2027-03-09T10:00:00Z',
      ),
    ]);
    const all = flat((await readPdf(print({ told }))).text);
    const order = ['P3 label gone', 'P2 guard rattles', 'P1 paint', 'Put right', 'P4 hose weeps new clamp'];
    const at = order.map((one) => all.indexOf(one));
    expect(at.every((place) => place > 0)).toBe(true);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(all).toContain('filler guard door -S2; at Larkmoor; found by the fitter');
    expect(all).toContain(digest.slice(0, 12));
    const oxbow = flat((await readPdf(print({ told, floor: 'OXBOW' }))).text);
    expect(oxbow).not.toContain('P2 guard rattles');
    expect(oxbow).toContain('P3 label gone');
  });

  it.each(['a4', 'letter'] as const)(
    'stays within %s, with its fonts, whatever people wrote',
    async (page) => {
      const hostile = '#panic() *x* "quoted" <b> \u202e @c $a$';
      const long = 'Larkmoorcoldstore'.repeat(18);
      const told = recorded([
        point({
          point: long,
          text: hostile,
          class: 'A',
          owner: long,
          due: '2027-03-01',
          floor: long,
          of: [long],
        }),
        ...Array.from({ length: 80 }, (_, i) =>
          point({ point: `P${i}`, text: `${hostile} ${i}`, class: 'B' }),
        ),
      ]);
      const bytes = print({ told, page });
      const hard = await readPdf(bytes);
      const { described, within } = fontsOf(bytes);
      expect(within).toBe(described);
      expect(outside(hard)).toEqual([]);
      expect(flat(hard.text)).toContain('#panic() *x* "quoted" <b> ‹U+202E› @c $a$ 79');
      expect(hard.text.replace(/\s+/g, '')).toContain(long);
    },
  );

  it('of an empty book says that nothing is open, and is the same to the byte when it is made again', async () => {
    const asked = { book: { twinfloor: 1, floors: [{ tag: 'A' }] } as Book, told: [] };
    const empty = flat((await readPdf(print(asked))).text);
    expect(empty).toContain('No open point is recorded.');
    expect(empty).toContain('Nothing is carried over.');
    expect(empty).not.toMatch(noKeys);
    expect(Buffer.compare(print(), print())).toBe(0);
  });
});
