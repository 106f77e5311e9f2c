import jsQR from 'jsqr';
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';
import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { findCode, type LaidJoin, laidJoins, printedCode } from '../../joins/index.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printLabels } from '../print-labels.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { type LabelStock, labelStock, labelStocks } from './label-stock.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const joins = laidJoins(demo);
const paper = makePaperWords(demo, bookUnits(demo, undefined), 'en');

const print = (of: readonly LaidJoin[], stock: LabelStock): Uint8Array =>
  printLabels(of, stock, { date, hash }, paper, typesetter);

/** Corners of the rectangles that a page draws as its largest path, mm from its upper left. */
const drawnOn = async (bytes: Uint8Array, number: number): Promise<readonly (readonly number[])[]> => {
  const pdf = await getDocumentProxy(new Uint8Array(bytes), { verbosity: 0 });
  const list = await (await pdf.getPage(number)).getOperatorList();
  const { OPS } = await getResolvedPDFJS();
  const paths = list.fnArray.flatMap((op: number, i: number) =>
    op === OPS.constructPath
      ? [Object.values((list.argsArray[i] as [number, [Record<string, number>]])[1][0])]
      : [],
  );
  const largest = paths.sort((a: number[], b: number[]) => b.length - a.length)[0] ?? [];
  const shapes: number[][] = [];
  // 0 moves, 1 draws a line, each to a point; 4 closes
  for (let at = 0; at < largest.length; at += largest[at] === 4 ? 1 : 3) {
    if (largest[at] === 0) shapes.push([]);
    if (largest[at] !== 4) shapes.at(-1)!.push(largest[at + 1]!, largest[at + 2]!);
  }
  return shapes;
};

const dots = 8;

/** What a camera would see of one label: its rectangles as dots, white around them. */
const seen = (shapes: readonly (readonly number[])[], x: number, y: number, stock: LabelStock) => {
  const [wide, high] = [Math.round(stock.width * dots), Math.round(stock.height * dots)];
  const image = new Uint8ClampedArray(wide * high * 4).fill(255);
  for (const points of shapes) {
    const at = (axis: number, start: number): readonly number[] =>
      points.filter((_, i) => i % 2 === axis).map((value) => Math.round((value - start) * dots));
    const [across, down] = [at(0, x), at(1, y)];
    for (let row = Math.max(0, Math.min(...down)); row < Math.min(high, Math.max(...down)); row += 1) {
      for (let dot = Math.max(0, Math.min(...across)); dot < Math.min(wide, Math.max(...across)); dot += 1)
        image.fill(0, 4 * (row * wide + dot), 4 * (row * wide + dot) + 3);
    }
  }
  return jsQR(image, wide, high)?.data;
};

describe('labels of joins', () => {
  it.each(labelStocks.map((stock) => [stock.id, stock] as const))(
    'of stock %s bear square codes, read off the printed page by another program, that find their join',
    async (_, stock) => {
      const shapes = await drawnOn(print(joins, stock), 2);
      const perSheet = stock.columns * stock.rows;
      // two labels a join, in the order of the list: some from the first row to the last
      for (const i of [0, 1, Math.floor(perSheet / 2), perSheet - 1].filter((one) => one < 70)) {
        const x = stock.left + (i % stock.columns) * stock.across;
        const y = stock.top + Math.floor(i / stock.columns) * stock.down;
        const text = seen(shapes, x, y, stock);
        expect(text).toMatch(/^TWF:J:/);
        expect(findCode(text ?? '', joins)).toMatchObject({
          is: 'found',
          join: joins[Math.floor(i / 2)]?.tag,
        });
      }
    },
  );

  it.each(labelStocks.map((stock) => [stock.id, stock] as const))(
    'of stock %s stand within their label, a code on one for each end',
    async (_, stock) => {
      const { items, pages } = await readPdf(print(joins, stock));
      const point = 25.4 / 72;
      const onSheets = items.filter(({ page }) => page > 1);
      for (const { text, left, right, baseline, page } of onSheets) {
        const column = Math.floor((left * point - stock.left) / stock.across);
        const from = stock.left + column * stock.across;
        expect([text, left * point >= from, right * point <= from + stock.width]).toEqual([text, true, true]);
        const fromTop = pages[page - 1]!.height * point - baseline * point - stock.top;
        expect([text, fromTop % stock.down <= stock.height]).toEqual([text, true]);
      }
      const shown = pages
        .slice(1)
        .map(({ text }) => text)
        .join('\n');
      for (const { code, from, to } of joins) {
        const ends = [from, to].filter(({ label, on }) => label !== undefined || on !== undefined);
        expect([code, shown.split(printedCode(code)).length - 1]).toEqual([code, ends.length]);
      }
    },
  );

  it('begin with a line of 100 mm, what to do where it is not, and no word that calls anything safe', async () => {
    const { pages, text, tagged } = await readPdf(print(joins, labelStock(undefined, 'letter')));
    expect(pages[0]?.text).toContain('This line measures 100 mm.');
    expect(pages[0]?.text).toContain('print at 100 %');
    expect([pages[1]?.width, pages[1]?.height, tagged]).toEqual([612, 792, true]);
    expect(text).not.toMatch(/\bsafe/i);
  });

  it('print whatever a label says', async () => {
    const strange: LaidJoin = {
      ...joins[0]!,
      name: '#panic() $x$ \u202e "quoted" *bold*',
      from: { side: 'from', label: `X1:${'9'.repeat(60)}` },
    };
    const { text } = await readPdf(print([strange], labelStocks[0]!));
    expect(text.replace(/\s/g, '')).toContain('#panic()$x$‹U+202E›');
  });

  it('of no join are the first page alone', async () => {
    expect((await readPdf(print([], labelStocks[0]!))).pages).toHaveLength(1);
  });
});
