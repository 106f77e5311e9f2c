import { startTransition, useEffect, useState } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { workOutUtilities } from '../state/work-out-utilities.ts';

/** A book with its assessment. */
export interface WorkedOut {
  readonly book: Book;
  readonly assessment: Assessment;
}

/**
 * The open book with its assessment of which the utilities are worked out. Until then the two before.
 */
export const useWorkedOut = (): WorkedOut | undefined => {
  const page = usePage();
  const book = usePagePart((state) => state.book);
  const assessment = usePagePart((state) => state.assessment);
  const [done, setDone] = useState<WorkedOut>();
  useEffect(() => {
    if (book === undefined || assessment === undefined) return undefined;
    return workOutUtilities(page, assessment, () => startTransition(() => setDone({ book, assessment })));
  }, [page, book, assessment]);
  return done;
};
