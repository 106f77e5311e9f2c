import type { Book } from '../book/index.ts';
import { type EnergisingLack, faultsOfJoins, joinStates, lacksOfBoxes, laidJoins } from '../joins/index.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Lack } from './lack.ts';
import { isPassed, type ProvedCheck } from './proved-check.ts';

/** Lacks of joins that a check of the same floor answers too: nobody reads a bond twice for two lists. */
const answered = (checks: readonly ProvedCheck[]) => {
  const passed = new Set(checks.filter(isPassed).map(({ check }) => check.id));
  return (why: EnergisingLack, join: string): boolean =>
    (why === 'bond' && passed.has(`bond ${join}`)) || (why === 'insulation' && passed.has('insulation'));
};

/**
 * What of the joins keeps the line from being energised: one lack for each box and reason, so that what comes up in a box
 * after somebody signed is unnamed by that signature.
 *
 * Cost     O(joins + records); nothing where the book has no joins
 */
export const joinLacks = (
  book: Book,
  checks: readonly ProvedCheck[],
  records: readonly Envelope[],
): readonly Lack[] => {
  const joins = laidJoins(book);
  if (joins.length === 0) return [];
  const isAnswered = answered(checks);
  return lacksOfBoxes(joins, joinStates(records), faultsOfJoins(joins, book)).flatMap(({ box, lacks }) => {
    const open = lacks.filter(({ why, join }) => !isAnswered(why, join));
    return [...new Set(open.map(({ why }) => why))].map(
      (why): Lack => ({
        id: box === undefined ? why : `${box} ${why}`,
        sort: 'join',
        holder: 'builder',
        joins: open.filter((one) => one.why === why).map(({ join }) => join),
      }),
    );
  });
};
