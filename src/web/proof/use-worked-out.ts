import { startTransition, useEffect, useState } from 'react';
import type { Book } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { workOutUtilities } from '../state/work-out-utilities.ts';
import { shownFloor } from './shown-floor.ts';

/** A book with its assessment. */
export interface WorkedOut {
  readonly book: Book;
  readonly assessment: Assessment;
}

/**
 * The open book with its assessment, once the utilities are worked out of the floor that is shown and of the one that the line
 * was built on, whose proofs it may take over; those of the others follow. Until then the two before.
 */
export const useWorkedOut = (chosen: unknown): WorkedOut | undefined => {
  const page = usePage();
  const book = usePagePart((state) => state.book);
  const assessment = usePagePart((state) => state.assessment);
  const [done, setDone] = useState<WorkedOut>();
  useEffect(() => {
    if (book === undefined || assessment === undefined) return undefined;
    const { floors } = assessment;
    const shown = shownFloor(floors, chosen);
    const isWanted = (floor: (typeof floors)[number]): boolean =>
      floor === shown || floor.role === 'built on';
    let giveUp = workOutUtilities(page, floors.filter(isWanted), () => {
      startTransition(() =>
        setDone((known) => (known?.assessment === assessment ? known : { book, assessment })),
      );
      giveUp = workOutUtilities(page, floors);
    });
    return () => giveUp();
  }, [page, book, assessment, chosen]);
  return done;
};
