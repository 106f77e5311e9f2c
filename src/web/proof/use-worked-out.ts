import { startTransition, useEffect, useState } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

/** A book with its assessment. */
export interface WorkedOut {
  readonly book: Book;
  readonly assessment: Assessment;
}

/**
 * The open book with its assessment of which the utilities are worked out, floor by floor with a pause after each: a press or a key between
 * two of them is answered. Until then the two before.
 */
export const useWorkedOut = (): WorkedOut | undefined => {
  const page = usePage();
  const book = usePagePart((state) => state.book);
  const assessment = usePagePart((state) => state.assessment);
  const [done, setDone] = useState<WorkedOut>();
  useEffect(() => {
    if (book === undefined || assessment === undefined) return undefined;
    let over = false;
    const goOn = (floor: number): void => {
      if (over) return;
      if (floor === assessment.floors.length) {
        startTransition(() => setDone({ book, assessment }));
        return;
      }
      void assessment.floors[floor]?.utilities.findings;
      page.later(() => goOn(floor + 1), 0);
    };
    page.later(() => goOn(0), 0);
    return () => {
      over = true;
    };
  }, [page, book, assessment]);
  return done;
};
