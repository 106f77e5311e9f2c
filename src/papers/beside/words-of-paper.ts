import { sheetEntries } from '../../sheets/registry.ts';
import { paperBundles } from '../words.ts';
import type { WordedPaper } from './worded-papers.ts';

/** Keys of words that other papers say. */
const ofOthers: Readonly<Record<WordedPaper, RegExp>> = {
  protocol:
    /^(?:card|certificate|dossier|fill|help|join|kind|labels|lever|lot|open|packing|plan|prediction|preparation|register|schedule|trade|utility\.(?!question\.|of$)|word)\b/,
  preparation:
    /^(?:card|certificate|dossier|fill|join|labels|lot|open|packing|prediction\.(?!remedy)|proof|protocol|register|schedule|setting)\b/,
  schedule:
    /^(?:card|certificate|dossier|field|fill|figure|help|kind|labels|lever|lot|open|packing|plan|prediction|preparation|proof|protocol|register|setting|utility|verdict|word)\b/,
};

const notesOfSheets = new Set<unknown>(sheetEntries.map(({ text }) => text.en.notes));

const hasLetters = (text: string): boolean => /\p{L}/u.test(text.replace(/\{\w+\}/gu, ''));

/** What a paper in two languages may say besides its workings, which stand there in the first language alone. */
const saidOn = (paper: WordedPaper): readonly string[] =>
  paperBundles
    .filter(({ en }) => !notesOfSheets.has(en))
    .flatMap(({ en = {} }) => Object.entries(en))
    .flatMap(([key, text]) => (ofOthers[paper].test(key) ? [] : [text]));

const saidOnAny = (): readonly string[] => [
  ...paperBundles.flatMap(({ en = {} }) => Object.values(en)),
  ...sheetEntries.flatMap(({ text: { en } }) => [
    en.title,
    ...Object.values(en.inputs),
    ...Object.values(en.outputs),
  ]),
];

/** The English texts that a paper may say, or all papers, each once. */
export const papersSay = (paper?: WordedPaper): readonly string[] =>
  [...new Set(paper === undefined ? saidOnAny() : saidOn(paper))].filter(hasLetters);
