import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import { findCode, type LaidJoin, laidJoins, printedCode } from '../../joins/index.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { printLabels } from '../print-labels.ts';
import { bookOf, date, hash } from '../testing/books.ts';
import { type PagePicture, pictureOf } from '../testing/page-picture.ts';
import { readPdf } from '../testing/read-pdf.ts';
import { type LabelStock, labelStock, labelStocks } from './label-stock.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const joins = laidJoins(demo);
const paper = makePaperWords(demo, bookUnits(demo, undefined), 'en');

const print = (of: readonly LaidJoin[], stock: LabelStock): Uint8Array =>
  printLabels(of, stock, { date, hash }, paper, typesetter);

/** Dots a point: the narrowest module of a square code is two dots wide. */
const fine = 2;

/** What a camera would see of one label of a drawn page. */
const seen = ({ width, grey }: PagePicture, x: number, y: number, stock: LabelStock) => {
  const dots = (mm: number): number => Math.round((mm * 72 * fine) / 25.4);
  const [left, top, wide, high] = [dots(x), dots(y), dots(stock.width), dots(stock.height)];
  const image = new Uint8ClampedArray(wide * high * 4).fill(255);
  for (let row = 0; row < high; row += 1)
    for (let dot = 0; dot < wide; dot += 1) {
      const at = 4 * (row * wide + dot);
      image.fill(grey[(top + row) * width + left + dot] ?? 255, at, at + 3);
    }
  return jsQR(image, wide, high)?.data;
};

describe('labels of joins', () => {
  it.each(labelStocks.map((stock) => [stock.id, stock] as const))(
    'of stock %s bear square codes, read off the printed page by another program, that find their join',
    async (_, stock) => {
      const drawn = await pictureOf(print(joins, stock), 2, fine);
      const perSheet = stock.columns * stock.rows;
      // two labels a join, in the order of the list: some from the first row to the last
      for (const i of [0, 1, Math.floor(perSheet / 2), perSheet - 1].filter((one) => one < 70)) {
        const x = stock.left + (i % stock.columns) * stock.across;
        const y = stock.top + Math.floor(i / stock.columns) * stock.down;
        const text = seen(drawn, x, y, stock);
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
