import type * as z from 'zod';
import type { Problem } from '../quantity/problem.ts';
import { type Form, formFor } from './form.ts';
import { formAt } from './form-at.ts';
import { nearestWord } from './nearest-word.ts';
import { pointerOf } from './pointer.ts';
import { problemOf, shown } from './problem-of.ts';
import { bookSchema } from './schema/book.ts';
import { valueAt } from './value-at.ts';

type Issue = z.core.$ZodIssue;
type Steps = readonly (string | number)[];

/** What is expected, in the words of the problems. */
const expected = (form: Form | undefined): readonly string[] => {
  switch (form?.is) {
    case 'quantity':
    case 'text':
      return ['text'];
    case 'number':
      return [form.whole ? 'whole number' : 'number'];
    case 'word':
      return form.words.map(String);
    case 'claim':
      return ['true', 'false'];
    case 'list':
    case 'row':
      return ['list'];
    case 'either':
      return form.of.flatMap(expected);
    case undefined:
      return [];
    default:
      return ['object'];
  }
};

const unknownKey = (steps: Steps, given: string, known: readonly string[], index: number): Problem => {
  const nearest = index < 200 ? nearestWord(given, known) : undefined;
  return nearest === undefined
    ? problemOf('BOOK_UNKNOWN_KEY', steps, { given: shown(given), allowed: known })
    : problemOf('BOOK_UNKNOWN_KEY_NEAR', steps, { given: shown(given), parts: { nearest } });
};

const quantityKeys = ['value', 'spread', 'standing', 'by', 'on'];

const problemsOf = (data: unknown, issue: Issue, before: Steps): readonly Problem[] => {
  const steps = [...before, ...(issue.path as Steps)];
  const value = valueAt(data, pointerOf(steps));
  const form = formAt(data, steps);
  if (issue.code === 'unrecognized_keys') {
    const chosen = form === undefined ? undefined : formFor(form, value);
    const known =
      chosen?.is === 'part' ? [...chosen.fields.keys()] : chosen?.is === 'quantity' ? quantityKeys : [];
    return issue.keys.map((key, index) => unknownKey(steps, key, known, index));
  }
  if (form?.is === 'quantity') {
    // the reader of quantities says better what is wrong in one; only a key too many it lets pass
    const nested = issue.code === 'invalid_union' ? issue.errors.flat() : [];
    return nested
      .filter((each) => each.code === 'unrecognized_keys')
      .flatMap((each) => problemsOf(data, each, steps));
  }
  const given = shown(value);
  const around = formAt(data, steps.slice(0, -1));
  if (around?.is === 'choice' && around.by === steps.at(-1)) {
    const allowed = [...around.options.keys()];
    return [
      value === undefined
        ? problemOf('BOOK_MISSING', steps, { allowed })
        : problemOf('BOOK_NOT_ONE_OF', steps, { given, allowed }),
    ];
  }
  if (value === undefined) return [problemOf('BOOK_MISSING', steps, { allowed: expected(form) })];
  switch (issue.code) {
    case 'invalid_union': {
      const fits = issue.errors.find((each) => each.some(({ path }) => path.length > 0));
      if (fits !== undefined && typeof value === 'object')
        return fits.flatMap((each) => problemsOf(data, each, steps));
      return [problemOf('BOOK_NOT_ONE_OF', steps, { given, allowed: expected(form) })];
    }
    case 'invalid_value':
      return [problemOf('BOOK_NOT_ONE_OF', steps, { given, allowed: issue.values.map(String) })];
    case 'too_small':
    case 'too_big': {
      const bound = issue.code === 'too_small' ? `>= ${issue.minimum}` : `<= ${issue.maximum}`;
      const what = issue.origin === 'array' || issue.origin === 'string' ? ` (${issue.origin} length)` : '';
      return [problemOf('BOOK_OUT_OF_RANGE', steps, { given, allowed: `${bound}${what}` })];
    }
    default:
      return [problemOf('BOOK_WRONG_TYPE', steps, { given, allowed: expected(form) })];
  }
};

/** A text of another sort altogether would give one issue for each of its places. */
const mostIssues = 2000;

/**
 * Where data have not the form of a book: every place at once.
 *
 * Problems BOOK_MISSING, BOOK_WRONG_TYPE, BOOK_NOT_ONE_OF, BOOK_UNKNOWN_KEY, BOOK_UNKNOWN_KEY_NEAR, BOOK_OUT_OF_RANGE
 * Cost     O(size of the data)
 */
export const shapeProblems = (data: unknown): readonly Problem[] => {
  let parsed: ReturnType<typeof bookSchema.safeParse>;
  try {
    parsed = bookSchema.safeParse(data);
  } catch (thrown) {
    // the reader of schemas hands issues on as arguments of a call, and there is a limit to these
    if (!(thrown instanceof RangeError)) throw thrown;
    return [problemOf('BOOK_FURTHER_PROBLEMS', [], { given: '100000' })];
  }
  return parsed.success
    ? []
    : parsed.error.issues.slice(0, mostIssues).flatMap((issue) => problemsOf(data, issue, []));
};
