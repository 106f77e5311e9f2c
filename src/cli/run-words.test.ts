import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../papers/testing/read-pdf.ts';
import { readTable } from '../table/index.ts';
import { printedSchema } from './print-document.ts';
import { problemsSchema } from './problem-document.ts';
import { called, root } from './testing/called.ts';
import { wordsSchema } from './words-document.ts';

const book = join(root, 'examples/main.json');
const rowsOf = (bytes: Uint8Array | undefined): readonly (readonly string[])[] => {
  const tabs = readTable(bytes ?? new Uint8Array());
  return tabs.ok ? (tabs.value[0]?.rows ?? []) : [];
};
const protocol = (...more: readonly string[]) => [
  'print',
  book,
  '--paper',
  'protocol',
  '--out',
  'p.pdf',
  ...more,
];

describe('words', () => {
  it('writes the English of a paper, what is held in the language, and room to write', async () => {
    const { status, out, written } = await called([
      ...['words', '--paper', 'schedule', '--language', 'fr', '--out', 'w.csv', '--json'],
    ]);
    const told = wordsSchema.parse(JSON.parse(out));
    const rows = rowsOf(written.get('w.csv'));
    const heading = rows.findIndex(([first]) => first === 'English');
    expect(status).toBe(0);
    expect(rows[heading]).toEqual(['English', 'Français', 'Translation']);
    expect(rows.length - heading - 1).toBe(told.texts);
    expect(told.held).toBeGreaterThan(20);
    expect(rows.find(([english]) => english === 'Order')?.[1]).toMatch(/^Ordre/);
  });
  it('comes back in a paper, beside the English', async () => {
    const { written } = await called(['words', '--paper', 'protocol', '--out', 'w.csv']);
    const lines = rowsOf(written.get('w.csv')).map(([english = '']) =>
      english === 'remark' ? 'remark;uwaga' : '',
    );
    const files = { 'pl.csv': ['English;pl', ...lines].join('\n') };
    const printed = await called(protocol('--beside', 'pl.csv', '--json'), { files });
    expect(printedSchema.parse(JSON.parse(printed.out)).language).toBe('en');
    const { text } = await readPdf(printed.written.get('p.pdf')!);
    expect(text.replace(/\s+/g, ' ')).toContain('remark / uwaga');
  });
});

describe('print in another language', () => {
  it('says so, and prints the words and the day of that language', async () => {
    const printed = await called(protocol('--language', 'es', '--date', '2027-03-08', '--json'));
    expect(printedSchema.parse(JSON.parse(printed.out)).language).toBe('es');
    const { text } = await readPdf(printed.written.get('p.pdf')!);
    expect(text).toMatch(/8 mar 2027/);
    expect(text).not.toContain('not as expected');
  });
  it('tells all that is wrong with a sheet, by its rows, and writes nothing', async () => {
    const files = { 'bad.csv': 'English;pl\nserial {serial};numer\nnobody says this;x\nremark;{uwaga' };
    const { status, err, written } = await called(protocol('--beside', 'bad.csv'), { files });
    expect(status).toBe(2);
    expect(err).toContain('Row 2: "numer" leaves out {serial}');
    expect(err).toContain('Row 3: no paper says "nobody says this"');
    expect(err).toContain('Row 4: in "{uwaga" a brace is not opened or not closed.');
    expect(written.size).toBe(0);
  });
  it.each([
    [['--beside', 'klingon'], 'another language than the paper’s (de, es, fr)'],
    [['--beside', 'de', '--language', 'de'], '(en, es, fr)'],
    [['--beside', 'none.csv'], 'There is no file'],
    [['--beside', 'de', '--paper', 'card'], 'preparation, protocol, schedule'],
  ])('%j is answered in a sentence', async (argv, sentence) => {
    const { status, err } = await called([
      'print',
      book,
      '--paper',
      'protocol',
      ...argv.filter((one) => one !== ''),
    ]);
    expect(status).toBe(2);
    expect(err).toContain(sentence);
  });
  it('tells the same as JSON', async () => {
    const { err, out } = await called(protocol('--beside', 'x.txt', '--json'));
    const { problems } = problemsSchema.parse(JSON.parse(out === '' ? err : out));
    expect(problems.map(({ code }) => code)).toEqual(['CLI_OPTION_VALUE']);
  });
});
