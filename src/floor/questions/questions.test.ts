import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Book, patchBook, readBook, valueAt } from '../../book/index.ts';
import { readTable, type Table, writeCsv, writeXlsx } from '../../table/index.ts';
import { makeCatalogue } from '../../text/index.ts';
import {
  type AnswersRead,
  answerProblems,
  answerProblemText,
  type FloorQuestion,
  questionSheetWords,
  questionTab,
  questionTable,
  readAnswers,
} from './index.ts';

/** The demonstration with next to nothing known of its second floor. */
const demo = (() => {
  const read = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
  if (!read.ok) throw new Error('the demo book does not read');
  const bare = patchBook(read.value, [
    { path: '/floors/1/air', op: 'remove' },
    { path: '/floors/1/water', op: 'remove' },
    { path: '/floors/1/power', value: { voltage: '208 V' } },
  ]);
  if (!bare.ok) throw new Error(JSON.stringify(bare.problems));
  return bare.value;
})();
const words = makeCatalogue([questionSheetWords, { en: { 'word.TT': 'TT (own earth)' } }]);

const questions: readonly FloorQuestion[] = [
  {
    path: '/floors/1/power/feeder/length',
    kind: 'length',
    text: 'How long is the feeder, one way?',
    settles: 3,
  },
  { path: '/floors/1/power/feeder/size', text: 'What size is its conductor?', settles: 2 },
  { path: '/floors/1/power/earthing', choices: ['TN-S', 'TT', 'IT'], text: 'How is it earthed?', settles: 2 },
  {
    path: '/floors/1/air/regulator/set',
    kind: 'gaugePressure',
    text: 'At what is the regulator set?',
    unit: 'bar(g)',
    settles: 5,
  },
  { path: '/floors/1/air/compressor/count', text: 'How many compressors run?', settles: 1 },
  { path: '/floors/1/air/compressor/oilFree', text: 'Do they compress without oil?', settles: 1 },
  { path: '/floors/1/air/intake/relativeHumidity', kind: 'relativeHumidity', text: 'How humid?', settles: 1 },
  { path: '/floors/1/water/acidity', text: 'What is the pH of the water?', settles: 0 },
  { path: '/floors/1/air/compressor/cutIn', kind: 'gaugePressure', text: 'When does it load?', settles: 1 },
  {
    path: '/floors/1/air/compressor/cutOut',
    kind: 'gaugePressure',
    text: 'When does it unload?',
    settles: 1,
  },
];

type Cells = Partial<Record<'question' | 'answer' | 'unit' | 'by' | 'on' | 'remark' | 'id', string>>;
const places = { question: 1, answer: 2, unit: 3, by: 4, on: 5, remark: 6, id: 7 } as const;

const rowsOf = (table: Table): string[][] => [
  ...(table.lead ?? []).map((line) => [line]),
  table.columns.map(({ heading }) => heading),
  ...table.rows.map((row) => row.map(({ text }) => text)),
];

/** The sheet as it goes out, with some cells written by path. */
const filled = (answers: Readonly<Record<string, Cells>>): string[][] =>
  rowsOf(questionTable(questions, words)).map((row) => {
    const cells = answers[row[7] ?? ''];
    const out = [...row];
    for (const [column, text] of Object.entries(cells ?? {})) out[places[column as keyof Cells]] = text;
    return out;
  });

const read = (rows: readonly (readonly string[])[], book: Book = demo): AnswersRead =>
  readAnswers(rows, book, { words, questions });

const codes = (answers: AnswersRead): readonly string[] =>
  answers.notUnderstood.flatMap(({ problems }) => problems.map(({ code }) => code));

/** The book after everything that was taken was put in. */
const changed = (answers: AnswersRead): Book => {
  const book = patchBook(demo, answers.patch);
  if (!book.ok) throw new Error(JSON.stringify(book.problems));
  return book.value;
};

const standing = (answers: AnswersRead, path: string): unknown => valueAt(changed(answers), path);

const length = '/floors/1/power/feeder/length';
const set = '/floors/1/air/regulator/set';
const one = (path: string, cells: Cells): AnswersRead => read(filled({ [path]: cells }));

describe('a question sheet', () => {
  const table = questionTable(questions, words);
  it('puts first what settles most, locks labels and ids, and opens the rest', () => {
    expect(table.rows[0]?.map(({ text }) => text)).toEqual([
      '1',
      'At what is the regulator set?',
      '',
      'bar(g)',
      '',
      '',
      '',
      set,
    ]);
    expect(table.rows[0]?.map(({ open }) => open === true)).toEqual([
      false,
      false,
      true,
      true,
      true,
      true,
      true,
      false,
    ]);
    expect(table.columns.at(-1)?.hidden).toBe(true);
  });
  it('offers units of the kind, choices in words, and yes or no', () => {
    const of = (path: string) => table.rows.find((row) => row[7]?.text === path);
    expect(of(set)?.[3]?.choices).toContain('psig');
    expect(of('/floors/1/power/earthing')?.[2]?.choices).toEqual(['TN-S', 'TT (own earth)', 'IT']);
    expect(of('/floors/1/air/compressor/oilFree')?.[2]?.choices).toEqual(['yes', 'no']);
    expect(of('/floors/1/power/feeder/size')?.[3]?.open).toBeUndefined();
  });
});

describe('an answer', () => {
  it('stands in the book as it was typed, with the unit of its cell', () => {
    const answers = one(set, { answer: '80', unit: 'psi' });
    expect(answers.patch).toEqual([{ path: set, value: '80 psi' }]);
    expect(answers.taken).toEqual([{ row: 4, path: set, value: '80 psi', notes: [] }]);
    expect(standing(answers, set)).toBe('80 psi');
  });
  it('carries who said it and when, where they were given', () => {
    const said = { answer: '12,5', unit: 'm', by: 'site electrician', on: '2027-03-08', remark: 'by tape' };
    const answers = one(length, said);
    expect(standing(answers, length)).toEqual({
      value: '12,5 m',
      standing: 'stated',
      by: 'site electrician',
      on: '2027-03-08',
    });
    expect(answers.taken[0]?.remark).toBe('by tape');
  });
  it('keeps its own unit where the cell was left as it was or says the same', () => {
    expect(standing(one(set, { answer: '80 psi' }), set)).toBe('80 psi');
    expect(standing(one(set, { answer: '80 psi', unit: 'psig' }), set)).toBe('80 psi');
    expect(standing(one(set, { answer: '5 to 6 bar' }), set)).toBe('5 to 6 bar');
    expect(standing(one(set, { answer: '5.5 ± 0.2' }), set)).toBe('5.5 ± 0.2 bar(g)');
  });
  it('is questioned where its unit and the one that was chosen differ', () => {
    expect(codes(one(set, { answer: '80 psi', unit: 'kPa(g)' }))).toEqual(['ANSWER_TWO_UNITS']);
    expect(codes(one(set, { answer: '80 psi', unit: 'parsnips' }))).toEqual(['ANSWER_TWO_UNITS']);
  });
  it.each([
    [length, { answer: '1,234' }, 'QUANTITY_AMBIGUOUS_NUMBER'],
    [length, { answer: '12', unit: '' }, 'QUANTITY_UNIT_MISSING'],
    [length, { answer: '12', unit: 'kg' }, 'QUANTITY_WRONG_KIND'],
    [length, { answer: 'about so' }, 'QUANTITY_UNREADABLE'],
    [length, { answer: '12', on: '8.3.2027' }, 'ANSWER_DAY'],
    [length, { answer: '12', on: '2027-02-30' }, 'ANSWER_DAY'],
    [length, { answer: '-5' }, 'BOOK_OUT_OF_RANGE'],
    ['/floors/1/air/compressor/count', { answer: '2.5' }, 'BOOK_WRONG_TYPE'],
    ['/floors/1/air/compressor/count', { answer: 'two' }, 'ANSWER_NOT_A_NUMBER'],
    ['/floors/1/air/compressor/count', { answer: '1,234' }, 'QUANTITY_AMBIGUOUS_NUMBER'],
    ['/floors/1/air/compressor/count', { answer: '2', unit: 'kg' }, 'ANSWER_UNIT_NOT_ASKED'],
    ['/floors/1/water/acidity', { answer: '15' }, 'BOOK_OUT_OF_RANGE'],
    ['/floors/1/power/earthing', { answer: 'with a spade' }, 'ANSWER_NOT_A_CHOICE'],
    ['/floors/1/air/compressor/oilFree', { answer: 'perhaps' }, 'ANSWER_NOT_A_CHOICE'],
    ['/floors/1/air/intake/relativeHumidity', { answer: '140' }, 'BOOK_OUT_OF_RANGE'],
  ])('at %s of %o is refused as %s, and nothing of it is taken', (path, cells, code) => {
    const answers = one(path, cells);
    expect(codes(answers)).toEqual([code]);
    expect(answers.patch).toEqual([]);
    expect(answers.taken).toEqual([]);
  });
  it('says every problem of its row at once', () => {
    expect(codes(one(length, { answer: 'far', on: 'today' }))).toEqual(['QUANTITY_UNREADABLE', 'ANSWER_DAY']);
  });
  it.each([
    ['/floors/1/power/earthing', { answer: 'tt (OWN earth)' }, 'TT'],
    ['/floors/1/power/earthing', { answer: 'IT' }, 'IT'],
    ['/floors/1/air/compressor/oilFree', { answer: 'TRUE' }, true],
    ['/floors/1/air/compressor/oilFree', { answer: 'No' }, false],
    ['/floors/1/air/compressor/count', { answer: '2' }, 2],
    ['/floors/1/water/acidity', { answer: '7,4' }, 7.4],
    ['/floors/1/power/feeder/size', { answer: '16 mm2', by: 'site electrician' }, '16 mm2'],
    ['/floors/1/air/intake/relativeHumidity', { answer: '60' }, '60 %'],
  ])('at %s of %o is taken as %s', (path, cells, value) => {
    expect(standing(one(path, cells), path)).toBe(value);
  });
  it('that nobody knows is empty, with what was said about it', () => {
    const rows = filled({
      [length]: { answer: ' Unknown ', remark: 'ask the landlord' },
      [set]: { remark: 'later' },
    });
    const answers = read(rows);
    expect(answers.patch).toEqual([]);
    expect(answers.empty).toHaveLength(questions.length);
    expect(answers.empty.find(({ path }) => path === length)).toMatchObject({
      given: 'Unknown',
      remark: 'ask the landlord',
    });
  });
  it('shows what stands in the book now, where something does', () => {
    const path = '/floors/1/power/voltage';
    const answers = read([...filled({}), ['', 'Voltage?', '210', 'V', '', '', '', path]]);
    expect(answers.taken[0]).toMatchObject({ path, value: '210 V', before: '208 V', notes: ['notAsked'] });
  });
});

describe('what the book refuses', () => {
  const inside = '/floors/1/air/compressor/cutIn';
  const outside = '/floors/1/air/compressor/cutOut';
  it('is refused at its row, and the other rows are taken', () => {
    const rows = filled({
      [inside]: { answer: '8' },
      [outside]: { answer: '7' },
      [length]: { answer: '40' },
    });
    const answers = read(rows);
    expect(codes(answers)).toEqual(['BOOK_NOT_LESS']);
    expect(standing(answers, length)).toBe('40 m');
  });
  it('may be taken together where one answer leans on another', () => {
    const rows = filled({ [inside]: { answer: '8' }, [outside]: { answer: '9' } });
    const first = patchBook(demo, [{ path: outside, value: '7 bar' }]);
    const answers = read(rows, first.ok ? first.value : demo);
    expect(answers.patch).toHaveLength(2);
  });
  it('is found where it breaks another place', () => {
    const tag = ['', 'Tag?', 'X-9', '', '', '', '', '/line/lanes/0/tag'];
    const answers = read([...filled({ [length]: { answer: '40' } }), tag]);
    const refused = answers.notUnderstood.map(({ path }) => path);
    expect(refused).toEqual(['/line/lanes/0/tag']);
    expect(standing(answers, length)).toBe('40 m');
  });
  it('in a part that would lack what it must have is refused with it', () => {
    const drop = ['', 'Pressure?', '6', 'bar', '', '', '', '/floors/1/air/drops/0/pressure'];
    const answers = read([...filled({ [length]: { answer: '40' } }), drop]);
    expect(codes(answers)).toEqual(['BOOK_MISSING']);
    expect(answers.taken.map(({ path }) => path)).toEqual([length]);
  });
});

describe('a sheet that was changed on its way', () => {
  const sheet = filled({ [length]: { answer: '40' }, [set]: { answer: '6' } });
  const [lead, second, headings, ...body] = sheet as [string[], string[], string[], ...string[][]];
  const values = (answers: AnswersRead): unknown =>
    Object.fromEntries(answers.taken.map(({ path, value }) => [path, value]));
  const both = { [length]: '40 m', [set]: '6 bar(g)' };

  it('is read by its ids when rows were sorted, the lead was cut, or rows stand between', () => {
    expect(values(read([lead, second, headings, ...body.toReversed()]))).toEqual(both);
    expect(values(read([headings, ...body]))).toEqual(both);
    const spaced = [[], headings, [], ...body.flatMap((row) => [row, []])];
    const answers = read(spaced);
    expect(values(answers)).toEqual(both);
    expect(answers.taken[0]?.row).toBe(4);
  });
  it('is read when columns were moved, a heading changed, or the headings cut', () => {
    const move = (row: readonly string[]): string[] => [
      row[7] ?? '',
      row[3] ?? '',
      row[2] ?? '',
      'x',
      row[1] ?? '',
    ];
    expect(values(read([headings, ...body].map(move)))).toEqual(both);
    expect(values(read([headings.with(2, 'Your answer'), ...body]))).toEqual(both);
    expect(values(read(body))).toEqual(both);
  });
  it('names the questions whose rows are gone', () => {
    expect(read([headings, ...body.filter((row) => row[7] !== set)]).missing).toEqual([set]);
  });
  it('takes a changed wording and says so, and refuses one that belongs to another id', () => {
    const reworded = read(filled({ [length]: { answer: '40', question: 'Länge der Zuleitung?' } }));
    expect(reworded.taken[0]?.notes).toEqual(['labelChanged']);
    const torn = read(filled({ [length]: { answer: '40', question: 'At what is the regulator set?' } }));
    expect(codes(torn)).toEqual(['ANSWER_TORN']);
  });
  it('refuses a row without an id, with one that leads nowhere, and one that is answered twice', () => {
    const extra = (answer: string, id: string): string[] => ['', '', answer, '', '', '', '', id];
    for (const id of ['', '/floors/1/nothing', '/floors/1/power', '/__proto__/x', 'total', '/twinfloor']) {
      const answers = read([...sheet, extra('5', id)]);
      expect(codes(answers), id).toEqual([id === '' ? 'ANSWER_NO_ID' : 'ANSWER_ID_UNKNOWN']);
      expect(values(answers), id).toEqual(both);
    }
    const twice = read([...sheet, extra('41 m', length)]);
    expect(codes(twice)).toEqual(['ANSWER_TWICE', 'ANSWER_TWICE']);
    expect(values(twice)).toEqual({ [set]: '6 bar(g)' });
  });
  it('is refused row by row where it is another sheet', () => {
    const answers = read([['a', 'b'], ['c']]);
    expect(codes(answers)).toEqual(['ANSWER_NO_HEADER', 'ANSWER_NO_HEADER']);
  });
});

const anyAnswers = fc
  .record({
    length: fc.integer({ min: 0, max: 999 }),
    decimals: fc.constantFrom('', '.5', ',25'),
    unit: fc.constantFrom('m', 'ft', 'mm', 'in'),
    size: fc.constantFrom('=16 mm2', '-2 AWG', '500 kcmil; two', '"16"', "'16", '@site', 'a\nb', '007'),
    earthing: fc.constantFrom('TN-S', 'TT', 'IT'),
    count: fc.integer({ min: 1, max: 9 }),
    oilFree: fc.boolean(),
    by: fc.constantFrom('', 'site electrician', '+1 shift', 'Ünal; yard'),
    on: fc.constantFrom('', '2027-03-08', '2028-02-29'),
  })
  .map((each) => ({
    cells: {
      [length]: { answer: `${each.length}${each.decimals}`, unit: each.unit, by: each.by, on: each.on },
      '/floors/1/power/feeder/size': { answer: each.size },
      '/floors/1/power/earthing': { answer: each.earthing },
      '/floors/1/air/compressor/count': { answer: String(each.count) },
      '/floors/1/air/compressor/oilFree': { answer: each.oilFree ? 'yes' : 'no' },
    } satisfies Readonly<Record<string, Cells>>,
    due: {
      [length]: `${each.length}${each.decimals} ${each.unit}`,
      '/floors/1/power/feeder/size': each.size,
      '/floors/1/power/earthing': each.earthing,
      '/floors/1/air/compressor/count': each.count,
      '/floors/1/air/compressor/oilFree': each.oilFree,
    } as Readonly<Record<string, unknown>>,
    by: each.by,
    on: each.on,
  }));

describe('every sheet', () => {
  it('that is written, filled in and read gives every answer back, as a spreadsheet and as text', () => {
    fc.assert(
      fc.property(anyAnswers, fc.constantFrom('xlsx', ',', ';', '\t'), ({ cells, due, by, on }, form) => {
        const table = questionTable(questions, words);
        const rows = table.rows.map((row) =>
          row.map((cell, at) => {
            const given = (cells as Readonly<Record<string, Cells>>)[row[7]?.text ?? ''];
            const column = Object.entries(places).find(([, place]) => place === at)?.[0] as
              | keyof Cells
              | undefined;
            const text = column === undefined ? undefined : given?.[column];
            return text === undefined ? cell : { ...cell, text };
          }),
        );
        const answered = { ...table, rows };
        const bytes =
          form === 'xlsx'
            ? writeXlsx(answered)
            : new TextEncoder().encode(writeCsv(answered, form as ',' | ';' | '\t'));
        const tabs = readTable(bytes);
        if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
        const answers = read(questionTab(tabs.value, words).rows);
        expect(answers.notUnderstood).toEqual([]);
        expect(answers.missing).toEqual([]);
        const book = changed(answers);
        for (const [path, value] of Object.entries(due)) {
          const said = path === length && (by !== '' || on !== '');
          const more = { standing: 'stated', ...(by === '' ? {} : { by }), ...(on === '' ? {} : { on }) };
          expect(valueAt(book, path), path).toEqual(said ? { value, ...more } : value);
        }
      }),
      { numRuns: 80 },
    );
  });
  const ids = [
    '/',
    '/-/x',
    '/floors/9/name',
    '/floors/-/name',
    '/floors/1/tag',
    '/line',
    '~2',
    '/floors/1/power/phases',
    '/floors/1/air/filters/0/name',
    '/floors/1/air/drops/-/pressure',
    '/line/lanes/0/tag',
  ];
  const anyText = fc.oneof(
    fc.string({ maxLength: 12 }),
    fc.constantFrom(
      '',
      '80',
      '80 psi',
      '1,234',
      'TT',
      'yes',
      'id',
      'Answer',
      'Question',
      '2027-03-08',
      'bar',
    ),
    fc.constantFrom(...questions.map(({ path }) => path), ...questions.map(({ text }) => text)),
  );
  it('with any junk in it never throws, accounts for every row, and gives a change that the book takes', () => {
    const anyId = fc.oneof(anyText, fc.constantFrom(...ids));
    const likely = fc.tuple(anyText, anyText, anyText, anyText, anyText, anyText, anyText, anyId);
    const junk = fc.array(fc.oneof(fc.array(anyText, { maxLength: 9 }), likely), { maxLength: 10 });
    fc.assert(
      fc.property(junk, fc.boolean(), fc.boolean(), (rows, headed, asks) => {
        const [, , headings = []] = filled({});
        const all = headed ? [headings, ...rows] : rows;
        const answers = readAnswers(all, demo, { words, ...(asks ? { questions } : {}) });
        const listed = [...answers.taken, ...answers.notUnderstood, ...answers.empty].map(({ row }) => row);
        expect(new Set(listed).size).toBe(listed.length);
        if (headed) expect(listed.sort((a, b) => a - b)).toEqual(rows.map((_, at) => at + 2));
        else expect(listed.length).toBeLessThanOrEqual(rows.length);
        expect(patchBook(demo, answers.patch).ok).toBe(true);
        expect(answers.patch.map(({ path }) => path).sort()).toEqual(
          answers.taken.map(({ path }) => path).sort(),
        );
        for (const { problems } of answers.notUnderstood) expect(problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 200 },
    );
  });
});

describe('the listed problems', () => {
  it('have a sentence each that names what they carry', () => {
    expect(Object.keys(answerProblemText.en).sort()).toEqual(Object.keys(answerProblems).sort());
    for (const [code, needs] of Object.entries(answerProblems)) {
      const text = answerProblemText.en[code as keyof typeof answerProblems];
      const named = [...text.matchAll(/\{(\w+)\}/g)].map((each) => each[1]);
      expect(named.sort(), code).toEqual([...needs].sort());
    }
  });
});

describe('an answer that says what a thing is', () => {
  it('may be any of the kinds that there are, not the first alone', () => {
    const nothing = patchBook(demo, [{ path: '/floors/1/supply/source', op: 'remove' }]);
    if (!nothing.ok) throw new Error('the supply could not be taken away');
    const asked: FloorQuestion = {
      path: '/floors/1/supply/source/kind',
      choices: ['main', 'gravity', 'pumped', 'reading'],
      text: 'Where does the liquid come from?',
      settles: 7,
    };
    const rows = rowsOf(questionTable([asked], words));
    rows.at(-1)![places.answer] = 'gravity';
    const read = readAnswers(rows, nothing.value, { words, questions: [asked] });
    expect(read.notUnderstood).toEqual([]);
    expect(read.patch).toEqual([{ path: asked.path, value: 'gravity' }]);
  });
});
