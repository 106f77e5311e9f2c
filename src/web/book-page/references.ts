import { type Patch, pointerOf, stepsOf, tagsOf, valueAt } from '../../book/index.ts';
import { walk } from '../../book/walk.ts';
import { placeAt } from './place-at.ts';

/** Whether a place is another one or stands within it. */
export const isWithin = (path: string, outer: string): boolean =>
  path === outer || path.startsWith(`${outer}/`);

/** Every place of a book that refers to one of these tags. */
export const referencesTo = (book: unknown, tags: ReadonlySet<string>): readonly string[] => {
  const found: string[] = [];
  walk(book, {
    leaf: (value, form, steps) => {
      if (form.is !== 'text' || form.tag === undefined || !('refersTo' in form.tag)) return;
      if (typeof value === 'string' && tags.has(value)) found.push(pointerOf(steps));
    },
  });
  return found;
};

/** The least that goes with a reference: the field, or the thing that cannot be without it. */
const goesWith = (book: unknown, path: string): string => {
  const steps = stepsOf(path);
  for (let depth = steps.length; depth > 1; depth -= 1) {
    const at = pointerOf(steps.slice(0, depth));
    if (placeAt(book, at)?.must === true) continue;
    // a list of which nothing is left is no longer said
    const list = valueAt(book, pointerOf(steps.slice(0, depth - 1)));
    const alone = Array.isArray(list) && list.length === 1 && typeof list[0] === 'string';
    return alone ? pointerOf(steps.slice(0, depth - 1)) : at;
  }
  return path;
};

export interface Removal {
  /** Places outside what is removed that refer into it. */
  readonly references: readonly string[];
  /** Takes the thing away, and with it everything that cannot stand without. */
  readonly patches: readonly Patch[];
}

/** Behind before in front, inner before outer: a removal then moves no place that is still to be removed. */
const fromBehind = (a: string, b: string): number => {
  const [one, other] = [stepsOf(a), stepsOf(b)];
  for (const [depth, step] of one.entries()) {
    const against = other[depth];
    if (against === undefined) return -1;
    if (step === against) continue;
    const [n, m] = [Number(step), Number(against)];
    return Number.isNaN(n) || Number.isNaN(m) ? against.localeCompare(step) : m - n;
  }
  return one.length < other.length ? 1 : 0;
};

/**
 * What it takes to remove a thing from a book.
 *
 * Method   whatever refers to a removed tag goes too, as little of it as can be: the field, or else the row or the
 *          thing that cannot be without; that may carry tags of its own, so it is repeated until nothing is added
 * Cost     O(size of the book) for each round
 */
export const removalOf = (book: unknown, path: string): Removal => {
  const named = tagsOf(book);
  const first = new Set(named.filter((each) => isWithin(each.path, path)).map(({ tag }) => tag));
  const references = referencesTo(book, first).filter((each) => !isWithin(each, path));
  let going: readonly string[] = [path];
  for (;;) {
    const tags = new Set(
      named.filter((each) => going.some((outer) => isWithin(each.path, outer))).map(({ tag }) => tag),
    );
    const more = referencesTo(book, tags)
      .filter((each) => !going.some((outer) => isWithin(each, outer)))
      .map((each) => goesWith(book, each));
    if (more.length === 0) break;
    going = [...new Set([...going, ...more])];
  }
  const outermost = going.filter((each) => !going.some((outer) => outer !== each && isWithin(each, outer)));
  return {
    references,
    patches: [...outermost].sort(fromBehind).map((each) => ({ path: each, op: 'remove' as const })),
  };
};
