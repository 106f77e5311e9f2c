import {
  chmodSync,
  copyFileSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { patchBook, readBook, valueAt, writeBook } from '../book/index.ts';
import { refuse } from '../quantity/problem.ts';
import { readTable, writeCsv, writeXlsx } from '../table/index.ts';
import { answersSchema } from './answers-document.ts';
import { problemsSchema } from './problem-document.ts';
import { cliProblem } from './problems.ts';
import { questionsSchema } from './questions-document.ts';
import { called, own, root } from './testing/called.ts';
import type { World } from './world.ts';

const demoPath = join(root, 'src/book/demo/flagon-line.json');

let folder = '';
let book = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'answers-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(() => {
  book = join(folder, 'book.json');
  rmSync(book, { force: true });
  copyFileSync(demoPath, book);
});

const call = (argv: readonly string[], more: Partial<World> = {}) =>
  called(argv, { writeBytes: own.writeBytes, ...more });
const questionsOf = async (...argv: string[]) =>
  questionsSchema.parse(JSON.parse((await call(['questions', book, ...argv, '--json'])).out));
const answersOf = async (...argv: string[]) =>
  answersSchema.parse(JSON.parse((await call(['answers', book, ...argv, '--json'])).out));
const now = () => {
  const read = readBook(readFileSync(book, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

/** The sheet that the tool writes, filled in by id, as it would come back. */
const filledIn = async (
  kind: 'xlsx' | 'csv',
  answers: Readonly<Record<string, readonly string[]>>,
  ...argv: string[]
) => {
  const file = join(folder, `sheet.${kind}`);
  await call(['questions', book, '--out', file, ...argv]);
  const tabs = readTable(readFileSync(file));
  if (!tabs.ok) throw new Error(JSON.stringify(tabs.problems));
  const rows = tabs.value[0]!.rows;
  const at = rows.findIndex((row) => row.some((cell) => /^id$/i.test(cell)));
  const [head, ...body] = rows.slice(at);
  const cells = body.map((row) => {
    const filled = head!.map((_, i) => row[i] ?? '');
    const [answer, unit, by, on] = answers[filled[7]!] ?? [];
    return filled.map((text, i) => [undefined, undefined, answer, unit, by, on][i] ?? text);
  });
  const table = {
    name: 'Questions',
    lead: rows.slice(0, at).map((row) => row.join(' ')),
    columns: head!.map((heading) => ({ heading, width: 10 })),
    rows: cells.map((row) => row.map((text) => ({ text, open: true }))),
  };
  writeFileSync(file, kind === 'csv' ? writeCsv(table) : writeXlsx(table));
  return file;
};

describe('questions', () => {
  it('lists what the floor that the line is bound for is asked, first what settles most, by who can answer', async () => {
    const { status, out, err } = await call(['questions', book]);
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^Larkmoor: \d+ questions/);
    expect(out.indexOf('For the site')).toBeLessThan(out.indexOf('For the builder of the line'));
    expect(out).toContain('Air, quality: Purity class that arrives');
    expect(out).not.toMatch(/undefined|NaN|\[object|\bquestions?\.[a-z]|\bfield\./);
    const { questions } = await questionsOf();
    const settles = questions.map((one) => one.settles);
    expect(settles).toEqual(settles.toSorted((a, b) => b - a));
    expect((await questionsOf('--who', 'builder')).questions.every(({ who }) => who === 'builder')).toBe(
      true,
    );
    expect((await questionsOf('--floor', 'OXBOW')).name).toBe('Oxbow');
  });

  it.each(['xlsx', 'csv'])(
    'writes a sheet for the site as %s that is read again without a loss',
    async (kind) => {
      const file = join(folder, `out.${kind}`);
      const { written, questions } = await questionsOf('--out', file);
      const asked = questions.filter(({ who, takes }) => who === 'site' && takes !== 'part');
      expect(written).toEqual({ path: file, bytes: readFileSync(file).length, questions: asked.length });
      const read = await answersOf(file);
      expect(read.empty.map(({ path }) => path)).toEqual(asked.map(({ path }) => path));
      expect([read.taken, read.notUnderstood, read.missing, read.written]).toEqual([[], [], [], false]);
    },
  );

  it('goes out in a language and is read back in it, choices and all', async () => {
    const { questions } = await questionsOf('--who', 'builder');
    const load = questions.find(({ path }) => path.endsWith('/load'))!.path;
    const file = await filledIn(
      'csv',
      { [load]: ['quadratisches Drehmoment'] },
      '--language',
      'de',
      '--who',
      'builder',
    );
    const text = readFileSync(file, 'utf8');
    expect(text).toContain('Frage,Antwort,Einheit');
    const read = await answersOf(file);
    expect(read.notUnderstood).toEqual([]);
    expect(read.taken.map(({ path, value }) => [path, value])).toEqual([[load, 'square torque']]);
  });

  it.each([
    [
      ['--out', 'book.json'],
      'The option --out was given book.json; it takes a name that ends in .xlsx or .csv.',
    ],
    [['--out', '/nowhere/at/all/q.xlsx'], 'The folder of /nowhere/at/all/q.xlsx does not exist.'],
    [['--who', 'anybody'], 'The option --who was given anybody; it takes site, builder.'],
    [['--floor', 'MOON'], 'The book has no floor MOON.'],
  ])('answers %j in a sentence and writes nothing', async (argv, sentence) => {
    const before = readdirSync(folder);
    const { status, out, err } = await call(['questions', book, ...argv]);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
    expect(readdirSync(folder)).toEqual(before);
  });
});

describe('answers', () => {
  const good = {
    '/floors/1/air/quality': ['ISO 8573-1 [1:4:1]', '', 'Larkmoor maintenance', '2027-03-02'],
    '/floors/1/power/readings/0/between/0': ['208', 'V'],
    '/floors/1/power/readings/0/between/1': ['207', 'V'],
    '/floors/1/power/readings/0/between/2': ['209 V', ''],
  } as const;

  it.each(['xlsx', 'csv'] as const)(
    'takes what it understood out of the %s, and writes it only when it is asked to',
    async (kind) => {
      const sheet = await filledIn(kind, good);
      const before = readFileSync(book, 'utf8');
      const told = await call(['answers', book, sheet]);
      expect([told.status, told.err]).toEqual([0, '']);
      expect(told.out).toContain('4 answers were taken');
      expect(told.out).toContain('The book was not changed.');
      expect(readFileSync(book, 'utf8')).toBe(before);
      const read = await answersOf(sheet, '--write');
      expect(read.written).toBe(true);
      expect(read.taken.map(({ path }) => path).toSorted()).toEqual(Object.keys(good).toSorted());
      expect(valueAt(now(), '/floors/1/air/quality')).toBe('ISO 8573-1 [1:4:1]');
      expect(valueAt(now(), '/floors/1/power/readings/0/between')).toEqual(['208 V', '207 V', '209 V']);
      // what was asked and is answered is asked no more
      const left = (await questionsOf()).questions.map(({ path }) => path);
      for (const path of Object.keys(good)) expect(left).not.toContain(path);
      const whole = readBook(before);
      if (!whole.ok) throw new Error('the demo book does not read');
      const patched = patchBook(whole.value, read.patch);
      expect(patched.ok && writeBook(patched.value)).toBe(readFileSync(book, 'utf8'));
    },
  );

  it('tells each row that it did not understand and why, and takes nothing of it', async () => {
    const sheet = await filledIn('csv', {
      '/floors/1/air/quality': ['ISO 8573-1 [1:4:1]'],
      '/floors/1/air/compressor/freeAir': ['1,500', 'ft³/min'],
      '/floors/1/air/compressor/cutOut': ['9', 'bananas'],
      '/floors/1/water/hardness': ['-400', 'mg/L CaCO₃'],
    });
    const { status, out } = await call(['answers', book, sheet, '--write']);
    expect(status).toBe(2);
    expect(out).toContain('1 answer was taken');
    expect(out).toContain('3 rows were not understood and change nothing');
    expect(out).toMatch(/row \d+: Larkmoor, air, compressor, free air: "1,500 ft³\/min"/);
    expect(out).not.toMatch(/undefined|\{\w+\}|ANSWER_|QUANTITY_/);
    const book0 = readBook(readFileSync(demoPath, 'utf8'));
    if (!book0.ok) throw new Error('the demo book does not read');
    for (const path of ['/floors/1/air/compressor/freeAir', '/floors/1/air/compressor/cutOut']) {
      expect(valueAt(now(), path)).toEqual(valueAt(book0.value, path));
    }
    expect(valueAt(now(), '/floors/1/air/quality')).toBe('ISO 8573-1 [1:4:1]');
  });

  it('refuses to write where nothing was taken, and says so beside the rows', async () => {
    const sheet = await filledIn('csv', { '/floors/1/air/compressor/freeAir': ['long'] });
    const before = readFileSync(book);
    const { status, out, err } = await call(['answers', book, sheet, '--write']);
    expect(status).toBe(2);
    expect(out).toContain('1 row was not understood and changes nothing');
    expect(err).toBe(`Nothing was taken from the sheet, so ${book} was not changed.\n`);
    expect(readFileSync(book).equals(before)).toBe(true);
    const { problems } = problemsSchema.parse(
      JSON.parse((await call(['answers', book, sheet, '--write', '--json'])).out),
    );
    expect(problems.map(({ code }) => code)).toEqual(['CLI_NOTHING_TAKEN']);
  });

  it('keeps the former book where the disk fails', async () => {
    const sheet = await filledIn('csv', good);
    const before = readFileSync(book);
    const full: World['writeBytes'] = async (path) =>
      refuse(cliProblem('CLI_FILE_NOT_WRITTEN', path, { given: 'ENOSPC' }));
    const { status, err } = await call(['answers', book, sheet, '--write'], { writeBytes: full });
    expect([status, err]).toEqual([2, `${book} could not be written: ENOSPC.\n`]);
    expect(readFileSync(book).equals(before)).toBe(true);
  });

  it('writes through a link, keeps the rights of the file, and leaves no half-made one behind', async () => {
    const sheet = await filledIn('csv', good);
    const link = join(folder, 'link.json');
    symlinkSync(book, link);
    chmodSync(book, 0o640);
    expect((await call(['answers', link, sheet, '--write'])).status).toBe(0);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(statSync(book).mode & 0o777).toBe(0o640);
    expect(valueAt(now(), '/floors/1/air/quality')).toBe('ISO 8573-1 [1:4:1]');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it.each([
    ['text that is no sheet', 'one,two\n3,4\n', 'This is no question sheet'],
    ['nothing', '', 'This is no question sheet'],
    ['an older spreadsheet', Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 1), 'an older binary spreadsheet'],
    ['a broken archive', Uint8Array.of(0x50, 0x4b, 3, 4, 9, 9), 'damaged or was not sent whole'],
  ])('answers %s in a sentence', async (name, content, sentence) => {
    const sheet = join(folder, 'other.xlsx');
    writeFileSync(sheet, content);
    const { status, out, err } = await call(['answers', book, sheet, '--write']);
    expect([name, status, out]).toEqual([name, 2, '']);
    expect(err).toContain(sentence);
    expect(err).toContain(sheet);
  });

  it('answers a call that cannot be in a sentence', async () => {
    const both = await call(['answers', '-', '-']);
    expect([both.status, both.err]).toEqual([
      2,
      'Standard input can be read once only: give the book or the sheet as a file.\n',
    ]);
    const nowhere = await call(['answers', '-', 'x.csv', '--write']);
    expect(nowhere.err).toContain('no file to be written into');
    expect((await call(['answers', book, join(folder, 'gone.csv')])).err).toContain('There is no file');
    expect((await call(['answers', book])).err).toContain('answers wants BOOK.json FILE');
  });

  it('of any bytes and any cells at all never fails by a mistake of its own, and never breaks the book', async () => {
    const ids = ['/floors/1/air/quality', '/floors/1', '/twinfloor', '/__proto__/x', '/line/-', '', '=1+1'];
    const cells = fc.array(
      fc.tuple(fc.string({ maxLength: 12 }), fc.string({ maxLength: 8 }), fc.constantFrom(...ids)),
      { maxLength: 6 },
    );
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.uint8Array({ maxLength: 100 }), cells), async (content) => {
        const sheet = join(folder, 'any.csv');
        const text = (rows: readonly (readonly [string, string, string])[]) =>
          [
            'Question,Answer,Unit,id',
            ...rows.map((row) => `,${row.map((c) => JSON.stringify(c)).join(',')}`),
          ].join('\n');
        writeFileSync(sheet, content instanceof Uint8Array ? content : text(content));
        const { err } = await call(['answers', book, sheet, '--write']);
        expect(err).not.toContain('mistake of its own');
        expect(now().floors?.length).toBe(2);
      }),
      { numRuns: 25, seed: 9 },
    );
  });
});
