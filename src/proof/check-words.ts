import { type Book, type TagPlace, tagsOf, valueAt } from '../book/index.ts';
import type { Parts } from '../text/index.ts';
import type { Check } from './check.ts';

type Say = (key: string, parts?: Parts) => string;

/** What a check is called and what must be seen, in the words of a catalogue. */
export interface CheckWords {
  readonly name: (check: Check) => string;
  readonly expected: (check: Check) => string;
  /** The name that people gave a thing, with its tag; a bare tag where it has none. */
  readonly thing: (tag: string) => string;
}

/** Findings of the main question have their names among the figures. */
const questionName = (say: Say, has: (key: string) => boolean, question: string): string => {
  const keys = [`utility.question.${question}`, `figure.${question}`];
  return say(keys.find((key) => has(key)) ?? question);
};

/**
 * The words of a book's checks.
 *
 * Cost     O(size of the book) once, for the names of its things
 */
export const checkWords = (book: Book, say: Say, has: (key: string) => boolean): CheckWords => {
  const places = new Map(tagsOf(book).map(({ tag, path }: TagPlace) => [tag, path]));
  const thing = (tag: string): string => {
    const path = places.get(tag);
    const name = path === undefined ? undefined : valueAt(book, `${path}/name`);
    return typeof name === 'string' && name !== tag ? `${name} ${tag}` : tag;
  };
  const partsOf = ({ id, on, parts, question, name }: Check): Parts => {
    const [a = name ?? id, b = '', c = ''] = on.map(thing);
    const asked = question === undefined ? '' : questionName(say, has, question);
    const of = on.length === 0 ? asked : say('utility.of', { name: asked, of: a });
    const { category, ...rest } = parts;
    const how = category === undefined ? '' : say(`proof.category.${category}`);
    return { ...rest, category: how, a, b, c, question: of };
  };
  return {
    thing,
    name: (check) => check.name ?? say(`proof.sort.${check.sort}`, partsOf(check)),
    expected: (check) => say(`proof.expect.${check.sort}`, partsOf(check)),
  };
};
