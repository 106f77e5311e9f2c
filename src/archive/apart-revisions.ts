import { byRevision, type RevisionMark } from '../book/by-revision.ts';

/**
 * The revisions of an archive that stand apart: of a number that another has too, or made from a text that none of the
 * number before holds. Which of them holds is said on the laptop that keeps the book, not here.
 */
export const apartRevisions = <T extends RevisionMark>(revisions: readonly T[]): readonly T[] => {
  const of = (number: number): readonly T[] => revisions.filter((one) => one.number === number);
  return revisions
    .filter(
      ({ number, follows }) =>
        of(number).length > 1 || (number > 1 && !of(number - 1).some(({ sha256 }) => sha256 === follows)),
    )
    .toSorted(byRevision);
};
