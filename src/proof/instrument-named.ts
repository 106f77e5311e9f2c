import type { Book } from '../book/index.ts';

type Instrument = NonNullable<NonNullable<Book['line']>['instruments']>[number];

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

/**
 * The instrument of a book that a text means: by its tag, else by its name, however that is spaced and in whatever case.
 *
 * Returns  nothing where two bear the name, since neither is meant then
 */
export const instrumentNamed = (instruments: readonly Instrument[], text: string): Instrument | undefined => {
  const byTag = instruments.find(({ tag }) => tag === text.trim());
  if (byTag !== undefined) return byTag;
  const wanted = plain(text);
  const named = instruments.filter(({ name }) => name !== undefined && plain(name) === wanted);
  return named.length === 1 ? named[0] : undefined;
};
