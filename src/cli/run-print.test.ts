import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packArchive } from '../archive/index.ts';
import { writtenByOthers } from '../media/testing/written-by-others.ts';
import { readPdf } from '../papers/testing/read-pdf.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';
import { appended, testedBook } from '../record/testing/appended.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import { printedSchema } from './print-document.ts';
import { processWorld } from './process-world.ts';
import { run } from './run.ts';

const root = join(import.meta.dirname, '../..');
const gravity = join(root, 'examples/gravity.json');
const demo = join(root, 'src/book/demo/flagon-line.json');
const own = processWorld({ root, serve: () => Promise.reject(new Error('not asked')) });

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'print-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const call = async (...argv: string[]) => {
  let out = '';
  let err = '';
  const status = await run(['print', ...argv], {
    ...own,
    today: () => '2027-03-08',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { status, out, err };
};

describe('print', () => {
  it('writes the prediction and says where', async () => {
    const file = join(folder, 'a.pdf');
    expect(await call(gravity, '--out', file)).toEqual({ status: 0, out: `${file} was written.\n`, err: '' });
    const pdf = await readPdf(readFileSync(file));
    expect(pdf.text).toContain('Will it run there');
    expect(pdf.text).toContain('2027-03-08');
    expect(pdf.text).toContain('Larkmoor');
  });

  it('tells what was written as JSON, with digests that hold', async () => {
    const file = join(folder, 'b.pdf');
    const { out, status } = await call(gravity, '--out', file, '--page', 'letter', '--json');
    const told = printedSchema.parse(JSON.parse(out));
    const bytes = readFileSync(file);
    expect(status).toBe(0);
    expect(told).toMatchObject({ bytes: bytes.length, page: 'letter', date: '2027-03-08' });
    expect(told.sha256).toBe(toHex(sha256(bytes)));
    expect(told.bookSha256).toBe(toHex(sha256(readFileSync(gravity))));
    expect((await readPdf(bytes)).pages[0]?.width).toBe(612);
  });

  it('prints one floor alone, and the day that was asked for', async () => {
    const file = join(folder, 'c.pdf');
    await call(gravity, '--out', file, '--floor', 'LARKMOOR', '--date', '2026-12-24');
    const { text } = await readPdf(readFileSync(file));
    expect(text).toContain('2026-12-24');
    expect(text).toContain('Larkmoor');
    expect(text).not.toContain('Oxbow, built on');
  });

  it('writes labels of the joins on the stock that was asked for, whatever the page', async () => {
    const file = join(folder, 'l.pdf');
    const { out } = await call(demo, '--paper', 'labels', '--stock', 'wrap-letter', '--out', file, '--json');
    const told = printedSchema.parse(JSON.parse(out));
    expect([told.floors, told.page]).toEqual([[], 'letter']);
    const { pages } = await readPdf(readFileSync(file));
    expect([pages[1]?.width, pages[1]?.text.includes('to X2:14')]).toEqual([612, true]);
  });

  it('writes the connection schedule with photographs out of an archive, and with frames where it has none', async () => {
    const { png } = writtenByOthers;
    const digest = toHex(sha256(png));
    const about = { of: ['+JB2'], by: 'fitter' };
    const media = { sha256: digest, mediaType: 'image/png', bytes: png.length, ...about };
    const points = [{ join: 'J-4', side: 'to', x: 0.5, y: 0.5 }];
    const photographed = appended([], 'phone', { kind: 'media', body: media });
    const records = appended(photographed, 'phone', {
      kind: 'placement',
      body: { picture: digest, box: '+JB2', points, by: 'fitter' },
    });
    const store = await openSqliteStore(join(folder, 'books.sqlite'));
    const first = { book: testedBook, text: readFileSync(demo, 'utf8'), author: 'engineer' };
    await store.createBook({ ...first, at: '2027-03-01T07:00:00Z' });
    await store.putMedia(testedBook, { sha256: digest, mediaType: 'image/png' }, [png]);
    await store.appendRecords(testedBook, records);
    const packed = await packArchive(store, testedBook);
    if (!packed.ok) throw new Error(JSON.stringify(packed.problems));
    const archive = join(folder, 'book.twinfloor.zip');
    await own.writePieces(archive, packed.value.pieces);
    await store.close();

    const file = join(folder, 's.pdf');
    const { err, status } = await call(demo, archive, '--paper', 'schedule', '--out', file);
    expect([status, err]).toEqual([0, '']);
    const { text } = await readPdf(readFileSync(file));
    expect(text).toContain('+JB2 filler terminal box, photograph 1 of 1');
    expect(text.split('H44-CP7')).toHaveLength(3);
    expect(text).not.toContain('No photograph of +JB2');
    await call(demo, '--paper', 'schedule', '--out', file);
    expect((await readPdf(readFileSync(file))).text).toContain('No photograph of +JB2');
    // an archive that was cut is none, and nothing is printed of it
    const cut = join(folder, 'cut.zip');
    writeFileSync(cut, readFileSync(archive).subarray(0, 600));
    expect((await call(demo, cut, '--paper', 'schedule', '--out', file)).status).toBe(2);
  });

  it('writes the preparation of the floor that the line is bound for, a page a trade', async () => {
    const file = join(folder, 'p.pdf');
    const { out } = await call(gravity, '--paper', 'preparation', '--out', file, '--json');
    expect(printedSchema.parse(JSON.parse(out)).floors).toEqual(['LARKMOOR']);
    const { text, bookmarks } = await readPdf(readFileSync(file));
    expect(text).toContain('What to bring to the line at Larkmoor');
    expect(bookmarks).toContain('Electrician, Larkmoor');
  });

  it('writes the protocol of a floor with what was recorded', async () => {
    const file = join(folder, 'protocol.pdf');
    const book = join(root, 'src/book/demo/flagon-line.json');
    const records = join(root, 'examples/records/protocol.records');
    const asked = ['--paper', 'protocol', '--floor', 'OXBOW', '--out', file];
    expect((await call(book, records, ...asked)).status).toBe(0);
    const { text } = await readPdf(readFileSync(file));
    expect(text).toMatch(/Protocol, Oxbow/);
    expect(text).toMatch(/stop button, filler/);
    expect(text.replace(/\s+/g, ' ')).toMatch(/proved · as expected · the engineer/);
  });

  it('gives the same bytes for the same book and day', async () => {
    const files = [join(folder, 'd.pdf'), join(folder, 'e.pdf')] as const;
    for (const file of files) await call(gravity, '--out', file);
    expect(readFileSync(files[0]).equals(readFileSync(files[1]))).toBe(true);
  });

  it.each([
    [['--page', 'a3'], 'The option --page was given a3; it takes a4, letter.'],
    [
      ['--paper', 'poster'],
      'The option --paper was given poster; it takes prediction, preparation, protocol, settings, card, ',
    ],
    [['--floor', 'NOWHERE'], 'The book has no floor NOWHERE. It has: OXBOW, LARKMOOR.'],
    [['--format', 'X'], 'The book has no format X.'],
    [['--date', '2027-02-30'], 'The option --date was given 2027-02-30; it takes a day as 2027-03-08.'],
    [['--out', 'book.json'], 'The option --out was given book.json; it takes a name that ends in .pdf.'],
    [['--out', '/nowhere/at/all/x.pdf'], 'The folder of /nowhere/at/all/x.pdf does not exist.'],
  ])('refuses %s in a sentence and writes nothing', async (argv, sentence) => {
    const before = readdirSync(folder);
    const { status, out, err } = await call(gravity, ...argv);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
    expect(readdirSync(folder)).toEqual(before);
  });

  it('leaves no half-made file where it cannot write', async () => {
    const { status, err } = await call(gravity, '--out', join(folder, 'gone', 'x.pdf'));
    expect([status, err]).toEqual([2, `The folder of ${join(folder, 'gone', 'x.pdf')} does not exist.\n`]);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('has nothing to print where no floor is described', async () => {
    const { status, err } = await call(join(root, 'examples/blank.json'), '--out', join(folder, 'f.pdf'));
    expect([status, err]).toEqual([
      2,
      `${join(root, 'examples/blank.json')} describes no floor yet, so there is nothing to assess.\n`,
    ]);
  });
});
