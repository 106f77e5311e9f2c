import { patchBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import type { Page } from './page.ts';

/** Rounds after which the browser has compiled what a key sets going, and the pause between two of them. */
const rounds = 40;
const pause = 40;

/**
 * Works the book out a few times while nobody types. A browser compiles code only once it has run often: without this
 * the first keys of the day would wait for it.
 */
export const warmUp = (page: Page, left = rounds): void => {
  const { book, typing } = page.state.get();
  if (left === 0 || book === undefined) return;
  page.later(() => {
    if (typing === undefined) {
      const again = patchBook(book, []);
      // the utilities too, which are only worked out when they are looked at
      if (again.ok) for (const floor of assessBook(again.value).floors) void floor.utilities;
    }
    warmUp(page, left - 1);
  }, pause);
};
