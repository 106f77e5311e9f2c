import type { FloorAssessment } from '../../floor/assessment.ts';
import type { PaperWords } from '../paper-words.ts';
import { type Citations, type Cited, makeCitations } from './citations.ts';
import { type PrintedSheet, printedSheets, sheetsNamed, sheetsUsed } from './printed-sheets.ts';
import { noteTexts, type PrintedWorking, printedWorking } from './printed-working.ts';

/** A note of the workings, printed once however many carry it. */
export interface PrintedNote extends Cited {
  readonly text: string;
}

export interface WorkingsPart {
  readonly hue: number;
  readonly title: string;
  readonly workings: readonly PrintedWorking[];
}

/** The appendix: what went into each figure that a paper names, by which formula, out of which source. */
export interface WorkingsContent {
  readonly parts: readonly WorkingsPart[];
  readonly notes: readonly PrintedNote[];
  readonly sheets: readonly PrintedSheet[];
  readonly words: Readonly<Record<string, string>>;
}

const wordKeys = ['title', 'about', 'key', 'notes', 'sheets', 'sheets.about', 'sheet.source'] as const;

/** The texts by their marks; the name of a place is the letter of its kind with its number. */
const marked = (
  texts: Iterable<string>,
  { key, letter }: { readonly key: string; readonly letter: string },
  { say }: PaperWords,
): ReadonlyMap<string, Cited> =>
  new Map(
    [...texts].map((text, i) => [text, { mark: say(key, { number: i + 1 }), at: `${letter}${i + 1}` }]),
  );

/** The workings that were named, floor by floor in the order of their hues, with each note and each sheet once. */
export const workingsContent = (citations: Citations, paper: PaperWords): WorkingsContent => {
  const cited = citations.cited();
  const all = cited.floors.flatMap(({ workings }) => workings.map(([, working]) => working));
  const used = new Map([...sheetsUsed(all), ...sheetsNamed(cited.sheets)]);
  const notes = marked(
    new Set(all.flatMap((one) => noteTexts(one, paper))),
    { key: 'workings.note', letter: 'n' },
    paper,
  );
  const sheets = marked(used.keys(), { key: 'workings.sheet', letter: 'f' }, paper);
  return {
    parts: cited.floors
      .map(({ floor, place, workings, named }) => ({
        hue: place,
        title: paper.say('workings.of', { floor: floor.name }),
        workings: workings.map(([number, working]) =>
          printedWorking(working, { place, number, named: named.has(number) }, { notes, sheets }, paper),
        ),
      }))
      .filter(({ workings }) => workings.length > 0),
    notes: [...notes].map(([text, cited]) => ({ ...cited, text })),
    sheets: printedSheets(used, sheets, paper),
    words: Object.fromEntries(wordKeys.map((key) => [key, paper.say(`workings.${key}`)])),
  };
};

/** A paper's content with what its figures rest on; papers that are bound together have it once, at the end of all. */
export const withWorkings = <T extends object>(
  floors: readonly FloorAssessment[],
  bound: Citations | undefined,
  paper: PaperWords,
  contentOf: (citations: Citations) => T,
): T & { readonly workings?: WorkingsContent } => {
  const citations = bound ?? makeCitations(floors, paper);
  const content = contentOf(citations);
  if (bound !== undefined) return content;
  const workings = workingsContent(citations, paper);
  return workings.sheets.length === 0 ? content : { ...content, workings };
};
