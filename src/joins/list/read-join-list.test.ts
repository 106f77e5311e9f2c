import { describe, expect, it } from 'vitest';
import { type Book, readBook } from '../../book/index.ts';
import { hasMacros, readTable } from '../../table/index.ts';
import { pack } from '../../table/xlsx/packing.ts';
import { plainHeading } from './headings.ts';
import { matchColumns, rememberedFrom } from './match-columns.ts';
import { type JoinList, type ListOptions, readJoinList, withJoins } from './read-join-list.ts';

const book: Book = {
  twinfloor: 1,
  line: {
    sections: [{ tag: '+S1' }, { tag: '+S2' }],
    splits: [{ tag: 'SP1', between: ['+S1', '+S2'] }],
    drives: [{ tag: 'J-M3' }],
    joins: [{ tag: 'J-W1', kind: 'conductor', from: 'X1:1', note: 'kept' }],
  },
};

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

const tabOf = (bytes: Uint8Array) => {
  const tabs = readTable(bytes);
  if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
  return tabs.value[0]!;
};

const read = (bytes: Uint8Array | string, options?: ListOptions): JoinList => {
  const list = readJoinList(tabOf(typeof bytes === 'string' ? utf8(bytes) : bytes), book, options);
  if (!list.ok) throw new Error(JSON.stringify(list.problems));
  return list.value;
};

/** A spreadsheet of one tab, from the XML of its rows; `more` stands behind them. */
const workbook = (rows: string, more = '', parts: Record<string, string> = {}): Uint8Array =>
  pack({
    '_rels/.rels': '<R><Relationship Id="a" Type="x/officeDocument" Target="w.xml"/></R>',
    'w.xml': '<workbook><sheet name="Wires" id="r1"/></workbook>',
    '_rels/w.xml.rels': '<R><Relationship Id="r1" Type="x/worksheet" Target="s.xml"/></R>',
    's.xml': `<worksheet><sheetData>${rows}</sheetData>${more}</worksheet>`,
    ...parts,
  });
const row = (...cells: readonly string[]): string =>
  `<row>${cells.map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`).join('')}</row>`;

describe('the columns of a list', () => {
  it.each([
    ['Wire no.;From;To;Cable;Core;Colour;Size', 'en'],
    ['Adernummer;Von;Nach;Kabel;Ader;Farbe;Querschnitt [mm²]', 'de'],
    ['N.º;Desde;Hasta;Manguera;Hilo;Color;Sección', 'es'],
    ['Repère;Tenant;Aboutissant;Cable;Conducteur;Couleur;Section', 'fr'],
  ])('are known by the headings %s', (headings) => {
    const { matched, joins } = read(`${headings}\n101;X1:1;X2:1;W1;3;BK;1,5 mm2\n`);
    const fields = matched.columns.map(({ field }) => field);
    expect(fields.slice(1)).toEqual(['from', 'to', 'cable', 'core', 'colour', 'size']);
    expect(joins[0]).toMatchObject({ kind: 'conductor', from: 'X1:1', to: 'X2:1', cable: 'W1', core: '3' });
  });

  it('are looked for below a title block', () => {
    const { matched, taken } = read('Flagon line 4,,\nwire list,,\n\nWire,From,To,Core\n1,X1:1,X2:1,1\n');
    expect(matched.header).toBe(3);
    expect(taken).toEqual([{ row: 5, tag: 'J-1', known: false }]);
  });

  it('are remembered before they are guessed, and a heading that is passed over stays so', () => {
    const text = 'Pos,Punkt A,Punkt B,Note,Core\n1,X1:1,X2:1,old,4\n';
    expect(matchColumns(tabOf(utf8(text)), {})).toBeUndefined();
    const remembered = { 'punkt a': 'from', 'punkt b': 'to', note: '' } as const;
    const { matched, joins } = read(text, { remembered });
    expect(joins[0]).toEqual({ tag: 'J-X1:1/X2:1', kind: 'conductor', from: 'X1:1', to: 'X2:1', core: '4' });
    const next = rememberedFrom(matched);
    expect(next).toMatchObject({ 'punkt a': 'from', note: '', pos: '' });
    expect(read(text, { remembered: next }).joins).toEqual(joins);
  });

  it('are compared without accents, brackets and case', () => {
    expect(plainHeading(' Länge [m] ')).toBe('lange');
  });
});

describe('the rows of a list', () => {
  it('are taken whole or told with all that is wrong, by the number that a person sees', () => {
    const { taken, problems, joins, empty } = read(
      [
        'Tag,Kind,From,To,Torque,From section',
        'J-1,conductor,X1:1,X2:1,,+S1',
        'J-2,kabel?,X1:2,X2:2,5 apples,+S9',
        ',,,,,',
        'J-3,hose,,,,',
        'J-1,tube,a,b,,',
        'J-M3,tube,a,b,,',
        'J-4,tubo,=A1&B1,#REF!,,',
      ].join('\n'),
    );
    expect(taken.map(({ row: at, tag }) => `${at} ${tag}`)).toEqual(['2 J-1']);
    expect(empty).toBe(1);
    expect(joins[0]).toEqual({
      tag: 'J-1',
      kind: 'conductor',
      from: 'X1:1',
      to: 'X2:1',
      fromEnd: { section: '+S1' },
    });
    expect(problems.map(({ code, parts }) => `${code} ${parts?.row}`)).toEqual([
      'JOIN_ROW_KIND 3',
      'JOIN_ROW_QUANTITY 3',
      'JOIN_ROW_PLACE 3',
      'JOIN_ROW_NO_END 5',
      'JOIN_ROW_TAG_TWICE 6',
      'JOIN_ROW_TAG_TAKEN 7',
      'JOIN_ROW_FORMULA 8',
      'JOIN_ROW_FORMULA 8',
    ]);
  });

  it('change a join that the book has, and are the same joins when they are read again', () => {
    const text = 'Wire,From,To,Core\nW1,X1:9,X2:9,2\nW2,X1:2,X2:2,3\n';
    const next = withJoins(book, read(text).joins);
    expect(next.line?.joins).toEqual([
      { tag: 'J-W1', kind: 'conductor', label: 'W1', from: 'X1:9', to: 'X2:9', core: '2', note: 'kept' },
      { tag: 'J-W2', kind: 'conductor', label: 'W2', from: 'X1:2', to: 'X2:2', core: '3' },
    ]);
    const again = readJoinList(tabOf(utf8(text)), next);
    expect(again.ok && withJoins(next, again.value.joins)).toEqual(next);
    expect(readBook(JSON.stringify(next)).ok).toBe(true);
  });

  it('say what they are, or the list is told to', () => {
    const text = 'From,To,Size\n-C2:1,AIR-1,6 mm\n';
    expect(read(text).problems.map(({ code }) => code)).toEqual(['JOIN_ROW_NO_KIND']);
    expect(read(text, { kind: 'tube' }).joins[0]).toMatchObject({ kind: 'tube', size: '6 mm' });
  });
});

describe('a list from any hand', () => {
  it('has a cell that was merged over rows in each of them', () => {
    const bytes = workbook(
      row('Cable', 'Core', 'From', 'To') +
        row('W7', '1', 'X1:1', 'X2:1') +
        row('', '2', 'X1:2', 'X2:2') +
        row('', '3', 'X1:3', 'X2:3'),
      '<mergeCells><mergeCell ref="A2:A4"/><mergeCell ref="A2:ZZZ9999999"/><mergeCell ref="nonsense"/></mergeCells>',
    );
    expect(read(bytes).joins.map(({ cable, core }) => `${cable} ${core}`)).toEqual(['W7 1', 'W7 2', 'W7 3']);
  });

  it('tells a formula that was never worked out, and takes one that was', () => {
    const cell = (formula: string, value: string): string =>
      `<c t="str"><f>${formula}</f><v>${value}</v></c>`;
    const bytes = workbook(
      row('Core', 'From', 'To') +
        `<row><c t="inlineStr"><is><t>1</t></is></c>${cell('"X1:"&amp;A2', 'X1:1')}${cell('B9', 'X2:1')}</row>` +
        `<row><c t="inlineStr"><is><t>2</t></is></c><c><f>B9</f></c>${cell('B9', 'X2:2')}</row>`,
    );
    const { taken, problems } = read(bytes);
    expect(taken.map(({ row: at }) => at)).toEqual([2]);
    expect(problems).toMatchObject([
      { code: 'JOIN_ROW_FORMULA', given: '=B9', parts: { row: 3, column: 'from' } },
    ]);
  });

  it('is read in the code page in which spreadsheets still save text, and in UTF-16', () => {
    const latin = Uint8Array.from('Ader;Von;Nach;Länge\n1;X1:1;X2:1;3 m\n', (letter) => letter.charCodeAt(0));
    expect(read(latin).joins[0]).toMatchObject({ length: '3 m' });
    const text = '\ufeffAder\tVon\tNach\n1\tX1:1\tX2:1\n';
    const wide = new Uint8Array(Uint16Array.from(text, (letter) => letter.charCodeAt(0)).buffer);
    expect(read(wide).taken).toHaveLength(1);
  });

  it('may hold macros, which are told and not looked at', () => {
    const rows = row('Core', 'From', 'To') + row('1', 'X1:1', 'X2:1');
    const bytes = workbook(rows, '', { 'xl/vbaProject.bin': 'x' });
    expect([hasMacros(bytes), hasMacros(workbook(rows)), hasMacros(utf8('a'))]).toEqual([true, false, false]);
    expect(read(bytes).taken).toHaveLength(1);
  });

  it('is refused whole where it has more rows than are read, or no heading, or no row', () => {
    const long = readTable(utf8(`Core,From,To\n${'1,a,b\n'.repeat(60_000)}`));
    expect(long.ok ? [] : long.problems.map(({ code }) => code)).toEqual(['TABLE_TOO_MANY_CELLS']);
    const codes = (text: string): readonly string[] => {
      const list = readJoinList(tabOf(utf8(text)), book);
      return list.ok ? [] : list.problems.map(({ code }) => code);
    };
    expect(codes('a,b\nc,d\n')).toEqual(['JOIN_LIST_NO_HEADER']);
    expect(codes('Core,From,To\n')).toEqual(['JOIN_LIST_NO_ROWS']);
  });
});
