import { beforeAll, describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import { packingOf } from '../../packing/packing-of.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printPacking } from '../print-packing.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const noKeys = /\b(?:packing|proof|paper|utility)\.[a-z]|\{[a-z]+\}|undefined|NaN/;

const printed = (book: Book, page: 'a4' | 'letter' = 'a4'): Uint8Array => {
  const assessment = assessBook(book);
  return printPacking(
    packingOf(book, assessment, assessment.floors[1]!.floor),
    assessment.floors,
    { date, hash, page },
    makePaperWords(book, bookUnits(book, undefined), 'en'),
    typesetter,
  );
};

describe.each(['a4', 'letter'] as const)('the packing and lifting sheet on %s', (page) => {
  let sheet: ReadPdf;
  beforeAll(async () => {
    sheet = await readPdf(printed(demo, page));
  });

  it('has a part for each crate, with its lift, and nothing is cut off', () => {
    for (const crate of [
      'washer CRATE-1',
      'filler and capper CRATE-2',
      'loose parts, tools and consumables CRATE-3',
    ])
      expect(sheet.text).toContain(crate);
    expect(sheet.text).toContain('Lift and way in: washer +S1');
    expect(sheet.text).not.toMatch(noKeys);
    expect(sheet.text).not.toMatch(/\bsafe(?:ly)?\b/i);
    expect(outside(sheet)).toEqual([]);
  });

  it('shows pull, length and angle of the sling with their working', () => {
    // by hand: 2.4 m up, 1.1 m along, 0.52 m across are 2.691 m; of 1450 kg it bears 1300/2400, times 2.691/2.4: 880.6 kg
    expect(sheet.text.replace(/\s/g, ' ')).toMatch(/leg 2\.69 m, pull 8 640 N/);
    expect(sheet.text).toContain('lifting/sling-plan');
    expect(sheet.text).toContain('building/masses-together');
  });

  it('prints dangerous goods, what comes back and what is brought along as the book has them', () => {
    for (const text of [
      'UN 1824',
      'sodium hydroxide solution',
      'XX-000 HT',
      'OW-30172',
      'FCA',
      'low-ohm meter',
      'torque wrench',
    ])
      expect(sheet.text).toContain(text);
    expect(sheet.text).toContain('195 kg');
    expect(sheet.text).toContain('qualified rigger');
  });
});

it('of a book without crates says so, and draws no section of which it does not know enough', async () => {
  const bare = await readPdf(
    printed({
      ...demo,
      line: { ...demo.line, crates: [], sections: [{ tag: '+S1' }, { tag: '+S2' }], joins: [] },
    }),
  );
  expect(bare.text).toContain('The book names no crate.');
  expect(bare.text).toContain('Not drawn');
  expect(bare.text).not.toMatch(noKeys);
});

it('prints hostile texts as they are', async () => {
  const hostile = '#panic("x") *a* _b_ $c$ <d> \\ @e `f` שלום';
  const book: Book = {
    ...demo,
    line: {
      ...demo.line,
      crates: [{ tag: `C${'x'.repeat(299)}`, name: hostile, items: [{ what: hostile }], value: hostile }],
    },
  };
  const sheet = await readPdf(printed(book));
  expect(sheet.text).toContain('#panic("x") *a* _b_ $c$ <d> \\ @e `f`');
  expect(outside(sheet)).toEqual([]);
});
