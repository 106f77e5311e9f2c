import { type Book, tagPath, valueAt } from '../../book/index.ts';

/** The station at which a thing is found: itself, the one that it is part of, or the one that it names. */
export const stationWith = (book: Book, tag: string): string | undefined => {
  const path = tagPath(book, tag);
  if (path === undefined) return undefined;
  const [, within] = /^(\/line\/stations\/\d+)(?:\/|$)/.exec(path) ?? [];
  const named = within === undefined ? valueAt(book, `${path}/station`) : valueAt(book, `${within}/tag`);
  return typeof named === 'string' ? named : undefined;
};
