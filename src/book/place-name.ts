import { memberKey, memberName } from './member-name.ts';
import { placeInList, pointerOf, stepsOf } from './pointer.ts';
import { valueAt } from './value-at.ts';

/** One part of the name of a place; its words are made at the edge. */
export type PlacePart =
  /** A thing by the name that people gave it; the tag where it has one. */
  | { readonly is: 'thing'; readonly name: string; readonly tag?: string }
  /** A key of the book. */
  | { readonly is: 'field'; readonly field: string }
  /** The how-manieth of a list, counted from one, where it has no name. */
  | { readonly is: 'place'; readonly of: string; readonly number: number };

/** Keys that only group others and that nobody says. */
const silent = new Set(['line', 'floors', 'supply']);

const text = (value: unknown): string | undefined =>
  typeof value === 'string' && value !== '' ? value : undefined;

/**
 * What people call a place of a book: `/floors/1/supply/run/0/bore` is Larkmoor, run, 2 in run, bore.
 *
 * Returns  parts in order; a list is named only where its members have no tag
 * Cost     O(length of the path)
 */
export const placeName = (book: unknown, path: string): readonly PlacePart[] => {
  const steps = stepsOf(path);
  const parts: PlacePart[] = [];
  for (const [depth, step] of steps.entries()) {
    const at = valueAt(book, pointerOf(steps.slice(0, depth)));
    // a list that is not there yet has members too
    const index = step === '-' ? (Array.isArray(at) ? at.length : 0) : placeInList(step);
    if (index === undefined) {
      const next = steps[depth + 1];
      const inner = valueAt(book, pointerOf(steps.slice(0, depth + 2)));
      const member = next !== undefined && (next === '-' || placeInList(next) !== undefined);
      const named = member && text(valueAt(inner, '/tag')) !== undefined;
      const numbered = member && text(valueAt(inner, '/name')) === undefined;
      if (!silent.has(step) && !named && !numbered) parts.push({ is: 'field', field: step });
      continue;
    }
    const member = valueAt(book, pointerOf(steps.slice(0, depth + 1)));
    const tag = text(valueAt(member, '/tag'));
    const name = text(valueAt(member, '/name')) ?? tag ?? memberName(steps.slice(0, depth + 1));
    if (name !== undefined) parts.push({ is: 'thing', name, ...(tag === undefined ? {} : { tag }) });
    else parts.push({ is: 'place', of: memberKey(steps[depth - 1] ?? ''), number: index + 1 });
  }
  return parts;
};
