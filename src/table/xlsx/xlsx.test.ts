import fc from 'fast-check';
import readExcelFile from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import { readTable } from '../read-table.ts';
import type { Tab, Table, TableCell } from '../table.ts';
import { pack } from './packing.ts';
import { readXlsx } from './read-xlsx.ts';
import { tabName } from './tab-name.ts';
import { writeXlsx } from './write-xlsx.ts';

const tabsOf = (bytes: Uint8Array): readonly Tab[] => {
  const read = readTable(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

const table = (rows: readonly (readonly TableCell[])[], lead?: readonly string[]): Table => ({
  name: 'Questions',
  ...(lead === undefined ? {} : { lead }),
  columns: [
    { heading: 'question', width: 40 },
    { heading: 'answer', width: 14 },
    { heading: 'when', width: 12, typedAs: 'day' },
    { heading: 'id', width: 3, hidden: true },
  ],
  rows,
});

const headings = ['question', 'answer', 'when', 'id'];

/** A workbook from the inside of its one tab, as another program could write it. */
const workbook = (sheetData: string, more: Record<string, string> = {}, workbookPr = ''): Uint8Array =>
  pack({
    '_rels/.rels':
      '<Relationships><Relationship Id="a" Type="x/officeDocument" Target="/xl/workbook.xml"/></Relationships>',
    'xl/workbook.xml': `<x:workbook xmlns:x="m" xmlns:r="r">${workbookPr}<x:sheets><x:sheet name="One" sheetId="1" r:id="r1"/></x:sheets></x:workbook>`,
    'xl/_rels/workbook.xml.rels':
      '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/one.xml"/>' +
      '<Relationship Id="r2" Type="x/sharedStrings" Target="sharedStrings.xml"/>' +
      '<Relationship Id="r3" Type="x/styles" Target="styles.xml"/>' +
      '<Relationship Id="r4" Type="x/worksheet" TargetMode="External" Target="file:///etc/passwd"/></Relationships>',
    'xl/worksheets/one.xml': `<worksheet><sheetData>${sheetData}</sheetData></worksheet>`,
    ...more,
  });

const firstRow = (
  cells: string,
  more: Record<string, string> = {},
  workbookPr = '',
): readonly string[] | undefined =>
  tabsOf(workbook(`<row r="1">${cells}</row>`, more, workbookPr))[0]?.rows[0];

const styles = (...codes: readonly (string | number)[]): Record<string, string> => ({
  'xl/styles.xml': `<styleSheet><numFmts>${codes
    .map((code, i) =>
      typeof code === 'string' ? `<numFmt numFmtId="${200 + i}" formatCode="${code}"/>` : '',
    )
    .join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/>${codes
    .map((code, i) => `<xf numFmtId="${typeof code === 'string' ? 200 + i : code}"/>`)
    .join('')}</cellXfs></styleSheet>`,
});

describe('a spreadsheet that the tool writes', () => {
  const anyText = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.constantFrom(
      '=1+1',
      '-5',
      '@x',
      '_x000D_',
      '_x005F_',
      'a\r\nb',
      ' x ',
      '\ud800',
      '&lt;',
      ']]>',
      '007',
      '1e5',
    ),
  );
  it('gives every text back, whatever it holds', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(anyText, anyText, anyText), { maxLength: 8 }), (rows) => {
        const bytes = writeXlsx(
          table(
            rows.map((row) => row.map((text) => ({ text, open: true }))),
            ['lead'],
          ),
        );
        const read = tabsOf(bytes)[0]?.rows.slice(2) ?? [];
        for (const [i, row] of rows.entries()) {
          for (const [j, text] of row.entries()) expect(read[i]?.[j] ?? '').toBe(text);
        }
      }),
    );
  });
  it('is opened by an independent reader, texts as texts and days as days', async () => {
    const rows = [
      [
        { text: '=HYPERLINK("x")' },
        { text: '-5 °C', open: true },
        { text: '2027-03-08', open: true },
        { text: '/a' },
      ],
      [
        { text: 'b' },
        { text: '007', open: true, choices: ['007', "it's"] },
        { text: '', open: true },
        { text: '/b' },
      ],
    ];
    const sheets = await readExcelFile(Buffer.from(writeXlsx(table(rows, ['How to fill it in']))));
    expect(sheets.map(({ sheet }) => sheet)).toEqual(['Questions', 'lists']);
    expect(sheets[0]?.data).toEqual([
      ['How to fill it in', null, null, null],
      headings,
      ['=HYPERLINK("x")', '-5 °C', new Date('2027-03-08T00:00:00Z'), '/a'],
      ['b', '007', null, '/b'],
    ]);
    expect(sheets[1]?.data).toEqual([['007'], ["it's"]]);
  });
  it('gives the same bytes for the same table, and names lists once', () => {
    const rows = Array.from({ length: 3 }, (_, i) => [
      { text: `${i}` },
      { text: '', choices: ['yes', 'no'] },
    ]);
    expect(writeXlsx(table(rows))).toEqual(writeXlsx(table(rows)));
    expect(tabsOf(writeXlsx(table(rows))).map(({ rows: each }) => each)[1]).toEqual([['yes'], ['no']]);
  });
  it('names its tab so that every program takes it', () => {
    expect(tabName("'Oxbow [Works]: a/b\\c? *")).toBe('Oxbow Works a b c');
    expect(tabName(':')).toBe('Table');
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const tab = tabName(name);
        expect(tab.length).toBeLessThanOrEqual(31);
        expect(tab).not.toMatch(/[[\]:*?/\\]|^'|'$|^$/);
      }),
    );
  });
});

describe('a spreadsheet that another program saved', () => {
  it('gives numbers without loss', () => {
    const cells = ['80', '0.10000000000000001', '1E-3', '1.5e21', '12345678901234567890', '-0.5', 'x']
      .map((v) => `<c><v>${v}</v></c>`)
      .join('');
    expect(firstRow(cells)).toEqual(['80', '0.1', '0.001', '1.5e+21', '12345678901234567890', '-0.5', 'x']);
  });
  it('gives a share that is shown in percent with its sign', () => {
    expect(
      firstRow(
        '<c s="1"><v>0.05</v></c><c s="2"><v>0.07</v></c><c s="3"><v>3</v></c>',
        styles(9, '0.0%', '0&quot;%&quot;'),
      ),
    ).toEqual(['5 %', '7 %', '3']);
  });
  it('gives days, moments, times and durations in ISO 8601', () => {
    // ECMA-376 part 1, 18.17.4.1: 1 is 1900-01-01, 2958465 is 9999-12-31; the day 60 never was. Memory.
    const of = (serials: readonly number[], ...codes: (string | number)[]) =>
      firstRow(
        serials.map((v, i) => `<c s="${Math.min(i + 1, codes.length)}"><v>${v}</v></c>`).join(''),
        styles(...codes),
      );
    expect(of([1, 59, 60, 61, 2958465, 46454], 14)).toEqual([
      '1900-01-01',
      '1900-02-28',
      '60',
      '1900-03-01',
      '9999-12-31',
      '2027-03-08',
    ]);
    expect(of([46454.5625, 0.5, 1.510416666666667], 22, 'h:mm', '[h]:mm:ss')).toEqual([
      '2027-03-08T13:30:00',
      '12:00:00',
      '36:15:00',
    ]);
    expect(of([46454, 46454, 46454], 'dd/mm/yyyy', '[$-407]d. mmm yyyy;@', '[Red]General')).toEqual([
      '2027-03-08',
      '2027-03-08',
      '46454',
    ]);
    // the same day is 1462 less where days are counted from 1904
    expect(firstRow('<c s="1"><v>44992</v></c>', styles(14), '<x:workbookPr date1904="1"/>')).toEqual([
      '2027-03-08',
    ]);
  });
  it('gives what a formula last was, and the formula where it was never worked out', () => {
    expect(
      firstRow(
        '<c><f>A1*2</f><v>160</v></c><c t="str"><f>B1</f><v>psi</v></c><c t="str"><f>B2</f><v></v></c><c><f>A1</f></c><c t="e"><f>1/0</f><v>#DIV/0!</v></c><c t="b"><v>1</v></c><c t="b"><v>0</v></c>',
      ),
    ).toEqual(['160', 'psi', '', '=A1', '#DIV/0!', 'TRUE', 'FALSE']);
  });
  it('gives shared and rich text whole, without its small print, and resolves characters', () => {
    const shared =
      '<sst><si><t>one</t></si><si><r><t xml:space="preserve">two </t></r><r><rPr><b/></rPr><t>parts</t></r><rPh><t>x</t></rPh></si><si><t>&lt;&#176;&#x43;&gt;<![CDATA[&]]>_x0041_</t></si></sst>';
    expect(
      firstRow(
        '<c t="s"><v>1</v></c><c t="s"><v>2</v></c><c t="s"><v>9</v></c><c t="inlineStr"><is><t>four</t></is></c>',
        {
          'xl/sharedStrings.xml': shared,
        },
      ),
    ).toEqual(['two parts', '<°C>&A', '', 'four']);
  });
  it('keeps rows and columns where they stand, and drops what is only coloured', () => {
    const rows = tabsOf(
      workbook(
        '<row r="2"><c r="C2"><v>1</v></c></row><row r="4"><c r="B4"/><c><v>2</v></c></row><row r="1048576"><c r="XFD1048576" s="1"/></row>',
      ),
    )[0]?.rows;
    expect(rows).toEqual([[], ['', '', '1'], [], ['', '', '2']]);
  });
  it('is refused with a clear problem where it is none', () => {
    const code = (bytes: Uint8Array): unknown => {
      const read = readTable(bytes);
      return read.ok ? 'read' : read.problems.map((each) => each.code);
    };
    expect(code(pack({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet' }))).toEqual([
      'TABLE_NOT_XLSX',
    ]);
    expect(code(Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1))).toEqual(['TABLE_OLD_OR_LOCKED']);
    expect(code(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0, 0))).toEqual(['TABLE_NOT_TEXT']);
    expect(readXlsx(new Uint8Array(0)).ok).toBe(false);
  });
});
