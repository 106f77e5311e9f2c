import { pointerOf } from './pointer.ts';

/** One place at which two books differ. */
export interface BookChange {
  readonly path: string;
  /** Absent where nothing stood there. */
  readonly from?: unknown;
  /** Absent where nothing stands there any more. */
  readonly to?: unknown;
}

const isPart = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Something with a tag is the same thing wherever it stands in its list. */
const tagOf = (value: unknown): unknown => (isPart(value) ? value.tag : undefined);

const differing = (from: unknown, to: unknown, steps: readonly (string | number)[]): BookChange[] => {
  if (Object.is(from, to)) return [];
  const path = pointerOf(steps);
  if (!isPart(from) || !isPart(to) || Array.isArray(from) !== Array.isArray(to)) {
    return [{ path, ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) }];
  }
  // a quantity with its standing is one value
  if ('value' in from && 'value' in to) {
    return JSON.stringify(from) === JSON.stringify(to) ? [] : [{ path, from, to }];
  }
  // a list in which things came, went or moved is told as a whole
  if (Array.isArray(from) && Array.isArray(to)) {
    const same = from.length === to.length && from.every((each, i) => tagOf(each) === tagOf(to[i]));
    if (!same) return [{ path, from, to }];
  }
  return [...new Set([...Object.keys(from), ...Object.keys(to)])].flatMap((key) =>
    differing(from[key], to[key], [...steps, key]),
  );
};

/**
 * Where two books differ, by place.
 *
 * Method   part by part; a quantity with its standing counts as one value, a list whose things changed places as one
 * Symbols  from, to  books, or any data
 * Cost     O(size of the books)
 */
export const bookChanges = (from: unknown, to: unknown): readonly BookChange[] => differing(from, to, []);
