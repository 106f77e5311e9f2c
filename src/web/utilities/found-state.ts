import { type Book, tryPatches } from '../../book/index.ts';
import { bookAsFound, type FoundReading, onTemporarySupply } from '../../floor/found/index.ts';
import { assessBook } from '../../floor/index.ts';
import type { Observed } from '../state/observed.ts';
import type { PageState } from '../state/page-state.ts';

/** What an assessment runs on. */
export const bases = ['promised', 'found', 'temporary'] as const;
export type Basis = (typeof bases)[number];

export const hasTemporary = (book: Book | undefined): boolean =>
  (book?.floors ?? []).some(({ temporarySupply }) => temporarySupply !== undefined);

/** The book as it is assessed, and the places of it that are not as they were promised. */
export const bookOn = (
  book: Book,
  basis: Basis,
  readings: readonly FoundReading[],
): { readonly book: Book; readonly laid: readonly string[] } => {
  if (basis === 'found') {
    const found = bookAsFound(book, readings);
    return { book: found.book, laid: found.laid.map(({ path }) => path) };
  }
  if (basis === 'promised') return { book, laid: [] };
  const floors = book.floors ?? [];
  const laid = floors.flatMap((floor, i) =>
    floor.temporarySupply === undefined ? [] : [`/floors/${i}/supply`],
  );
  return { book: onTemporarySupply(book), laid };
};

/**
 * The state of the page with its assessment on another basis. What is written goes into the book as it was promised:
 * nothing that was read ever gets there.
 */
export const stateOn = (
  under: Observed<PageState>,
  basis: Basis,
  readings: readonly FoundReading[],
): Observed<PageState> => {
  let raw: PageState | undefined;
  let seen: PageState | undefined;
  const on = (now: PageState): PageState => {
    const base = now.typing?.book ?? now.book;
    if (base === undefined) return now;
    const same = base === (raw?.typing?.book ?? raw?.book) && now.trial === raw?.trial;
    if (same && seen?.shown !== undefined && seen.assessment !== undefined && seen.laid !== undefined) {
      return { ...now, shown: seen.shown, assessment: seen.assessment, laid: seen.laid };
    }
    const { book, laid } = bookOn(base, basis, readings);
    // a remedy on trial lies over what was found
    const shown = now.trial === undefined ? book : tryPatches(book, now.trial.patch);
    const { shown: before, assessment } = seen ?? {};
    const earlier =
      before === undefined || assessment === undefined ? {} : { earlier: { book: before, assessment } };
    return { ...now, shown, assessment: assessBook(shown, earlier), laid };
  };
  const get = (): PageState => {
    const now = under.get();
    if (now !== raw || seen === undefined) {
      seen = on(now);
      raw = now;
    }
    return seen;
  };
  return {
    get,
    set: (next) => {
      const before = get();
      if (next === before) return;
      const { laid: _laid, shown, assessment: _assessment, ...rest } = next;
      // a command that worked out anew what is shown did so from the book; any other only carried it along
      const own = shown === before.shown ? under.get() : next;
      under.set({
        ...rest,
        ...(own.shown === undefined ? {} : { shown: own.shown }),
        ...(own.assessment === undefined ? {} : { assessment: own.assessment }),
      });
    },
    subscribe: under.subscribe,
  };
};
