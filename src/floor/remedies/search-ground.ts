import { type Book, type Patch, tryPatches } from '../../book/index.ts';
import { bookReader, type ReadBefore } from '../book-reader.ts';
import { type FindingAsked, floorAsked } from '../judge-floor.ts';
import { allFindings, type BookFindings } from './harms.ts';

/** What is tried on a floor. */
interface Trial {
  readonly floor: number;
  readonly patches: readonly Patch[];
  readonly noHour: boolean;
}

/** What all searches over one book share. */
export interface SearchGround {
  /** Every finding as it stands, worked out when the first remedy is found. */
  readonly all: () => BookFindings;
  /** What has been read of the book, once that was done. */
  readonly read: () => ReadBefore | undefined;
  /** A floor of the book with a patch: searches for what carries several findings try many of the same. */
  readonly after: (trial: Trial, before: ReadBefore) => FindingAsked;
}

export const searchGround = (book: Book, format: string | undefined): SearchGround => {
  let found: BookFindings | undefined;
  const tried = new Map<string, FindingAsked>();
  return {
    all: () => {
      found ??= allFindings(book, format);
      return found;
    },
    read: () => found?.read,
    after: ({ floor, patches, noHour }, before) => {
      const key = JSON.stringify([floor, patches]);
      const withHour = tried.get(`${key} hour`);
      // what has its hour too answers for what needs none
      const known = withHour ?? (noHour ? tried.get(key) : undefined);
      if (known !== undefined) return known;
      const asked = floorAsked(bookReader(tryPatches(book, patches), before), floor, format, { noHour });
      tried.set(noHour ? key : `${key} hour`, asked);
      return asked;
    },
  };
};
