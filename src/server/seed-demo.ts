import type { Store } from '../store/store.ts';

/** Identifier of the demo book; one store has it once. */
export const demoBook = 'flagon-line';

/**
 * Puts the demo book into a store that has no book at all. Books are never removed, so this happens once:
 * an edited demo stays as it was edited.
 */
export const seedDemo = async (store: Store, text: string, at: string): Promise<boolean> => {
  if ((await store.listBooks()).length > 0) return false;
  const made = await store.createBook({
    book: demoBook,
    text,
    author: 'Twinfloor',
    reason: 'demonstration',
    at,
  });
  return made.ok;
};
