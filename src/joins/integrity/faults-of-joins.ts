import type { Book } from '../../book/index.ts';
import type { LaidJoin } from '../laid-join.ts';
import { differingEnds } from './differing-ends.ts';
import type { JoinFault } from './fault.ts';
import { loneSections } from './lone-sections.ts';
import { missingBonds } from './missing-bonds.ts';
import { missingEnds } from './missing-ends.ts';
import { notDrained } from './not-drained.ts';
import { sameEnds } from './same-ends.ts';
import { sharedTerminals } from './shared-terminals.ts';
import { usedTwice } from './used-twice.ts';
import { wrongColours } from './wrong-colours.ts';

/**
 * Everything that does not fit together in the list of joins.
 *
 * Symbols  joins  those of the book, laid by `laidJoins`
 * Returns  faults, each with both ends of the joins that it is about
 * Cost     O(joins + things)
 */
export const faultsOfJoins = (joins: readonly LaidJoin[], book: Book): readonly JoinFault[] => [
  ...missingEnds(joins),
  ...sameEnds(joins),
  ...sharedTerminals(joins, book),
  ...usedTwice(joins),
  ...differingEnds(joins),
  ...wrongColours(joins, book.agreement?.conductorColours),
  ...missingBonds(joins, book),
  ...loneSections(joins, book),
  ...notDrained(joins, book),
];
