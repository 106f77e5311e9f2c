import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import { sheetEntries } from '../../sheets/registry.ts';
import { readTable, writeCsv, writeXlsx } from '../../table/index.ts';
import { loadTranslation, type Translation } from '../../text/index.ts';
import { makeTypesetter, type PaperAsked, printPaper } from '../index.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';
import { workingsText } from '../workings/workings.text.ts';
import { wordProblemText } from './problems.text.ts';
import { readWordSheet } from './read-word-sheet.ts';
import { wordTable } from './word-sheet.ts';
import { worded } from './worded-papers.ts';
import { papersSay } from './words-of-paper.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const known = new Set(papersSay());
const printed = (asked: Partial<PaperAsked> & Pick<PaperAsked, 'paper'>): Promise<ReadPdf> =>
  readPdf(printPaper({ book: demo, ...asked }, { date, hash }, typesetter).bytes);
const flat = (text: string): string => text.replace(/\s+/g, ' ');

const sheet = (text: string) => {
  const tabs = readTable(new TextEncoder().encode(text));
  if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
  return readWordSheet(tabs.value, known);
};

describe('the words of a paper', () => {
  it.each(worded)('that a blank %s says are all on the list that goes to whoever translates it', (paper) => {
    const said = new Set<string>();
    class Overheard extends Map<string, string> {
      override get(english: string): string {
        said.add(english);
        return english;
      }
    }
    const translation = { language: 'de', texts: new Overheard() };
    const deaf = { has: () => true, heightByWidth: () => undefined, typeset: () => new Uint8Array() };
    for (const text of [demoText, readFileSync('examples/pumped-vessel.json', 'utf8')]) {
      printPaper({ paper, book: bookOf(text), translation }, { date, hash }, deaf);
    }
    expect(said.size).toBeGreaterThan(30);
    const listed = new Set(papersSay(paper));
    // the workings behind a paper stand in the first language alone
    const ofWorkings = new Set([
      ...Object.values(workingsText.en ?? {}),
      ...sheetEntries.flatMap(({ text: { en } }) => [
        en.title,
        ...[en.inputs, en.outputs, en.notes].flatMap((texts) => Object.values(texts)),
      ]),
    ]);
    const worth = [...said].filter(
      (text) => /\p{L}/u.test(text.replace(/\{\w+\}/gu, '')) && !ofWorkings.has(text),
    );
    expect(worth.filter((text) => !listed.has(text))).toEqual([]);
  });
});

describe('a sheet of words', () => {
  it.each(['xlsx', 'csv'] as const)('as %s comes back with every text that was filled in', (kind) => {
    const texts = papersSay('protocol');
    const table = wordTable(texts, undefined);
    const filled = {
      ...table,
      columns: table.columns.map((one, i) => (i === 1 ? { ...one, heading: 'pl' } : one)),
      rows: table.rows.map(([english]) => [english!, { text: `${english!.text} ≠`, open: true }]),
    };
    const bytes = kind === 'csv' ? new TextEncoder().encode(writeCsv(filled)) : writeXlsx(filled, 'Lists');
    const tabs = readTable(bytes);
    const read = tabs.ok ? readWordSheet(tabs.value, known) : tabs;
    if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 5)));
    expect(read.value.language).toBe('pl');
    expect([...read.value.texts.keys()]).toEqual(texts);
  });
  it('leaves to the held words what nobody bettered', async () => {
    const held = await loadTranslation('de');
    const [first = '', second = ''] = ['Protocol', 'by'];
    const table = wordTable([first, second], held);
    const rows = table.rows.map((row, i) => (i === 0 ? row : [row[0]!, row[1]!, { text: 'durch' }]));
    const read = sheet(writeCsv({ ...table, rows }));
    expect(read.ok && [...read.value.texts]).toEqual([
      [first, held?.texts.get(first)],
      [second, 'durch'],
    ]);
    expect(read.ok && read.value.language).toBe('de');
  });
  it('needs no headings', () => {
    expect(sheet('Protocol;Protokół\nremark;uwaga')).toMatchObject({
      ok: true,
      value: {
        language: 'und',
        texts: new Map([
          ['Protocol', 'Protokół'],
          ['remark', 'uwaga'],
        ]),
      },
    });
  });
  it('tells everything that is wrong with it at once, by its rows', () => {
    const read = sheet(
      [
        'English;pl',
        'revision {revision};wersja',
        'revision {revision};wersja {rewizja}',
        'book {hash};księga {hash',
        'no paper says this;x',
        '=cmd|calc;x',
        '__proto__;x',
        'remark;uwaga',
        'remark;notatka',
        'serial {serial};{serial, plural, one {nr} other {nry}}',
        '{n, plural, one {# point} other {# points}};{n, plural, two {# punkty} other {# punktu}}',
      ].join('\n'),
    );
    if (read.ok) throw new Error('it was read');
    expect(read.problems.map(({ code, parts }) => [code, parts?.row])).toEqual([
      ['WORDS_PARTS_MISSING', '2'],
      ['WORDS_ENGLISH_TWICE', '3'],
      ['WORDS_BRACES', '4'],
      ['WORDS_ENGLISH_UNKNOWN', '5'],
      ['WORDS_ENGLISH_UNKNOWN', '6'],
      ['WORDS_ENGLISH_UNKNOWN', '7'],
      ['WORDS_ENGLISH_TWICE', '9'],
      ['WORDS_PARTS_UNCOUNTED', '10'],
      ['WORDS_PLURAL_FORMS', '11'],
    ]);
    for (const { code } of read.problems) expect(Object.keys(wordProblemText.en)).toContain(code);
  });
  it.each([
    ['nothing of ours', 'a;b\nc;d', 'WORDS_NO_COLUMNS'],
    ['nothing at all', '', 'WORDS_NO_COLUMNS'],
    ['no translation', 'English;Translation\nProtocol;', 'WORDS_NONE'],
    ['braces that never end', `English;pl\nProtocol;${'{n, plural, other {'.repeat(1500)}`, 'WORDS_BRACES'],
    [
      'parts within parts',
      `English;pl\nProtocol;${'{'.repeat(9000)}${'}'.repeat(9000)}`,
      'WORDS_PARTS_UNKNOWN',
    ],
  ])('with %s is refused in a sentence', (_, text, code) => {
    const read = sheet(text);
    expect(read.ok ? [] : read.problems.map((one) => one.code)).toEqual([code]);
  });
});

describe('a paper in German', () => {
  let german: Translation | undefined;
  let pdf: ReadPdf;
  beforeAll(async () => {
    german = await loadTranslation('de');
    pdf = await printed({ paper: 'protocol', translation: german });
  });
  it('says its words, its numbers and its day as German does', () => {
    const text = flat(pdf.text);
    expect(text).toContain('Prüfprotokoll');
    expect(text).toContain('08.03.2027');
    expect(text).not.toContain('not as expected');
    expect(text).toContain('nicht wie erwartet');
  });
  it('says on each page, in German and in English, that nobody has reviewed it', () => {
    const said = 'Translated, not reviewed: where it matters, the English holds.';
    for (const { text } of pdf.pages) {
      expect(flat(text)).toContain(said);
      expect(flat(text)).toContain(german?.texts.get(said) ?? said);
    }
  });
  it('stays within the page', () => {
    expect(outside(pdf)).toEqual([]);
  });
});

describe('a paper in two languages', () => {
  it('has the second behind the first, once where both say the same, and within the page', async () => {
    const pdf = await printed({ paper: 'protocol', beside: { translation: await loadTranslation('de') } });
    const text = flat(pdf.text);
    expect(text).toContain('Protocol / Prüfprotokoll');
    expect(text).toContain('not as expected / nicht wie erwartet');
    expect(text).toContain('2027-03-08');
    expect(text).not.toContain('OW-0412 / OW-0412');
    expect(outside(pdf)).toEqual([]);
  });
  it('prints what somebody supplied as it is: no markup, no letter that the fonts lack', async () => {
    const read = sheet('English;pl\nProtocol;#panic() *x* $y$\nremark;‮uwaga 中');
    const pdf = await printed({
      paper: 'protocol',
      beside: { translation: read.ok ? read.value : undefined },
    });
    expect(flat(pdf.text)).toContain('Protocol / #panic() *x* $y$');
    expect(flat(pdf.text)).toContain('‹U+202E›uwaga ‹U+4E2D›');
    expect(flat(pdf.text)).toContain('not reviewed');
  });
});
