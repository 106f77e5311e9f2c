import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import type { Tab } from '../../table/index.ts';
import { languageNames, languages, parseMessage, partsOf, type Translation } from '../../text/index.ts';
import { type Misfit, misfits } from '../../text/misfits.ts';
import { type WordProblemCode, wordProblem } from './problems.ts';
import { wordHeadings } from './word-sheet.ts';

/** A language that nobody named: ISO 639-2 has this code for it. */
const unnamed = 'und';

type Rows = Tab['rows'];

interface Columns {
  readonly english: number;
  readonly translation: number;
  /** What was held here when the sheet was written. */
  readonly held: number | undefined;
  readonly language: string;
  /** First row below the headings. */
  readonly from: number;
}

const plain = (text: string | undefined): string => (text ?? '').trim().toLowerCase();

const isTag = (text: string): boolean => /^[a-z]{2,3}(?:-[a-z0-9]{2,8})*$/.test(text);

const heldLanguage = (heading: string): string | undefined =>
  languages.find((one) => languageNames[one].toLowerCase() === heading);

/** Columns by their headings; without headings the English stands first and the translation behind it. */
const columnsOf = (rows: Rows, known: ReadonlySet<string>): Columns | undefined => {
  const english = wordHeadings.english.toLowerCase();
  for (const [at, row] of rows.entries()) {
    const heads = row.map(plain);
    const first = heads.indexOf(english);
    if (first < 0) {
      if (known.has((row[0] ?? '').trim())) {
        return { english: 0, translation: 1, held: undefined, language: unnamed, from: at };
      }
      continue;
    }
    const isFree = (head: string, i: number): boolean =>
      i !== first && (head === wordHeadings.translation.toLowerCase() || isTag(head));
    const own = heads.findLastIndex(isFree);
    const held = heads.findIndex((head, i) => i !== first && heldLanguage(head) !== undefined);
    const translation = own < 0 && held < 0 ? first + 1 : own < 0 ? held : own;
    const head = heads[translation] ?? '';
    return {
      english: first,
      translation,
      held: held < 0 || held === translation ? undefined : held,
      language: (isTag(head) ? head.split('-')[0] : heldLanguage(heads[held] ?? '')) ?? unnamed,
      from: at + 1,
    };
  }
  return undefined;
};

const codes: Readonly<Record<Exclude<Misfit['is'], 'braces'>, WordProblemCode>> = {
  missing: 'WORDS_PARTS_MISSING',
  unknown: 'WORDS_PARTS_UNKNOWN',
  uncounted: 'WORDS_PARTS_UNCOUNTED',
  other: 'WORDS_PLURAL_OTHER',
  forms: 'WORDS_PLURAL_FORMS',
};

const braced = (parts: readonly string[]): string => parts.map((part) => `{${part}}`).join(', ');

/** Longest piece of a cell that a sentence repeats. */
const longest = 80;

const cut = (text: string): string => (text.length > longest ? `${text.slice(0, longest)}…` : text);

const problemOf = (
  misfit: Misfit,
  english: string,
  text: string,
  row: number,
  language: string | undefined,
): Problem => {
  const given = cut(text);
  if (misfit.is === 'braces') return wordProblem('WORDS_BRACES', { given, parts: { row: String(row) } });
  const isForms = misfit.is === 'forms';
  const wanted = isForms ? misfit.parts.join(', ') : braced(misfit.parts);
  const forms = isForms ? new Intl.PluralRules(language).resolvedOptions().pluralCategories : [];
  return wordProblem(codes[misfit.is], {
    given,
    parts: { row: String(row), wanted },
    allowed: isForms ? forms : braced(partsOf(parseMessage(english))) || '–',
  });
};

interface Line {
  readonly english: string;
  readonly text: string;
  readonly row: number;
}

const linesOf = (rows: Rows, { english, translation, held, from }: Columns): readonly Line[] =>
  rows.slice(from).flatMap((cells, i) => {
    const own = (cells[translation] ?? '').trim();
    const text = own === '' && held !== undefined ? (cells[held] ?? '').trim() : own;
    return text === '' ? [] : [{ english: (cells[english] ?? '').trim(), text, row: from + i + 1 }];
  });

/**
 * A translation out of a sheet that somebody filled in.
 *
 * Method   rows are found by their English; a row without words in the language is left out, and one whose words do
 *          not fit the English is told with its number, all of them at once
 * Symbols  known  every English message of papers
 * Problems WORDS_NO_COLUMNS, WORDS_NONE, WORDS_ENGLISH_UNKNOWN, WORDS_ENGLISH_TWICE, WORDS_BRACES,
 *          WORDS_PARTS_MISSING, WORDS_PARTS_UNKNOWN, WORDS_PARTS_UNCOUNTED, WORDS_PLURAL_OTHER, WORDS_PLURAL_FORMS
 */
export const readWordSheet = (tabs: readonly Tab[], known: ReadonlySet<string>): Result<Translation> => {
  const read = tabs.flatMap(({ rows }) => {
    const columns = columnsOf(rows, known);
    return columns === undefined ? [] : [{ columns, lines: linesOf(rows, columns) }];
  })[0];
  if (read === undefined) return refuse(wordProblem('WORDS_NO_COLUMNS', { allowed: wordHeadings.english }));
  const { columns, lines } = read;
  if (lines.length === 0) return refuse(wordProblem('WORDS_NONE'));
  const hasForms = Intl.PluralRules.supportedLocalesOf(columns.language).length > 0;
  const language = hasForms ? columns.language : undefined;
  const texts = new Map<string, Line>();
  const problems: Problem[] = [];
  for (const line of lines) {
    const { english, text } = line;
    const row = String(line.row);
    const before = texts.get(english);
    if (!known.has(english)) {
      problems.push(wordProblem('WORDS_ENGLISH_UNKNOWN', { given: cut(english), parts: { row } }));
    } else if (before !== undefined && before.text !== text) {
      const parts = { row, before: String(before.row) };
      problems.push(wordProblem('WORDS_ENGLISH_TWICE', { given: cut(english), parts }));
    } else {
      const wrong = misfits(english, text, language);
      problems.push(...wrong.map((misfit) => problemOf(misfit, english, text, line.row, language)));
      texts.set(english, line);
    }
  }
  if (problems.length > 0) return refuse(...problems);
  return accept({
    language: columns.language,
    texts: new Map([...texts].map(([english, { text }]) => [english, text])),
  });
};
