import { type Book, tagPath, valueAt } from '../book/index.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import type { UtilityFigure, UtilityFinding } from '../floor/utilities/utility-finding.ts';
import { utilityName } from '../text/words/utility-name.ts';
import { figureName } from './told.ts';
import { words } from './words.ts';

/** The name that people gave a thing, with its tag; a bare tag where it has none. */
export const thingName = (book: Book, tag: string): string => {
  const path = tagPath(book, tag);
  const name = path === undefined ? undefined : valueAt(book, `${path}/name`);
  return typeof name === 'string' && name !== tag ? `${name} ${tag}` : tag;
};

const named = (book: Book, key: string, id: string, of: string | undefined): string =>
  words.has(key) ? utilityName(words.say, key, of === undefined ? undefined : thingName(book, of)) : id;

/** A question of a utility by name, with the thing that it is about. */
export const questionName = (book: Book, { id, question, of }: UtilityFinding): string =>
  named(book, `utility.question.${question}`, id, of);

export const drawName = (book: Book, { id, of }: UtilityFigure): string =>
  named(book, `utility.figure.${id}`, id, of);

/** Any finding or figure of a floor by the name that a mechanic says. */
export const nameOnFloor = (book: Book, { utilities }: FloorAssessment, id: string): string => {
  const finding = utilities.findings.find((one) => one.id === id);
  if (finding !== undefined) return questionName(book, finding);
  const draw = utilities.figures.find(
    (one) => (one.of === undefined ? one.id : `${one.id} ${one.of}`) === id,
  );
  return draw === undefined ? figureName(id) : drawName(book, draw);
};
