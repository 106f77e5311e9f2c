import { type JoinEnd, type LaidJoin, printedCode, scanText } from '../../joins/index.ts';
import { type PaperHead, type PaperOptions, paperHead, subtitleOf } from '../paper-head.ts';
import type { PaperWords } from '../paper-words.ts';
import { codeModules, outlineOf } from './code-outline.ts';
import type { LabelStock } from './label-stock.ts';

/** A line of a label with the size of its letters, so that the whole of it stands on the label. */
export interface LabelLine {
  readonly text: string;
  /** Points. */
  readonly size: number;
  readonly bold: boolean;
}

/** One label in its place on the sheet, mm; its square code is drawn apart. */
export interface PlacedLabel {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly lines: readonly LabelLine[];
}

export interface LabelSheet {
  readonly labels: readonly PlacedLabel[];
  /** The square codes of the sheet as one picture, SVG in mm. */
  readonly codes: string;
}

export interface LabelsContent {
  readonly head: PaperHead;
  readonly subtitle: string;
  readonly stock: {
    readonly width: number;
    readonly height: number;
    readonly across: number;
    readonly down: number;
  };
  readonly sheets: readonly LabelSheet[];
  readonly words: Readonly<Record<string, string>>;
}

const sizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;
const edge = 1.2;
const mmPerPoint = 25.4 / 72;
/** Width of a letter by its height, of the widest lines that are met: capitals in bold. */
const letterWidth = 0.74;
const lineHeight = 1.15;
/** Points below which nobody reads a label. */
const least = 3;

interface Wanted {
  readonly text: string;
  /** Points. */
  readonly most: number;
  readonly bold: boolean;
  /** Without it the label is of no use: it stands there however small. */
  readonly needed: boolean;
}

const wanted = (text: string | undefined, most: number, bold: boolean, needed: boolean): readonly Wanted[] =>
  text === undefined || text === '' ? [] : [{ text, most, bold, needed }];

/** What stands on the label of one end: its code, this end, the far end, what it is. */
const wantedOf = (join: LaidJoin, here: JoinEnd, far: JoinEnd, paper: PaperWords): readonly Wanted[] => {
  const name = (end: JoinEnd): string => end.label ?? end.on ?? '';
  const mark = join.cable === undefined ? join.label : [join.cable, join.core].filter(Boolean).join(' · ');
  return [
    ...wanted(printedCode(join.code), 12, true, true),
    ...wanted(name(here), 10, true, true),
    ...wanted(name(far) === '' ? '' : paper.say('labels.to', { end: name(far) }), 8, false, true),
    ...wanted(mark, 7, false, false),
    ...wanted(join.name, 6, false, false),
  ];
};

const highOf = (size: number): number => size * lineHeight * mmPerPoint;

/** Lines from the top: what is needed smaller until it fits, the rest as far as there is room that can be read. */
const fitted = (all: readonly Wanted[], width: number, height: number): readonly LabelLine[] => {
  const needed = all.filter((one) => one.needed).reduce((sum, { most }) => sum + highOf(most), 0);
  const share = Math.min(1, height / needed);
  const lines: LabelLine[] = [];
  let left = height;
  for (const line of all) {
    const byWidth = width / (mmPerPoint * letterWidth * [...line.text].length);
    const size = Math.max(least, Math.min(line.most * share, byWidth));
    if (!line.needed && (size === least || left < highOf(size))) continue;
    left -= highOf(size);
    lines.push({ text: line.text, size: Math.floor(size * 10) / 10, bold: line.bold });
  }
  return lines;
};

interface Label {
  readonly join: LaidJoin;
  readonly here: JoinEnd;
  readonly far: JoinEnd;
}

/** A label for each end that the join has. */
const labelsOf = (joins: readonly LaidJoin[]): readonly Label[] =>
  joins.flatMap((join) => {
    const { from, to } = join;
    const isThere = ({ label, on }: JoinEnd): boolean => label !== undefined || on !== undefined;
    const both = [
      { join, here: from, far: to },
      { join, here: to, far: from },
    ];
    const there = both.filter(({ here }) => isThere(here));
    return there.length > 0 ? there : both.slice(0, 1);
  });

/** A square code by itself, a module to the unit: it is the same on both labels of a join. */
interface DrawnCode {
  readonly modules: number;
  readonly outline: string;
}

const rounded = (value: number): string => String(Math.round(value * 1e4) / 1e4);

const sheetOf = (
  labels: readonly Label[],
  stock: LabelStock,
  paper: PaperWords,
  drawn: (code: string) => DrawnCode,
): LabelSheet => {
  // a square code wants a quiet zone of four modules; beside the edge the paper's own white is part of it
  const side = Math.min(stock.height - 2 * edge, stock.width * 0.42, 16);
  const quiet = (side * 4) / 29;
  const placed = labels.map(({ join, here, far }, i) => {
    const x = stock.left + (i % stock.columns) * stock.across;
    const y = stock.top + Math.floor(i / stock.columns) * stock.down;
    const beside = edge + side;
    const label: PlacedLabel = {
      x: x + beside,
      y: y + edge,
      width: stock.width - beside - edge,
      height: stock.height - 2 * edge,
      lines: fitted(wantedOf(join, here, far, paper), stock.width - beside - edge, stock.height - 2 * edge),
    };
    const { modules, outline } = drawn(join.code);
    const corner = [x, y].map((at) => rounded(at + edge + quiet)).join(' ');
    const scale = rounded((side - 2 * quiet) / modules);
    return { label, code: `<path transform="translate(${corner}) scale(${scale})" d="${outline}"/>` };
  });
  const [width, height] = sizes[stock.page];
  return {
    labels: placed.map(({ label }) => label),
    codes: `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">${placed.map(({ code }) => code).join('')}</svg>`,
  };
};

const wordKeys = ['ruler', 'ruler.scale', 'stock', 'order', 'code', 'loose'] as const;

/** The labels of joins on sheets of a stock, behind one sheet of plain paper that says how to print them. */
export const labelsContent = (
  joins: readonly LaidJoin[],
  stock: LabelStock,
  options: PaperOptions,
  paper: PaperWords,
): LabelsContent => {
  const { say } = paper;
  const labels = labelsOf(joins);
  const perSheet = stock.columns * stock.rows;
  const known = new Map<string, DrawnCode>();
  const drawn = (code: string): DrawnCode => {
    const done = known.get(code);
    if (done !== undefined) return done;
    const modules = codeModules(scanText(code));
    const made = { modules: modules.length, outline: outlineOf(modules) };
    known.set(code, made);
    return made;
  };
  const sheets = Array.from({ length: Math.ceil(labels.length / perSheet) }, (_, n) =>
    sheetOf(labels.slice(n * perSheet, (n + 1) * perSheet), stock, paper, drawn),
  );
  const { width, height, across, down } = stock;
  const parts = {
    stock: stock.id,
    labels: labels.length,
    joins: joins.length,
    sheets: sheets.length,
    width: String(Math.round(width * 10) / 10),
    height: String(Math.round(height * 10) / 10),
  };
  return {
    head: {
      ...paperHead(say('labels.title'), { ...options, page: stock.page }, paper),
      caution: say('labels.foot'),
    },
    subtitle: subtitleOf(paper),
    stock: { width, height, across, down },
    sheets,
    words: Object.fromEntries(wordKeys.map((key) => [key, say(`labels.${key}`, parts)])),
  };
};
