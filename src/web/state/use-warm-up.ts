import { useEffect, useRef } from 'react';
import { patchBook } from '../../book/index.ts';
import { assessBook } from '../../floor/index.ts';
import type { Page } from './page.ts';
import { usePage } from './page-context.ts';

/** Rounds after which the browser has compiled what a key sets going, and the pause between two of them. */
const rounds = 24;
const pause = 40;
/** First the page itself is drawn to its end, and who came for one look is gone again. */
const rest = 1_500;

const workOut = (page: Page): void => {
  const { book, typing, assessment } = page.state.get();
  if (book === undefined || typing !== undefined) return;
  const again = patchBook(book, []);
  const floors = [...(assessment?.floors ?? []), ...(again.ok ? assessBook(again.value).floors : [])];
  // the utilities too, which are only worked out when they are looked at: other pages find those of the book at hand done
  for (const floor of floors) void floor.utilities.findings;
};

/**
 * Works the book out a few times while nobody types. A browser compiles code only once it has run often: without this
 * the first keys of the day would wait for it. A page that is only read is left in peace.
 */
export const useWarmUp = (isWritten: boolean): void => {
  const page = usePage();
  const left = useRef(rounds);
  useEffect(() => {
    let here = isWritten;
    const again = (after: number): void => {
      if (!here || left.current === 0) return;
      page.later(() => {
        if (!here) return;
        workOut(page);
        left.current -= 1;
        again(pause);
      }, after);
    };
    again(rest);
    return () => {
      here = false;
    };
  }, [page, isWritten]);
};
