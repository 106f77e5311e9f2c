import { type Book, type Patch, pointerOf, stepsOf, tryPatches, valueAt } from '../../book/index.ts';

/** The way back of one change: what was not there goes again, with all that was made on the way to it. */
const inverseOf = (book: Book, { path, value, op }: Patch): Patch => {
  const steps = stepsOf(path);
  for (let depth = 1; depth < steps.length; depth += 1) {
    const above = pointerOf(steps.slice(0, depth));
    if (valueAt(book, above) === undefined) return { path: above };
  }
  const parent = valueAt(book, pointerOf(steps.slice(0, -1)));
  if (!Array.isArray(parent)) return { path, value: valueAt(book, path) };
  const index = steps.at(-1) === '-' ? parent.length : Number(steps.at(-1));
  const at = pointerOf([...steps.slice(0, -1), index]);
  const before: unknown = parent[index];
  if (op === 'remove' || value === undefined) return { path: at, op: 'insert', value: before };
  return op === 'insert' || index === parent.length
    ? { path: at, op: 'remove' }
    : { path: at, value: before };
};

/**
 * The way back of changes, each beside the one that it takes back: to be applied in the other order.
 *
 * Cost     O(changes times the length of their paths)
 */
export const inversePatches = (book: Book, forward: readonly Patch[]): readonly Patch[] => {
  let at = book;
  return forward.map((patch) => {
    const back = inverseOf(at, patch);
    at = tryPatches(at, [patch]);
    return back;
  });
};
