import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { assessBook, remediesFor } from '../../floor/index.ts';
import { formatNumber } from '../../quantity/index.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { bookOf, hash, predictionOf } from '../testing/books.ts';
import { fontsOf, linksOf, outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const folder = join(import.meta.dirname, '../../../examples');
const examples = readdirSync(folder).filter((name) => name.endsWith('.json'));
const exampleOf = (name: string): Book => bookOf(readFileSync(join(folder, name), 'utf8'));

/** Words of a PDF without the places where its lines were broken. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('the prediction of the floors', () => {
  let pdf: ReadPdf;
  let printed: Uint8Array;
  // an example that has a finding which is short
  const book = exampleOf('main.json');
  const assessment = assessBook(book);
  const short = assessment.floors.flatMap(({ floor, findings }) =>
    findings.filter(({ verdict }) => verdict === 'short').map(({ id }) => ({ floor, finding: id })),
  );
  const remedies = short.flatMap((question) => remediesFor(book, question));
  beforeAll(async () => {
    printed = predictionOf(book, typesetter, { remedies, revision: 7 });
    pdf = await readPdf(printed);
  });

  it('says at the head of every page which book it is of, in which state and on which day', () => {
    for (const { text } of pdf.pages) {
      expect(flat(text)).toContain(`revision 7 · 2027-03-08 · book ${hash.slice(0, 12)}`);
      expect(flat(text)).toContain('follow the local code and licensed practice');
    }
    expect(flat(pdf.text)).toContain(hash);
  });

  it('shows every floor with its rate, what holds it and every finding with its verdict in words', () => {
    const first = flat(pdf.pages[0]?.text ?? '');
    for (const { name, figures, findings } of assessment.floors) {
      expect(first).toContain(name);
      const rate = (figures.runningRate?.value ?? 0) * 3600;
      expect(first).toContain(`${formatNumber(Math.round(rate), 'en', 4)} bottles/h`);
      for (const { verdict } of findings) {
        if (verdict === 'short') expect(first).toMatch(/short of|over/);
      }
    }
    expect(first).toContain('the washer sets the pace');
  });

  it('says what would carry a finding, and where', () => {
    const carrying = remedies.filter(({ changes }) => changes.length > 0);
    expect(carrying.length).toBeGreaterThan(0);
    for (const { changes } of carrying) expect(flat(pdf.text)).toContain(changes[0]?.text);
  });

  it('counts the utilities of each floor by trade', () => {
    const text = flat(pdf.text);
    const part = text.slice(text.indexOf('What comes out of the wall'), text.indexOf('Further figures'));
    for (const { name, utilities } of assessment.floors) {
      const count = (verdict: string) => utilities.findings.filter((one) => one.verdict === verdict).length;
      if (count('short') + count('unknown') > 0) expect(part).toContain(`Short or not known at ${name}`);
    }
    const all = assessment.floors.flatMap(({ utilities }) => utilities.findings);
    const sum = (word: RegExp) => [...part.matchAll(word)].reduce((total, [, n]) => total + Number(n), 0);
    expect(sum(/(\d+) (?:carries|carry)\b/g)).toBe(all.filter(({ verdict }) => verdict === 'carries').length);
    expect(sum(/(\d+) short\b/g)).toBe(all.filter(({ verdict }) => verdict === 'short').length);
  });

  it('lists what is short of a utility before what is not known', async () => {
    const text = flat((await readPdf(predictionOf(bookOf(demoText), typesetter))).text);
    const larkmoor = text.slice(text.indexOf('Short or not known at Larkmoor'));
    const [short, unknown] = ['width of the way in', 'hardness of the water'].map((name) =>
      larkmoor.indexOf(name),
    );
    expect(short).toBeGreaterThan(0);
    expect(unknown).toBeGreaterThan(short ?? 0);
  });

  it('leads from each mark to its working, and from the working back to the pages that name it', async () => {
    const links = await linksOf(printed, pdf);
    const marks = links.filter(({ text }) => /^w\d+$/.test(text));
    expect(marks.length).toBeGreaterThan(50);
    for (const { text, to } of marks) expect(to.text).toContain(`${text} `);
    // in the appendix too: what went into a working leads to where it came out, and to its formula and its notes
    const appendix = Math.min(...marks.map(({ to }) => to.page));
    const within = links.filter(({ page, text }) => page >= appendix && /^[wfn]\d+$/.test(text));
    for (const letter of 'wfn') expect(within.some(({ text }) => text.startsWith(letter))).toBe(true);
    for (const { text, to } of within) expect(to.text).toMatch(new RegExp(`${text}(?!\\d)`));
    const back = links.filter(({ text }) => /^\d+$/.test(text));
    for (const { text, to } of back) expect(to.page).toBe(Number(text));
    // a page that names a working is named there
    const named = new Set(marks.map(({ page, to }) => `${to.page} ${page}`));
    for (const { page, to } of back) expect(named.has(`${page} ${to.page}`)).toBe(true);
    expect(new Set(back.map(({ page }) => page))).toEqual(new Set(marks.map(({ to }) => to.page)));
  });

  it('carries every working that a figure names', () => {
    const named = new Set([...flat(pdf.text).matchAll(/\bw(\d+)\b/g)].map(([, number]) => Number(number)));
    const listed = new Set([...pdf.text.matchAll(/^w(\d+) \p{L}/gmu)].map(([, number]) => Number(number)));
    expect(named.size).toBeGreaterThan(10);
    expect([...named].filter((number) => !listed.has(number) && number !== 12 && number !== 3)).toEqual([]);
  });

  it('has its fonts within, tags, bookmarks and a title', () => {
    const { described, within } = fontsOf(predictionOf(book, typesetter));
    expect(described).toBeGreaterThan(1);
    expect(within).toBe(described);
    expect(pdf.tagged).toBe(true);
    expect(pdf.bookmarks).toEqual(expect.arrayContaining(['Will it run there', 'What would carry it']));
    expect(pdf.title).toContain(book.about?.title);
  });

  it('fits on A4 and, in US units, on letter', async () => {
    expect(pdf.pages[0]?.width).toBeCloseTo(595.3, 0);
    expect(pdf.pages[0]?.height).toBeCloseTo(841.9, 0);
    expect(outside(pdf)).toEqual([]);
    const printed = await readPdf(predictionOf(book, typesetter, { page: 'letter', system: 'us' }));
    expect(printed.pages[0]?.width).toBeCloseTo(612, 0);
    expect(printed.pages[0]?.height).toBeCloseTo(792, 0);
    expect(outside(printed)).toEqual([]);
    expect(printed.text).toContain('psig');
    expect(printed.text).not.toContain('bar(g)');
  });

  it('is the same to the byte when it is made again, by another typesetter too', () => {
    const again = predictionOf(book, makeTypesetter(), { remedies, revision: 7 });
    expect(Buffer.compare(again, Buffer.from(printed))).toBe(0);
    const cheap = exampleOf('blank.json');
    const first = predictionOf(cheap, typesetter);
    expect(Buffer.compare(predictionOf(cheap, typesetter), first)).toBe(0);
  });

  it('marks what is not known and what was assumed in its place', async () => {
    const blank = await readPdf(predictionOf(exampleOf('blank.json'), typesetter));
    expect(flat(blank.text)).toContain('not known');
    const assumed = examples
      .map(exampleOf)
      .find((book) =>
        assessBook(book).floors.some(({ findings }) => findings.some(({ have }) => have.assumed.length > 0)),
      );
    expect(assumed).toBeDefined();
    const marked = await readPdf(predictionOf(assumed as Book, typesetter));
    expect(marked.pages[0]?.text).toContain('†');
    expect(flat(marked.text)).toContain('Assumed, because the book does not say');
  });
});

describe('every example', () => {
  it.each(examples)('%s is printed within its margins, without a key for a word', async (name) => {
    const pdf = await readPdf(predictionOf(exampleOf(name), typesetter));
    expect(outside(pdf)).toEqual([]);
    expect(pdf.text).not.toMatch(
      /\b(?:prediction|paper|figure|verdict|role|step|hold|wait|lever|mark)\.[a-z]/i,
    );
    expect(pdf.text).not.toMatch(/\{[a-z]+\}|undefined|NaN|\[object|\uFFFD/);
    expect(pdf.text).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
  });
});

describe('text out of a book', () => {
  const blank = exampleOf('blank.json');
  const named = (title: string, floor: string): Book => ({
    ...blank,
    about: { title },
    floors: [{ tag: 'F1', name: floor }],
  });

  it.each([
    '#panic()',
    '*x* _y_ $a$ `raw`',
    '<label> @ref // /* #{1+1}',
    '\\u{41} \\ = - + ~ [ ] "q"',
    'αβγ Ω ≥ ±0,5 °C ж Ł ₂ ⁻¹ → ☐',
  ])('is printed as it is: %s', async (text) => {
    const pdf = await readPdf(predictionOf(named(text, text), typesetter));
    const wanted = text.replace('☐', '‹U+2610›');
    expect(flat(pdf.pages[0]?.text ?? '')).toContain(wanted);
    expect(outside(pdf)).toEqual([]);
  });

  it('that has no place to break stays within the margins', async () => {
    const long = 'Larkmoorcoldstoreandreturnablebottlereceivinghall'.repeat(4);
    const pdf = await readPdf(predictionOf(named(long, long), typesetter, { page: 'letter' }));
    expect(outside(pdf)).toEqual([]);
    expect(pdf.text.replace(/\s+/g, '')).toContain(long);
  });

  it('that turns the direction or is half a character stands there by its number', async () => {
    const pdf = await readPdf(predictionOf(named('a\u202eb \ud800 漢', 'c\u0007d'), typesetter));
    const first = flat(pdf.pages[0]?.text ?? '');
    for (const part of ['a‹U+202E›b', '‹U+D800›', '‹U+6F22›', 'c‹U+0007›d']) expect(first).toContain(part);
  });

  it('may be anything', () => {
    const text = fc.string({ unit: 'binary', maxLength: 60 });
    fc.assert(
      fc.property(text, (title) => {
        const book: Book = { ...blank, about: { title, demonstration: title } };
        expect(predictionOf(book, typesetter).length).toBeGreaterThan(1000);
      }),
      { numRuns: 50 },
    );
  });
});
