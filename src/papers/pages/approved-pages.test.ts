import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import demoText from '../../book/demo/flagon-line.json?raw';
import type { PaperKind } from '../../book/paper-kinds.ts';
import { assessBook } from '../../floor/index.ts';
import { importRecords } from '../../record/record-file.ts';
import { makeTypesetter } from '../frame/typst-compiler.ts';
import { makePaperWords } from '../paper-words.ts';
import { preparationOf } from '../preparation/preparation-of.ts';
import { printPaper } from '../print-paper.ts';
import { printPreparation } from '../print-preparation.ts';
import { bookOf, date, hash, predictionOf } from '../testing/books.ts';
import { type PagePicture, pictureOf, pngOf, readPicture } from '../testing/page-picture.ts';
import { difference } from '../testing/pictures-differ.ts';

const typesetter = makeTypesetter();
const demo = bookOf(demoText);
const options = { date, hash, page: 'a4' as const };

const paper = (kind: PaperKind, recorded?: string): Uint8Array => {
  const file =
    recorded === undefined
      ? undefined
      : importRecords(readFileSync(`examples/records/${recorded}.records`, 'utf8'));
  if (file?.ok === false) throw new Error(JSON.stringify(file.problems));
  const told = file === undefined ? {} : { records: file.value.records, heads: file.value.heads };
  return printPaper({ paper: kind, book: demo, floor: 'LARKMOOR', ...told }, options, typesetter).bytes;
};

const preparation = (): Uint8Array => {
  const words = makePaperWords(demo, bookUnits(demo, undefined), 'en');
  return printPreparation(preparationOf(assessBook(demo), 'LARKMOOR', [], words), options, words, typesetter);
};

/** The trades are left blank, so that the plan stands behind a page of each. */
const plan = (): Uint8Array =>
  printPreparation(
    { floor: 'Larkmoor', pages: [] },
    options,
    makePaperWords(demo, bookUnits(demo, undefined), 'en'),
    typesetter,
  );

/** Pages of which a break in the layout would hurt somebody at the line; each is looked at before it is approved. */
const pages: readonly (readonly [name: string, page: number, print: () => Uint8Array])[] = [
  ['prediction', 1, () => predictionOf(demo, typesetter)],
  ['preparation-electrician', 1, preparation],
  ['plan', 7, plan],
  ['protocol', 2, () => paper('protocol', 'protocol')],
  ['schedule', 1, () => paper('schedule', 'joins')],
  ['packing', 1, () => paper('packing')],
  ['fill', 1, () => paper('fill', 'fill')],
  ['card', 1, () => paper('card', 'settings')],
];

/** Tiles that may differ: a digit that another processor rounds the other way, and no line of text. */
const most = 0.001;

const near = (
  { width, height, grey }: PagePicture,
  change: (grey: number, i: number) => number,
): PagePicture => ({
  width,
  height,
  grey: grey.map(change),
});

describe('an approved page', () => {
  it.each(pages)('looks as it was approved: %s', async (name, page, print) => {
    const file = (ending: string): string => join(import.meta.dirname, `${name}${ending}`);
    const now = await pictureOf(print(), page);
    const kept = existsSync(file('.png')) ? await readPicture(readFileSync(file('.png'))) : undefined;
    const { share, at: [x, y] = [0, 0] } = kept === undefined ? { share: 1 } : difference(kept, now);
    rmSync(file('.new.png'), { force: true });
    if (share > most) writeFileSync(file('.new.png'), pngOf(now));
    const told =
      kept === undefined
        ? `${name}: no approved picture. Look at ${file('.new.png')}, then: node scripts/approve-pages.mjs ${name}`
        : `${name}, page ${page}: ${(100 * share).toFixed(1)} % of it differ, first ${Math.round(100 * x)} % from the left and ${Math.round(100 * y)} % from above. Look at ${file('.new.png')} beside ${file('.png')}, then: node scripts/approve-pages.mjs ${name}`;
    expect(share, told).toBeLessThanOrEqual(most);
  });
});

describe('what is told apart', () => {
  it('is a line of text that has moved, and not the softness of edges', async () => {
    const page = await pictureOf(plan(), 7);
    const soft = near(page, (grey, i) => Math.max(0, Math.min(255, grey + ((i * 7919) % 17) - 8)));
    expect(difference(page, soft).share).toBe(0);
    const { width } = page;
    // the heading and the lines under it stand in these rows
    const moved = near(page, (grey, i) =>
      i > 60 * width && i < 100 * width ? page.grey[i - 4 * width]! : grey,
    );
    expect(difference(page, moved).share).toBeGreaterThan(most);
    expect(difference(page, await readPicture(pngOf(page)))).toEqual({ share: 0 });
    expect(difference(page, { ...page, width: page.width - 1 }).share).toBe(1);
  });
});
