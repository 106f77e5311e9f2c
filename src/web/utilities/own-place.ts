import { type Book, memberKey, memberName, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import type { Words } from '../words/words.ts';

/** What people call the thing at a place, or nothing. */
const calledAt = (book: Book, path: string): string | undefined => {
  const { name, tag } = (valueAt(book, path) ?? {}) as { name?: unknown; tag?: unknown };
  return typeof name === 'string' ? name : typeof tag === 'string' ? tag : undefined;
};

/**
 * A place of a floor, the line or the agreement as one asks for it: `feeder, length`, `wash pump, shaft power`,
 * `reading 1, L2–L3`. The floor and the utility stand above it and are left out where more is left to say.
 */
export const ownPlace = (words: Words, book: Book, path: string): string => {
  const told: string[] = [];
  const steps = stepsOf(path);
  for (const [depth, step] of steps.entries()) {
    const within = steps.slice(0, depth);
    const at = pointerOf([...within, step]);
    if (!/^\d+$/.test(step)) {
      told.push(words.fieldName(at));
      continue;
    }
    const list = words.fieldName(`/${memberKey(within.at(-1) ?? '')}`);
    const called = calledAt(book, at) ?? memberName([...within, step]);
    told.pop();
    told.push(called ?? words.say('utilities.member', { list, n: Number(step) + 1 }));
  }
  // the floor, the line or the agreement; then the utility
  const [, ...inside] = told;
  const [, ...deep] = inside;
  return (path.startsWith('/floors/') && deep.length > 1 ? deep : inside).join(', ');
};
