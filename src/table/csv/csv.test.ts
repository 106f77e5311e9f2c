import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readTable } from '../read-table.ts';
import type { Table } from '../table.ts';
import { withGuard, withoutGuard } from './formula-guard.ts';
import { readCsv } from './read-csv.ts';
import { type Delimiter, writeCsv } from './write-csv.ts';

const rowsOf = (text: string): readonly (readonly string[])[] => {
  const read = readCsv(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.rows;
};

const tableOf = (rows: readonly (readonly string[])[]): Table => ({
  name: 'Table',
  columns: [
    { heading: 'one', width: 9 },
    { heading: 'two', width: 9 },
    { heading: 'three', width: 9 },
  ],
  rows: rows.map((row) => row.map((text) => ({ text }))),
});

/** Rows as a reader gives them: no empty cells at the end of a row, no empty rows at the end. */
const trimmed = (rows: readonly (readonly string[])[]): readonly (readonly string[])[] => {
  const out = rows.map((row) => row.slice(0, row.findLastIndex((cell) => cell !== '') + 1));
  return out.slice(0, out.findLastIndex((row) => row.length > 0) + 1);
};

const anyCell = fc.oneof(
  fc.string(),
  fc.string({ unit: 'binary' }).filter((text) => !text.includes('\u0000')),
  fc
    .array(fc.constantFrom('"', ',', ';', '\t', '\r', '\n', "'", '=', '-', '@', '+', 'a', '1,5', ' '))
    .map((each) => each.join('')),
);
const anyRows = fc.array(fc.tuple(anyCell, anyCell, anyCell), { maxLength: 12 });

describe('a text file', () => {
  it('gives its cells back, whatever they hold and whichever mark parts them', () => {
    fc.assert(
      fc.property(anyRows, fc.constantFrom<Delimiter>(',', ';', '\t'), (rows, delimiter) => {
        const named = `sep=${delimiter}\r\n${writeCsv(tableOf(rows), delimiter).slice(1)}`;
        expect(rowsOf(named)).toEqual(trimmed([['one', 'two', 'three'], ...rows]));
      }),
    );
  });
  it('is cut as an independent reader cuts it', () => {
    fc.assert(
      fc.property(anyRows, fc.constantFrom<Delimiter>(',', ';', '\t'), (rows, delimiter) => {
        const text = writeCsv(tableOf(rows), delimiter).slice(1);
        const { data } = Papa.parse<string[]>(text, { delimiter, newline: '\r\n' });
        const theirs = data.slice(0, -1).map((row) => row.map(withoutGuard));
        expect(trimmed(theirs)).toEqual(trimmed([['one', 'two', 'three'], ...rows]));
      }),
    );
  });
  it.each([
    [
      'commas',
      'a,b,c\r\n1,"2,5",3\r\n',
      [
        ['a', 'b', 'c'],
        ['1', '2,5', '3'],
      ],
    ],
    [
      'semicolons with decimal commas',
      'a;b;c\n1,5;2,5;3\n;x;\n',
      [
        ['a', 'b', 'c'],
        ['1,5', '2,5', '3'],
        ['', 'x'],
      ],
    ],
    [
      'tabs',
      'a\tb\n1,5\t2;5\n',
      [
        ['a', 'b'],
        ['1,5', '2;5'],
      ],
    ],
    [
      'a byte order mark',
      '\ufeffa,b\n1,2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['empty rows between', 'a,b\n\n,\n1,2\n\n', [['a', 'b'], [], [], ['1', '2']]],
    [
      'line ends of all kinds',
      'a,b\r1,2\n3,4\r\n5,6',
      [
        ['a', 'b'],
        ['1', '2'],
        ['3', '4'],
        ['5', '6'],
      ],
    ],
    [
      'a line end in a cell',
      'a,b\n"x\ny",2\n',
      [
        ['a', 'b'],
        ['x\ny', '2'],
      ],
    ],
    [
      'a quotation mark inside a plain cell',
      'a,b\n5\' 3",2\n',
      [
        ['a', 'b'],
        ['5\' 3"', '2'],
      ],
    ],
    [
      'letters behind a closing quotation mark',
      'a,b\n"x"y,2\n',
      [
        ['a', 'b'],
        ['xy', '2'],
      ],
    ],
    ['one column', 'a\nb\n', [['a'], ['b']]],
    ['nothing', '', []],
  ])('reads %s', (_, text, rows) => {
    expect(rowsOf(text)).toEqual(rows);
  });
  it('names the row of a quotation mark that is never closed', () => {
    expect(readCsv('a,b\n1,2\n"x,3\n4,5')).toEqual({
      ok: false,
      problems: [{ code: 'TABLE_QUOTE_OPEN', path: '', parts: { row: 3 } }],
    });
  });
  it('is read in the encodings in which spreadsheets save', () => {
    const rows = [['12 °C', 'µ²']];
    const bytes = (text: string, ...more: number[]): Uint8Array =>
      Uint8Array.from([...more, ...Buffer.from(text, 'latin1')]);
    const read = (given: Uint8Array): unknown => {
      const tabs = readTable(given);
      return tabs.ok ? tabs.value[0]?.rows : tabs.problems;
    };
    expect(read(new TextEncoder().encode('12 °C;µ²'))).toEqual(rows);
    expect(read(bytes('12 °C;µ²'))).toEqual(rows);
    for (const text of ['\ufeff12 °C\tµ²\r\n', '12 °C\tµ²\r\n']) {
      const utf16 = Buffer.from(text, 'utf16le');
      expect(read(new Uint8Array(utf16))).toEqual(rows);
      expect(read(new Uint8Array(utf16.swap16()))).toEqual(rows);
    }
  });
});

describe('a text that a spreadsheet would take for a formula', () => {
  it('carries an apostrophe in the file, and none when it is read back', () => {
    for (const text of ['=1+1', '+1', '-5 degC', '@x', '\tx', "'=x"]) {
      const file = writeCsv(tableOf([[text, '', '']]));
      expect(file).toMatch(/\r\n"?'/);
      expect(rowsOf(file)[1]).toEqual([text]);
    }
  });
  it('is guarded so that no text is mistaken for another', () => {
    fc.assert(
      fc.property(anyCell, (text) => {
        expect(withoutGuard(withGuard(text))).toBe(text);
        expect(withGuard(text)).not.toMatch(/^[=+\-@\t\r\n]/);
      }),
    );
  });
  it('leaves an apostrophe alone that somebody wrote before a letter', () => {
    expect(withoutGuard("'s-Hertogenbosch")).toBe("'s-Hertogenbosch");
  });
});
