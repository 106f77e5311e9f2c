import type { Refusal } from '../floor/utilities/utility-finding.ts';
import type { Problem } from '../quantity/problem.ts';
import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import { problemsAsTyped } from '../sheets/problems-as-typed.ts';
import { entryOf } from './note-document.ts';
import { sentenceOf } from './sentence.ts';
import { fieldName, sheetSentence } from './sheet-words.ts';

/** Why a sheet did not take what the book says: inputs by their names, values in the reader's units. */
export const refusalSentences = (
  { sheet, problems }: Refusal,
  wishes: UnitWishes,
  locale: string,
): readonly string[] => {
  const entry = entryOf(sheet);
  if (entry === undefined) return problems.map(sentenceOf);
  const given = ({ path, given }: Problem): readonly [string, string][] => {
    const field = entry.sheet.inputs[path];
    return typeof given === 'number' && field !== undefined && field.type !== 'choice'
      ? [[path, shown(given, field.kind, wishes, locale)]]
      : [];
  };
  const texts = Object.fromEntries(problems.flatMap(given));
  return problemsAsTyped(problems, entry.sheet, texts, wishes, locale).map((problem) =>
    sheetSentence(entry.text, { ...problem, path: fieldName(problem.path, entry.text.en.inputs) }),
  );
};
