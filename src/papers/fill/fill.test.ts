import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { recorded, type Said } from '../../proof/testing/demo-proof.ts';
import type { Envelope } from '../../record/envelope.ts';
import { importRecords } from '../../record/record-file.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import type { PageSize } from '../paper-head.ts';
import { printPaper } from '../print-paper.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { fontsOf, outside, type ReadPdf, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const file = importRecords(readFileSync('examples/records/fill.records', 'utf8'));
if (!file.ok) throw new Error(JSON.stringify(file.problems));
const { records, heads } = file.value;
const noKeys =
  /\b(?:filled|fill|workings|protocol|paper|setting|LOT)[._][a-zA-Z]|\{[a-z]+\}|undefined|NaN|\[object/;
const flat = (text: string): string => text.replace(/\s+/g, ' ');

interface Asked {
  readonly book?: Book;
  readonly records?: readonly Envelope[];
  readonly floor?: string;
  readonly page?: PageSize;
  readonly units?: 'us' | 'metric';
}

const print = ({
  book = demo,
  records: told = records,
  floor = 'LARKMOOR',
  page = 'a4',
  units,
}: Asked = {}) =>
  printPaper({ paper: 'fill', book, records: told, heads, floor, units }, { date, hash, page }, typesetter)
    .bytes;

const withRule = (rule: NonNullable<NonNullable<Book['agreement']>['contents']>['rule']): Book => ({
  ...demo,
  agreement: { ...demo.agreement, contents: { ...(rule === undefined ? {} : { rule }) } },
});

/** Contents by weighing in air of 1.2 kg/m3 against weights of 8000 kg/m3: OIML R 111-1:2004, 10.2.1 and D 28 (memory). */
const litres = (net: number, density: number): number => (1000 * net * (1 - 1.2 / 8000)) / (density - 1.2);

describe('the fill certificate', () => {
  let bytes: ReturnType<typeof print>;
  let pdf: ReadPdf;
  let text: string;
  beforeAll(async () => {
    bytes = print();
    pdf = await readPdf(bytes);
    text = flat(pdf.text);
  }, 30_000);

  it('has every trial as it was typed, with what the bottle holds by its weighing', () => {
    // water at 12 degC: 999.498 kg/m3, CRC Handbook of Chemistry and Physics, density of water (memory)
    const contents = litres(2.471 - 0.959, 999.498);
    expect(text).toContain(`1 A1 -Y11 602 10.89 s 2.471 kg 0.959 kg ${contents.toFixed(3)} L none`);
    expect(text).toContain('Oxbow, 32 bottles');
    expect(text.match(/ kg 0\.9\d\d kg 1\.\d+ L none/g)).toHaveLength(32);
  });

  it('says of each lane which count stands there, since when, and how many bottles it leaves short', () => {
    for (const [lane, count] of [
      ['-Y11', 803],
      ['-Y12', 790],
      ['-Y13', 807],
      ['-Y14', 792],
    ]) {
      expect(text).toMatch(
        new RegExp(`${lane} ${count} as left 2\\.0\\d+ L 2\\.0\\d+ … 2\\.0\\d+ .*? (?:under )?0\\.\\d+ %`),
      );
    }
    expect(text).toContain('by the bottles that were measured');
  });

  it('names a working for every interval, and has it in its appendix with formula and source', () => {
    const [, appendix = ''] = pdf.text.split('Each figure with what went into it');
    const named = new Set([...pdf.text.matchAll(/\bw(\d+)\b/g)].map(([, number]) => Number(number)));
    const listed = new Set([...appendix.matchAll(/^w(\d+) \p{L}/gmu)].map(([, number]) => Number(number)));
    expect(listed.size).toBe(12);
    // 12 and 3 stand in the sentences that say what a mark is
    expect([...named].filter((number) => !listed.has(number) && number !== 12 && number !== 3)).toEqual([]);
    expect(flat(appendix)).toContain('contents/combined-uncertainty, version 1');
    expect(flat(appendix)).toContain('JCGM 100');
  });

  it('says what the trials foretold of the other floor, what was allowed for, and that no real move stands behind it', () => {
    expect(text).toContain('What Oxbow foretold of Larkmoor');
    expect(text).toContain('after-run with the air of the valves:');
    expect(text).toContain('No real move has been scored yet');
    expect(text).toMatch(/rate \d{3,4} bottles\/h/);
  });

  it('is signed by hand for both sides, and calls nothing safe', () => {
    expect(text).toContain('for the builder');
    expect(text).toContain('for the site');
    expect(text.replaceAll('safety/', '')).not.toMatch(/\bsafe(?:ly|ty)?\b/i);
    expect(text).not.toMatch(noKeys);
    expect(pdf.tagged).toBe(true);
  });

  it.each([
    ['a4', 'metric'],
    ['letter', 'us'],
  ] as const)('stays within %s in %s units, with its fonts', async (page, units) => {
    const printed = print({ page, units });
    const { described, within } = fontsOf(printed);
    expect(within).toBe(described);
    expect(outside(await readPdf(printed))).toEqual([]);
  });

  it('is the same to the byte when it is made again', () => {
    expect(Buffer.compare(print(), bytes)).toBe(0);
  });

  it('of a floor without a record has the counts of the book and room to write', async () => {
    const blank = flat((await readPdf(print({ records: [] }))).text);
    expect(blank).toContain('No trial is recorded.');
    expect(blank).toContain('No lot is recorded.');
    expect(blank).toContain('What these counts give is not known');
    expect(blank).not.toMatch(noKeys);
  });
});

describe('a lot on the certificate', () => {
  const nets = [2.1, 2.096, 2.094, 2.099, 2.097, 2.093, 2.1, 2.098, 2.095, 2.101];
  const weighed = Array.from({ length: 50 }, (_, i) => nets[i % nets.length]!);
  const lot: Said = {
    kind: 'lot',
    version: 1,
    body: {
      floor: 'LARKMOOR',
      format: 'FLAGON-2L',
      size: 1000,
      temperature: '20 degC',
      density: '1.045 kg/L',
      resolution: '1 g',
      by: 'the witness',
      packages: weighed.map((net) => ({ gross: `${(net + 0.96).toFixed(3)} kg`, tare: '0.960 kg' })),
    },
  };

  it('is judged by the agreed rule, with the mean that the balance and the density give, and its whole worksheet', async () => {
    const { text } = await readPdf(print({ book: withRule('EU average system'), records: recorded([lot]) }));
    const mean = weighed.reduce((sum, net) => sum + litres(net, 1045), 0) / weighed.length;
    expect(mean).toBeGreaterThan(2);
    expect(flat(text)).toContain('By EU average system: accepted');
    const printed = /[Mm]ean[^0-9]{0,40}(\d\.\d+) L/.exec(flat(text).split('By EU average system')[1] ?? '');
    expect(Number(printed?.[1])).toBeCloseTo(mean, 4);
    const marks = /Worksheet, step by step: ([w\d, ]+)/.exec(flat(text))?.[1]?.trim().split(', ') ?? [];
    expect(marks.length).toBeGreaterThan(3);
    for (const mark of marks) expect(text).toMatch(new RegExp(`^${mark} \\p{L}`, 'mu'));
  });

  it('is judged by a plan that was typed in, of which no table is held, and names its edition', async () => {
    const { size: _, packages: __, ...body } = lot.body as Readonly<Record<string, unknown>>;
    const drawn = nets.concat(2.0895, 2.0895).map((net) => net - 0.0087);
    const packages = drawn.map((net) => ({ gross: `${(net + 0.96).toFixed(4)} kg`, tare: '0.960 kg' }));
    // regulations of New Zealand, schedule 7A: of a lot of 40 to 79 twelve, 0.826 and one (read)
    const typed = { size: 60, plan: '12; 0.826; 1', edition: 'schedule 7A' };
    const records = recorded([{ ...lot, body: { ...body, ...typed, packages } }]);
    const text = flat((await readPdf(print({ book: withRule('OIML R 87'), records }))).text);
    const errors = drawn.map((net) => 1000 * litres(net, 1045) - 2000);
    const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
    const spread = Math.sqrt(
      errors.reduce((sum, error) => sum + (error - mean) ** 2, 0) / (errors.length - 1),
    );
    const corrected = mean + 0.826 * spread;
    // short by its mean, and taken by what the typed factor leaves to chance
    expect(mean).toBeLessThan(0);
    expect(corrected).toBeGreaterThan(0);
    expect(text).toContain('By OIML R 87: accepted');
    expect(text).toContain('The plan was typed in from: schedule 7A.');
    expect(text).toContain('Packages that the plan takes 12');
    expect(text).toContain('Sample correction factor 0.826');
    const printed = /with its correction[^0-9]*\(must not be below 0\) (\d\.\d+) mL/.exec(text)?.[1];
    expect(Number(printed)).toBeCloseTo(corrected, 4);
  });

  it('says what would decide where something is missing, and that no rule was agreed where none was', async () => {
    const { body } = lot;
    const without = { ...lot, body: { ...(body as object), size: undefined } };
    const sizeless = recorded([{ ...without, body: JSON.parse(JSON.stringify(without.body)) }]);
    const asked = await readPdf(print({ book: withRule('EU average system'), records: sizeless }));
    expect(flat(asked.text)).toContain('How many packages are in the lot?');
    expect(flat(asked.text)).toContain('not decided');
    const none = await readPdf(print({ records: recorded([lot]) }));
    expect(flat(none.text)).toContain('none was agreed that is held here');
  });
});

describe('what people wrote', () => {
  const hostile = '#panic() *x* "quoted" <b> \u202e @c $a$';
  const long = 'Larkmoorcoldstore'.repeat(18);

  it('is printed as it is and within the margins', async () => {
    const trials = records.map((one) =>
      one.kind === 'trial'
        ? { ...one, body: { ...(one.body as object), remark: hostile, by: long, row: long } }
        : one,
    );
    const stations = demo.line?.stations?.map((one) =>
      one.kind === 'fill' ? { ...one, name: hostile } : one,
    );
    const book: Book = {
      ...demo,
      floors: demo.floors?.map((one) => ({ ...one, name: hostile })) ?? [],
      line: { ...demo.line, ...(stations === undefined ? {} : { stations }) },
    };
    const pdf = await readPdf(print({ book, records: trials as readonly Envelope[], page: 'letter' }));
    expect(outside(pdf)).toEqual([]);
    expect(flat(pdf.text)).toContain('#panic() *x* "quoted" <b> ‹U+202E› @c $a$');
    expect(pdf.text.replace(/\s+/g, '')).toContain(long);
  });

  it('of a book with one empty floor makes no trouble', async () => {
    const { text } = await readPdf(
      print({ book: { twinfloor: 1, floors: [{ tag: 'A' }] }, records: [], floor: 'A' }),
    );
    expect(flat(text)).toContain('No trial is recorded.');
    expect(text).not.toMatch(noKeys);
  });
});
