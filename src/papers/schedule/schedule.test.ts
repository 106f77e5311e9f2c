import { readFileSync } from 'node:fs';
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';
import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { Book } from '../../book/index.ts';
import { endsOfBoxes, laidJoins, printedCode, scheduleOf } from '../../joins/index.ts';
import { writtenByOthers } from '../../media/testing/written-by-others.ts';
import type { Envelope } from '../../record/envelope.ts';
import { importRecords } from '../../record/record-file.ts';
import { appended } from '../../record/testing/appended.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import type { PageSize } from '../paper-head.ts';
import { makePaperWords } from '../paper-words.ts';
import { printSchedule } from '../print-schedule.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { fontsOf, outside, readPdf } from '../testing/read-pdf.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const joins = laidJoins(demo);
const plan = scheduleOf(joins, demo);
const ends = endsOfBoxes(joins);
const file = importRecords(readFileSync('examples/records/joins.records', 'utf8'));
if (!file.ok) throw new Error(JSON.stringify(file.problems));
const { records: recorded } = file.value;

type Pictures = ReadonlyMap<string, Uint8Array>;
const none: Pictures = new Map();

const print = (
  records: readonly Envelope[] = [],
  pictures: Pictures = none,
  book: Book = demo,
  page: PageSize = 'a4',
): Uint8Array =>
  printSchedule(
    { records, pictures, floor: 'Larkmoor' },
    { date, hash, page },
    makePaperWords(book, bookUnits(book, undefined), 'en'),
    typesetter,
  );

/** The same JPEG as a camera writes it that was held upright: to be turned a quarter before it is looked at. */
const turned = (jpeg: Uint8Array): Uint8Array => {
  const exif = [...'Exif\0\0MM\0*'].map((letter) => letter.charCodeAt(0));
  const orientation = [0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0];
  const segment = [...exif, ...orientation];
  return Uint8Array.from([
    ...jpeg.subarray(0, 2),
    ...[0xff, 0xe1, 0, segment.length + 2],
    ...segment,
    ...jpeg.subarray(2),
  ]);
};

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

interface Drawn {
  readonly page: number;
  /** Points of the page, from its lower left. */
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

/** Where another program draws the photographs of a paper, and the rings on them. */
const drawnOn = async (
  bytes: Uint8Array,
): Promise<{ readonly photographs: readonly Drawn[]; readonly rings: readonly Drawn[] }> => {
  const pdf = await getDocumentProxy(new Uint8Array(bytes), { verbosity: 0 });
  const { OPS } = await getResolvedPDFJS();
  const photographs: Drawn[] = [];
  const rings: Drawn[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const { fnArray, argsArray } = await (await pdf.getPage(page)).getOperatorList();
    let now: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    const within = (box: ArrayLike<number>): Drawn => {
      const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = Array.from(box);
      const corners = [
        [x0, y0],
        [x1, y0],
        [x0, y1],
        [x1, y1],
      ].map(([x = 0, y = 0]) => times(now, [1, 0, 0, 1, x, y]).slice(4) as [number, number]);
      const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
      return { page, left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
    };
    for (const [i, op] of fnArray.entries()) {
      if (op === OPS.save) kept.push(now);
      if (op === OPS.restore) now = kept.pop() ?? now;
      if (op === OPS.transform) now = times(now, argsArray[i] as unknown as Matrix);
      if (op === OPS.paintImageXObject) photographs.push(within([0, 0, 1, 1]));
      if (op === OPS.constructPath) rings.push(within((argsArray[i] as [number, unknown, number[]])[2]));
    }
  }
  const across = 2.2 * (72 / 25.4);
  return {
    photographs,
    rings: rings.filter(
      ({ width, height }) => Math.abs(width - across) < 0.1 && Math.abs(height - across) < 0.1,
    ),
  };
};

const digest = (letter: string): string => letter.repeat(64);
const photographs: Pictures = new Map([
  [digest('a'), writtenByOthers.png],
  [digest('b'), turned(writtenByOthers.jpegPlain)],
]);

const placed = (
  box: string,
  picture: string,
  points: readonly (readonly [number, number])[],
  before: readonly Envelope[] = [],
): readonly Envelope[] =>
  appended(before, `by ${box}`.replace(/[ +]/g, '-').slice(1), {
    kind: 'placement',
    body: {
      picture,
      box,
      by: 'the fitter',
      points: (ends.get(box) ?? [])
        .slice(0, points.length)
        .map(({ join, side }, i) => ({ join, side, x: points[i]![0], y: points[i]![1] })),
    },
  });

const codeOf = (tag: string): string => printedCode(joins.find((join) => join.tag === tag)!.code);

describe('the connection schedule', () => {
  it('holds every join once in the order of the rebuild, with a frame for each photograph that is missing', async () => {
    const bytes = print();
    const pdf = await readPdf(bytes);
    const text = pdf.text.slice(pdf.text.indexOf('Align and bolt, outside'));
    const codes = text.match(/\b[2-9ACEFHJKMNPRTWXY]{3}-[2-9ACEFHJKMNPRTWXY]{3}\b/g) ?? [];
    const order = plan.stages.flatMap(({ stops }) => stops.flatMap((stop) => stop.joins));
    // what was done before the journey stands behind all that is made on arrival
    expect(codes).toEqual([...order, ...plan.beforeShipping].map(codeOf));
    for (const box of ['+JB2', '+JB3', '+VI2']) expect(text.split(`No photograph of ${box}`)).toHaveLength(2);
    expect(pdf.text).toMatch(/210 N·m/);
    expect(pdf.text).toContain('Nothing is recorded of any join');
    expect(pdf.text).toContain('qualified person');
    expect(pdf.text).not.toMatch(/\bsafe/i);
    expect([pdf.tagged, pdf.bookmarks.includes('Electric power, in +JB2 filler terminal box')]).toEqual([
      true,
      true,
    ]);
    const { described, within } = fontsOf(bytes);
    expect([described > 0, within]).toEqual([true, described]);
  });

  it.each(['a4', 'letter'] as const)('stands within its pages on %s', async (page) => {
    const points = Array.from({ length: 20 }, (_, i) => [0.05 + i * 0.047, 0.5] as const);
    const records = placed('+JB2', digest('a'), points, recorded);
    const pdf = await readPdf(print(records, photographs, demo, page));
    expect(pdf.pages.every(({ width, height }) => width > height)).toBe(true);
    expect(outside(pdf)).toEqual([]);
    expect(pdf.text).not.toMatch(/\b(?:schedule|joins|paper)\.[a-z]|\{[a-z]+\}|undefined|NaN/);
  });

  it('says of each join and box what the records say', async () => {
    const { text } = await readPdf(print(recorded));
    const plain = text.replace(/\s+/g, ' ');
    expect(plain).toMatch(/frame bond.*made.*tested 0\.03 Ω/);
    expect(plain).toMatch(/2WA-53P.*?trouble !/);
    expect(plain).toMatch(/recorded differently by two !/);
    expect(plain).toMatch(/By the records \+JB2 still lacks: fault of the list 2/);
    expect(plain).toMatch(/\+JB3 capper terminal box everything that is asked for here is recorded/);
  });

  it('shows the photographs of both boxes with a ring where each end was tapped, also on one to be turned', async () => {
    const there = [
      [0.1, 0.2],
      [0.5, 0.5],
      [0.93, 0.88],
    ] as const;
    const far = [
      [0.25, 0.1],
      [0.5, 0.9],
      [0.75, 0.3],
    ] as const;
    const records = placed('+JB1', digest('b'), far, placed('+JB2', digest('a'), there));
    const bytes = print(records, photographs);
    const drawn = await drawnOn(bytes);
    const { items, text } = await readPdf(bytes);
    // the first three ends of each box are the two ends of the same three joins
    const stop = plan.stages.find(({ stage }) => stage === 'power')!.stops.find(({ box }) => box === '+JB2')!;
    expect(stop.joins).toEqual((ends.get('+JB1') ?? []).slice(0, 3).map(({ join }) => join));
    expect(drawn.photographs).toHaveLength(2);
    const expected = [
      { photograph: drawn.photographs[0]!, points: there },
      { photograph: drawn.photographs[1]!, points: far },
    ];
    for (const { photograph, points } of expected) {
      const { page, left, bottom, width, height } = photograph;
      for (const [x, y] of points) {
        const [across, up] = [left + x * width, bottom + (1 - y) * height];
        const off = drawn.rings
          .filter((ring) => ring.page === page)
          .map((ring) => Math.hypot(ring.left + ring.width / 2 - across, ring.bottom + ring.height / 2 - up));
        // a tenth of a millimetre
        expect(Math.min(...off)).toBeLessThan(0.3);
      }
      const codes = items.filter(
        (item) =>
          item.page === page &&
          item.left >= left &&
          item.right <= left + width &&
          item.baseline >= bottom &&
          item.baseline <= bottom + height,
      );
      expect(codes.map((item) => item.text).sort()).toEqual(stop.joins.map(codeOf).sort());
    }
    // turned upright it is as much higher as it was wider
    const [flat, upright] = drawn.photographs as [Drawn, Drawn];
    const { heightByWidth } = typesetter;
    expect(flat.height / flat.width).toBeCloseTo(heightByWidth(writtenByOthers.png)!, 3);
    expect(upright.height / upright.width).toBeCloseTo(1 / heightByWidth(writtenByOthers.jpegPlain)!, 3);
    expect(text).not.toContain('No photograph of +JB2');
  });

  it('stands with a frame where a photograph is broken or not at hand', async () => {
    const records = placed('+JB2', digest('a'), [[0.5, 0.5]]);
    const [gone, broken] = ['A photograph of +JB2 filler terminal box is not at hand', 'can’t be printed'];
    for (const [pictures, said] of [
      [none, gone],
      [new Map([[digest('a'), writtenByOthers.png.subarray(0, 100)]]), broken],
      [new Map([[digest('a'), new TextEncoder().encode('no picture at all')]]), gone],
    ] as const) {
      const { text } = await readPdf(print(records, pictures));
      expect(text.replace(/\s+/g, ' ')).toContain(said);
    }
  });

  it('says of a photograph that no paper can carry what it is, by which digest, and how one comes to see it', async () => {
    const records = placed('+JB2', digest('a'), [[0.5, 0.5]]);
    // the head of a file of an ISO container with the registered brand of HEIC
    const heic = Uint8Array.from([0, 0, 0, 24, ...[...'ftypheic'].map((letter) => letter.charCodeAt(0))]);
    const { text } = await readPdf(print(records, new Map([[digest('a'), heic]])));
    const said = text.replace(/\s+/g, ' ');
    expect(said).toContain('There is a photograph of +JB2 filler terminal box');
    expect(said).toContain('of the format HEIC, can’t be printed');
    expect(said.replace(/\s/g, '')).toContain(digest('a'));
    expect(said).not.toContain('No photograph of +JB2');
  });

  it('prints whatever a book says, and a book that says nothing', async () => {
    const strange: Book = {
      twinfloor: 1,
      line: {
        boxes: [{ tag: '#panic()', name: '$x$ *bold* \u202e' }],
        joins: [
          { tag: '"quoted"', kind: 'conductor', name: '#eval("1")', from: 'a'.repeat(300), box: '#panic()' },
        ],
      },
    };
    const { text } = await readPdf(print([], none, strange));
    expect(text.replace(/\s/g, '')).toContain('#panic()$x$*bold*‹U+202E›');
    expect((await readPdf(print([], none, { twinfloor: 1 }))).text).toContain('The book has no joins yet.');
  });

  it('gives the same bytes for the same records, photographs and day', () => {
    const records = placed('+JB2', digest('a'), [[0.5, 0.5]]);
    expect(print(records, photographs)).toEqual(print(records, photographs));
  });
});
