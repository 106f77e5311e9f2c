import { getDocumentProxy } from 'unpdf';

export interface PdfText {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly baseline: number;
}

/** A way from one place of a paper to another. */
export interface PdfLink {
  readonly page: number;
  /** What one clicks on. */
  readonly text: string;
  readonly to: {
    readonly page: number;
    /** The text of the line to which it leads. */
    readonly text: string;
  };
}

export interface ReadPdf {
  readonly pages: readonly { readonly width: number; readonly height: number; readonly text: string }[];
  readonly items: readonly PdfText[];
  readonly text: string;
  readonly bookmarks: readonly string[];
  readonly tagged: boolean;
  readonly title: string;
}

interface Bookmark {
  readonly title: string;
  readonly items: readonly Bookmark[];
}

const titles = (all: readonly Bookmark[]): readonly string[] =>
  all.flatMap(({ title, items }) => [title, ...titles(items)]);

/** Places where a long word may be broken are no part of it. */
const plain = (text: string): string => text.replaceAll('\u200b', '');

/** A PDF as another program reads it: pdf.js, which knows nothing of how it was made. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
  const pdf = await getDocumentProxy(new Uint8Array(bytes));
  const items: PdfText[] = [];
  const pages: ReadPdf['pages'][number][] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const content = await page.getTextContent();
    let text = '';
    for (const item of content.items) {
      if (!('str' in item)) continue;
      text += item.str + (item.hasEOL ? '\n' : '');
      const [, , , , left = 0, baseline = 0] = item.transform as number[];
      if (item.str.trim() !== '') {
        items.push({ page: number, text: plain(item.str), left, right: left + item.width, baseline });
      }
    }
    pages.push({ width, height, text: plain(text) });
  }
  const { info } = await pdf.getMetadata();
  const mark = await pdf.getMarkInfo();
  return {
    pages,
    items,
    text: pages.map((page) => page.text).join('\n'),
    bookmarks: titles(((await pdf.getOutline()) ?? []) as readonly Bookmark[]),
    tagged: mark?.Marked === true,
    title: String((info as { Title?: string }).Title ?? ''),
  };
};

/** How many fonts a PDF describes, and how many it carries within: dictionaries of objects are not packed here. */
export const fontsOf = (bytes: Uint8Array): { readonly described: number; readonly within: number } => {
  const text = new TextDecoder('latin1').decode(bytes);
  const count = (pattern: RegExp): number => text.match(pattern)?.length ?? 0;
  return {
    described: count(/\/Type\s*\/FontDescriptor\b/g),
    within: count(/\/FontFile[23]?\s+\d+\s+\d+\s+R/g),
  };
};

/** Text that stands out of the printed field: 16 mm at the sides, and nothing below the foot or above the head. */
export const outside = ({ items, pages }: ReadPdf): readonly PdfText[] => {
  const side = (16 / 25.4) * 72;
  // a letter may lean over by less than a point
  const lean = 1;
  return items.filter(({ page, left, right, baseline }) => {
    const { width, height } = pages[page - 1] ?? { width: 0, height: 0 };
    const away = (10 / 25.4) * 72;
    return (
      left < side - lean ||
      right > width - side + lean ||
      baseline < away * 0.7 ||
      baseline > height - away * 0.7
    );
  });
};

interface LinkAnnotation {
  readonly subtype: string;
  readonly rect: readonly [left: number, bottom: number, right: number, top: number];
  readonly dest?: readonly [
    page: Parameters<PdfDocument['getPageIndex']>[0],
    how: unknown,
    left: number,
    top: number,
  ];
}

type PdfDocument = Awaited<ReturnType<typeof getDocumentProxy>>;

/** The links within a paper, as another program follows them. */
export const linksOf = async (bytes: Uint8Array, { items }: ReadPdf): Promise<readonly PdfLink[]> => {
  const pdf = await getDocumentProxy(new Uint8Array(bytes));
  /** What stands between two heights of a page, from the left on. */
  const textIn = (page: number, [bottom, top]: readonly [number, number], from = 0, to = Infinity): string =>
    items
      .filter(
        (one) =>
          one.page === page &&
          one.baseline >= bottom &&
          one.baseline <= top &&
          one.left >= from - 1 &&
          one.left < to,
      )
      .map(({ text }) => text)
      .join('');
  const links: PdfLink[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    for (const one of (await (await pdf.getPage(page)).getAnnotations()) as readonly LinkAnnotation[]) {
      if (one.subtype !== 'Link' || one.dest === undefined) continue;
      const [left, bottom, right, top] = one.rect;
      const [target, , , height] = one.dest;
      const to = (await pdf.getPageIndex(target)) + 1;
      links.push({
        page,
        text: textIn(page, [bottom, top], left, right),
        // a line of text is no higher than this
        to: { page: to, text: textIn(to, [height - 14, height]) },
      });
    }
  }
  return links;
};

/** Texts of one line that run into each other: a column was too narrow for what stands in it. */
export const overlapping = ({ items }: ReadPdf): readonly (readonly [string, string])[] => {
  const lines = new Map<string, PdfText[]>();
  for (const item of items) {
    const line = `${item.page} ${Math.round(item.baseline)}`;
    lines.set(line, [...(lines.get(line) ?? []), item]);
  }
  return [...lines.values()].flatMap((line) => {
    const inOrder = line.toSorted((a, b) => a.left - b.left);
    // a letter may lean over its neighbour by less than a point
    return inOrder.slice(1).flatMap((item, i) => {
      const before = inOrder[i]!;
      return before.right > item.left + 1 ? [[before.text, item.text] as const] : [];
    });
  });
};
