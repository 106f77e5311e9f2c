import { beforeAll, describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { assessBook, remediesFor } from '../../floor/index.ts';
import { openQuestions } from '../../floor/questions/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import type { PageSize } from '../paper-head.ts';
import { makePaperWords } from '../paper-words.ts';
import { printPreparation } from '../print-preparation.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';
import { type Preparation, type PreparationRow, trades } from './preparation-content.ts';
import { preparationOf } from './preparation-of.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const assessment = assessBook(demo);
const flat = (text: string): string => text.replace(/\s+/g, ' ');

const wordsIn = (system?: UnitSystem) => makePaperWords(demo, bookUnits(demo, system), 'en');

const print = (asked: Preparation, page: PageSize = 'a4', system?: UnitSystem): Uint8Array =>
  printPreparation(asked, { date, hash, page }, wordsIn(system), typesetter);

const row = (more: Partial<PreparationRow> = {}): PreparationRow => ({
  tieIn: { tag: 'T-1', name: 'power, terminal box' },
  what: 'current of the feeder',
  demand: '116 A',
  has: '',
  demandMark: [],
  hasMark: [],
  verdict: 'unknown',
  said: 'not known, asks 116 A',
  ifSaid: false,
  marks: [],
  ...more,
});

describe('the preparation of a site', () => {
  let pdf: ReadPdf;
  let floorQuestions: readonly string[];
  beforeAll(async () => {
    pdf = await readPdf(print(preparationOf(assessment, 'LARKMOOR', [], wordsIn())));
    floorQuestions = openQuestions(demo, assessment, 'LARKMOOR')
      .filter(({ who }) => who === 'site')
      .map(({ path }) => path);
  });

  it('has a page for each trade, with its caution and a place to sign', () => {
    for (const trade of ['Electrician', 'Plumber', 'Air contractor', 'Heating', 'Drains', 'Building']) {
      expect(pdf.bookmarks.some((mark) => mark.startsWith(trade))).toBe(true);
    }
    const text = flat(pdf.text);
    const pages = pdf.bookmarks.filter(
      (mark) => / Larkmoor$/.test(mark) && !mark.startsWith('Please answer'),
    );
    expect(text.split('Take care.').length - 1).toBe(pages.length);
    expect(text).toContain('licensed electrician');
    expect(text).toContain('Send back to Oxbow Works.');
    expect(text).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
  });

  it('has what each trade but the mover brings on one sheet, and each form whole on it or on the next', () => {
    const texts = pdf.pages.map((page) => flat(page.text));
    const first = (trade: string): number => texts.findIndex((text) => text.includes(`${trade}, Larkmoor`));
    const trades = ['Electrician', 'Plumber', 'Air contractor', 'Heating and steam', 'Drains'];
    for (const trade of trades) {
      const sheets = texts.slice(first(trade)).filter((text) => text.includes(`${trade}, Larkmoor`));
      expect(sheets.filter((text) => /What to bring .* What the line draws/.test(text))).toHaveLength(1);
      const form = sheets.find((text) => text.includes(`Please answer ${trade}, Larkmoor`));
      expect(form).toContain('Filled in by');
    }
    expect(first('Plumber')).toBeLessThanOrEqual(2);
  });

  it('names every finding of a utility with what is asked, what is there and the verdict', () => {
    const text = flat(pdf.text);
    const larkmoor = assessment.floors.find(({ floor }) => floor === 'LARKMOOR');
    expect(larkmoor?.utilities.findings.length).toBeGreaterThan(10);
    const paper = wordsIn();
    for (const { question, have } of larkmoor?.utilities.findings ?? []) {
      expect(text).toContain(flat(paper.say(`utility.question.${question}`)));
      if (have.value !== undefined) expect(text).toContain(flat(paper.utility(have.value, have.kind)));
    }
    expect(text).toMatch(/T-PWR.*T-AIR/);
  });

  it('begins the page of the electrician with supply, load, sizes, protection, earthing and unbalance', () => {
    const text = flat(pdf.pages[0]?.text ?? '');
    const at = [
      'tie-in T-PWR',
      'supply of the floor 208Y/120 V',
      'feeder 130 A, 1 AWG, copper, 480 ft',
      'protection 125 A, breaker',
      'earthing solidly grounded wye',
      'unbalance of the voltages not known',
    ].map((part) => text.indexOf(part));
    for (const place of at) expect(place).toBeGreaterThan(0);
    for (const place of at) expect(place).toBeLessThan(text.indexOf('the floor has'));
    // three-phase apparent power, S = √3 U I (memory): load and power of the same line on the 208 V of its floor
    const [, amperes, kilovoltamperes] = /load, running ([\d.]+) A, ([\d.]+) kVA/.exec(text) ?? [];
    expect((Math.sqrt(3) * 208 * Number(amperes)) / 1000).toBeCloseTo(Number(kilovoltamperes), 1);
  });

  it('says of a current behind the transformer that it is one', () => {
    const text = flat(pdf.text);
    expect(text).toMatch(/current of the motor, wash pump [\d.]+ A at 480 V/);
    expect(text).toMatch(/protection that would do, a check aid 125 A/);
  });

  it('asks in sentences, what settles most first, and nothing of the builder', () => {
    const text = flat(pdf.text);
    expect(text).toContain('Power, reading 1, L1–L2: L1 to L2.');
    expect(text).toContain('nothing is said; settles unbalance of the three voltages');
    expect(text.indexOf('reading 1, L1–L2')).toBeLessThan(text.indexOf('X/R'));
    const builders = openQuestions(demo, assessment, 'LARKMOOR').filter(({ who }) => who === 'builder');
    expect(builders.length).toBeGreaterThan(0);
    const unbroken = pdf.text.replace(/\s+/g, '');
    for (const { path } of builders) expect(unbroken).not.toContain(path);
  });

  it('asks every open question of the site once, with the place that its answer goes to', () => {
    expect(floorQuestions.length).toBeGreaterThan(3);
    const unbroken = pdf.text.replace(/\s+/g, '');
    for (const path of floorQuestions) expect(unbroken.split(path).length - 1, path).toBeGreaterThan(0);
    const printed = pdf.text.match(/plate, drawing/g) ?? [];
    expect(printed.length).toBe(floorQuestions.length);
  });

  it.each(['a4', 'letter'] as const)('stays within the margins of %s, in US units too', async (page) => {
    const us = await readPdf(print(preparationOf(assessment, 'LARKMOOR', [], wordsIn('us')), page, 'us'));
    expect(outside(us)).toEqual([]);
    expect(us.text).toContain('psig');
    expect(us.text).not.toMatch(
      /\b(?:preparation|trade|caution|utility|lever|paper)\.[a-z]|\{[a-z]+\}|undefined|NaN/,
    );
  });

  it('is the same to the byte when it is made again', () => {
    const asked = preparationOf(assessment, 'OXBOW', [], wordsIn());
    expect(Buffer.compare(print(asked), print(asked))).toBe(0);
  });
});

describe('what would carry a row', () => {
  const sheetWith = async (finding: string) => {
    const remedies = remediesFor(demo, { floor: 'LARKMOOR', finding });
    const pdf = await readPdf(print(preparationOf(assessment, 'LARKMOOR', remedies, wordsIn())));
    return { remedies, text: flat(pdf.text), pdf };
  };

  it('is the least change that breaks nothing, with the next smaller size that fails', async () => {
    const { remedies, text, pdf } = await sheetWith('drainAcidity T-DRN');
    const best = remedies.find(({ changes, breaks }) => changes.length > 0 && breaks.length === 0);
    expect(best?.nextSmaller?.margin).toBeLessThan(0);
    expect(text).toContain(
      `to ${best?.changes[0]?.text}; the next smaller, ${best?.nextSmaller?.text}, misses by`,
    );
    expect(outside(pdf)).toEqual([]);
  });

  it('names what it would break in the words of the sheet', async () => {
    const { remedies, text } = await sheetWith('airRoute');
    expect(remedies.map(({ breaks }) => breaks.map(({ finding }) => finding))).toEqual([['airDryer']]);
    expect(text).toContain('but breaks: Larkmoor, dryer for this air');
    expect(text).not.toContain('airDryer');
  });

  it('is said to be none where all that was tried fails', () => {
    const tried = remediesFor(demo, { floor: 'LARKMOOR', finding: 'airRoute' }).map((one) => ({
      ...one,
      changes: [],
      patch: [],
    }));
    const rows = preparationOf(assessment, 'LARKMOOR', tried, wordsIn()).pages.flatMap((page) => page.rows);
    expect(rows.filter(({ fix }) => fix?.startsWith('None of the changes')).length).toBe(1);
  });
});

describe('what a trade is asked', () => {
  const page = (rows: readonly PreparationRow[]): Preparation => ({
    floor: 'Larkmoor',
    pages: [
      {
        trade: 'power',
        rows,
        notes: [],
        draws: [],
        questions: [{ text: 'Length of the feeder', unit: 'm', place: '/floors/1/power/feeder/length' }],
      },
    ],
  });

  it('says so where nothing is asked of a trade yet', async () => {
    const { text } = await readPdf(print({ floor: 'Larkmoor', pages: [] }));
    expect(text.match(/The book asks nothing of this trade yet/g)?.length).toBe(trades.length - 1);
    expect(flat(text)).toContain('Send back to whoever sent you this sheet.');
  });

  it('is marked where it was assumed, and carries its fix', async () => {
    const marks = ['assumed: feeder, length'];
    const { text } = await readPdf(print(page([row({ marks, fix: 'Would carry it: feeder of 50 mm²' })])));
    expect(flat(text)).toContain('assumed: feeder, length Would carry it: feeder of 50 mm².');
  });

  it('is printed as it is and within the margins, however it is named', async () => {
    const hostile = '#panic() *x* $a$ <b> @c';
    const long = 'Schaltschrankeinspeisungsklemmenkasten'.repeat(5);
    const rows = [
      row({ tieIn: { tag: long, name: hostile }, what: hostile, demand: long, has: long, said: long }),
      ...Array.from({ length: 60 }, (_, i) => row({ what: `load ${i}` })),
    ];
    const pdf = await readPdf(print(page(rows), 'letter'));
    expect(outside(pdf)).toEqual([]);
    expect(flat(pdf.text)).toContain(hostile);
    expect(pdf.text.replace(/\s+/g, '')).toContain(long);
    expect(flat(pdf.text)).toContain('load 59');
  });
});
