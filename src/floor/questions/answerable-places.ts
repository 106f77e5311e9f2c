import { type Book, type Form, fieldAt, pointerOf, stepsOf, tagsOf, valueAt } from '../../book/index.ts';

/** What the answer to a question is; a part takes more than one answer and is filled in on the page. */
export type Takes = 'quantity' | 'choice' | 'claim' | 'number' | 'text' | 'part';

export interface Taken {
  readonly takes: Takes;
  readonly choices?: readonly string[];
}

/** What can be written at a place. */
export const takenAt = (book: Book, path: string): Taken => {
  const form = fieldAt(path);
  switch (form?.is) {
    case 'quantity':
    case 'claim':
    case 'number':
      return { takes: form.is };
    case 'word':
      return { takes: 'choice', choices: form.words.map(String) };
    case 'text': {
      if (form.tag === undefined || !('refersTo' in form.tag)) return { takes: 'text' };
      const { refersTo } = form.tag;
      const choices = tagsOf(book)
        .filter(({ thing }) => refersTo === 'any' || refersTo.includes(thing))
        .map(({ tag }) => tag);
      return choices.length === 0 ? { takes: 'text' } : { takes: 'choice', choices };
    }
    default:
      return { takes: 'part' };
  }
};

/** More than these and the person who answers had better see the whole part. */
const mostPlaces = 4;

const isTag = (form: Form | undefined): boolean => form?.is === 'text' && form.tag !== undefined;

/** Places inside a form, none where they had better not be asked one by one. */
const inside = (form: Form, path: string): readonly string[] => {
  const at = (step: string | number): string => `${path}${pointerOf([step])}`;
  switch (form.is) {
    case 'quantity':
    case 'word':
    case 'claim':
    case 'number':
    case 'text':
      return [path];
    case 'row':
      return form.of.flatMap((field, i) => inside(field, at(i)));
    // what it is must be known before anything else can be asked of it
    case 'choice':
      return [...form.options.values()].some((each) => each.is === 'part' && each.must.length > 1)
        ? []
        : [at(form.by)];
    case 'part': {
      const must = form.must.map((key) => [key, form.fields.get(key)] as const);
      if (must.some(([, field]) => isTag(field))) return [];
      const fields = must.length > 0 ? must : [...form.fields].filter(([, { is }]) => is !== 'text');
      return fields.flatMap(([key, field]) => (field === undefined ? [] : inside(field, at(key))));
    }
    default:
      return [];
  }
};

/**
 * The places at which an answer can be written where all of a part is missing: `/floors/1/power/readings` is asked as
 * the three voltages of a first reading, `/floors/1/supply/source` as its kind.
 *
 * Returns  the place itself where it takes an answer, or where its part wants to be seen as a whole
 * Cost     O(fields of the part)
 */
export const answerablePlaces = (book: Book, path: string): readonly string[] => {
  const form = fieldAt(path);
  if (form === undefined) return [path];
  const there = valueAt(book, path);
  let places: readonly string[] = [];
  if (form.is === 'list') {
    const next = Array.isArray(there) ? there.length : 0;
    places = inside(form.of, pointerOf([...stepsOf(path), next]));
  } else if (there === undefined) {
    places = inside(form, path);
  }
  return places.length === 0 || places.length > mostPlaces ? [path] : places;
};
