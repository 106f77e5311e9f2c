import { type Book, stepsOf, valueAt } from '../../book/index.ts';
import type { Words } from '../words/words.ts';

/** What people call the thing at a place, or nothing. */
const calledAt = (book: Book, path: string): string | undefined => {
  const { name, tag } = (valueAt(book, path) ?? {}) as { name?: unknown; tag?: unknown };
  return typeof name === 'string' ? name : typeof tag === 'string' ? tag : undefined;
};

/**
 * A place of a floor, the line or the agreement as one asks for it: `feeder, length`, `wash pump, shaft power`,
 * `readings 1, between 2`. The floor and the utility stand above it and are left out where more is left to say.
 */
export const ownPlace = (words: Words, book: Book, path: string): string => {
  const told: string[] = [];
  let at = '';
  for (const step of stepsOf(path)) {
    at += `/${step}`;
    if (!/^\d+$/.test(step)) {
      told.push(words.fieldName(at));
      continue;
    }
    const called = calledAt(book, at);
    const list = told.pop() ?? '';
    told.push(called ?? words.say('utilities.member', { list, n: Number(step) + 1 }));
  }
  // the floor, the line or the agreement; then the utility
  const [, ...inside] = told;
  const [, ...deep] = inside;
  return (path.startsWith('/floors/') && deep.length > 1 ? deep : inside).join(', ');
};
