import { describe, expect, it } from 'vitest';
import { assessBook } from '../../floor/index.ts';
import { readTable, type Table, writeCsv, writeXlsx } from '../../table/index.ts';
import { makeCatalogue } from '../../text/index.ts';
import { demo, recorded } from '../testing/demo-proof.ts';
import { settingProblemText } from './problems.text.ts';
import { settingProblems } from './problems.ts';
import { readSettingTable } from './read-setting-table.ts';
import { settingRegister } from './register.ts';
import { type SettingColumn, settingColumns } from './setting-columns.ts';
import { settingTable } from './setting-table.ts';
import { settingWords } from './setting-words.ts';
import { settingsText } from './settings.text.ts';

const { say } = makeCatalogue([settingsText]);
const words = settingWords(demo, say, 'en');
const register = settingRegister(
  demo,
  assessBook(demo),
  recorded([
    {
      kind: 'setting',
      version: 1,
      body: {
        setting: 'dwell +WASH',
        floor: 'OXBOW',
        moment: 'run-off',
        value: '10.2 s',
        by: 'the engineer',
      },
    },
  ]),
);
const table = settingTable(register, words, say);

type Cells = Partial<Record<SettingColumn, string>>;

const rowsOf = ({ lead = [], columns, rows }: Table): string[][] => [
  ...lead.map((line) => [line]),
  columns.map(({ heading }) => heading),
  ...rows.map((row) => row.map(({ text }) => text)),
];

/** The sheet as it goes out, with some cells written by id. */
const filled = (cells: Readonly<Record<string, Cells>>): string[][] =>
  rowsOf(table).map((row) => {
    const own = cells[row.at(-1) ?? ''];
    return own === undefined ? row : row.map((text, i) => own[settingColumns[i]!] ?? text);
  });

const read = (rows: readonly (readonly string[])[], by: string | undefined = 'the crew') =>
  readSettingTable(rows, register, { book: demo, words, say, ...(by === undefined ? {} : { by }) });

const codes = (rows: readonly (readonly string[])[], by?: string) =>
  read(rows, by).notUnderstood.flatMap(({ problems }) => problems.map(({ code }) => code));

describe('the sheet of settings', () => {
  it('locks what a row is and leaves its values open, in a spreadsheet and as text', () => {
    const open = table.rows[0]?.map((cell) => cell.open === true);
    expect(open).toEqual([false, false, false, false, false, true, true, true, true, true, true, false]);
    for (const bytes of [writeXlsx(table), new TextEncoder().encode(writeCsv(table))]) {
      const back = readTable(bytes);
      const found = back.ok ? read(back.value[0]!.rows) : undefined;
      expect(found).toMatchObject({ taken: [], notUnderstood: [], unchanged: 1, missing: [] });
    }
  });

  it('brings each value that is new, with its unit, its floor and who wrote it', () => {
    const { taken } = read(
      filled({
        'dwell +WASH': { shipped: '10.2', 'as left': '9,8 s', why: 'to keep up', by: 'the fitter' },
        'sensor -B21': { 'as left': '31 cm' },
      }),
    );
    expect(taken.map(({ row: _, ...one }) => one)).toEqual([
      {
        setting: 'dwell +WASH',
        floor: 'OXBOW',
        moment: 'shipped',
        value: '10.2 s',
        by: 'the fitter',
        why: 'to keep up',
      },
      {
        setting: 'dwell +WASH',
        floor: 'LARKMOOR',
        moment: 'as left',
        value: '9,8 s',
        by: 'the fitter',
        why: 'to keep up',
      },
      { setting: 'sensor -B21', floor: 'LARKMOOR', moment: 'as left', value: '31 cm', by: 'the crew' },
    ]);
  });

  it('brings nothing where a value was only typed in another unit, or taken out of its cell', () => {
    expect(read(filled({ 'dwell +WASH': { 'run-off': '10200 ms' } })).taken).toEqual([]);
    expect(read(filled({ 'dwell +WASH': { 'run-off': '' } }))).toMatchObject({ taken: [], unchanged: 0 });
  });

  it('takes a row wholly or not at all', () => {
    const { taken, notUnderstood } = read(
      filled({
        'dwell +WASH': { shipped: '10.2 s', 'as left': 'long' },
        'sensor -B21': { 'as left': '31 cm' },
      }),
    );
    expect(taken.map(({ setting }) => setting)).toEqual(['sensor -B21']);
    expect(notUnderstood).toMatchObject([{ setting: 'dwell +WASH', given: '10.2 s, 10.2 s, long' }]);
  });

  it('is read by its ids and headings, however rows and columns were moved', () => {
    const rows = filled({ 'dwell +WASH': { 'as left': '9.8 s' } });
    const [lead, heading, ...rest] = rows;
    const moved = [lead!, heading!, ...rest.toReversed()].map((row) => [...row.slice(5), ...row.slice(0, 5)]);
    expect(read(moved).taken).toMatchObject([{ setting: 'dwell +WASH', value: '9.8 s' }]);
    expect(read(rows.slice(0, 5)).missing.length).toBe(table.rows.length - 3);
  });

  it('tells of a row without an id, an unknown one, one that stands twice, and of labels beside the wrong id', () => {
    const one = { 'dwell +WASH': { 'as left': '9.8 s' } };
    const altered = (to: (row: string[]) => string[][]): string[][] =>
      filled(one).flatMap((row) => (row.at(-1) === 'dwell +WASH' ? to(row) : [row]));
    expect(codes(altered((row) => [row.with(-1, '')]))).toEqual(['SETTING_NO_ID']);
    expect(codes(altered((row) => [row.with(-1, 'dwell +OVEN')]))).toEqual(['SETTING_UNKNOWN']);
    expect(codes(altered((row) => [row, row]))).toEqual(['SETTING_TWICE', 'SETTING_TWICE']);
    expect(codes(altered((row) => [row.with(1, 'drip timer')]))).toEqual(['SETTING_TORN']);
    expect(codes(altered((row) => [row.with(1, 'Verweilzeit')]))).toEqual([]);
    expect(codes([['a', 'b', 'c']])).toEqual(['SETTING_NO_HEADER']);
  });

  it('wants to know who wrote it, from the row or from who brings it', () => {
    const rows = filled({ 'sensor -B21': { 'as left': '31 cm' } });
    expect(codes(rows, '')).toEqual(['SETTING_NO_NAME']);
  });
});

describe('the problems of settings', () => {
  it('have a sentence each, and no sentence is without its problem', () => {
    expect(Object.keys(settingProblemText.en).sort()).toEqual(Object.keys(settingProblems).sort());
  });
});
