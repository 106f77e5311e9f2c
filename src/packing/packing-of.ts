import type { Book } from '../book/index.ts';
import type { Assessment, FloorAssessment } from '../floor/assessment.ts';
import { checksOfBook } from '../proof/checks-of-book.ts';
import { proofContext } from '../proof/proof-context.ts';
import type { Envelope } from '../record/envelope.ts';
import { type Claim, claimsOf } from './claims.ts';
import { type Lift, liftsOf } from './lifts.ts';
import { type PackingList, packingList } from './packing-list.ts';
import { type VisitTool, visitTools } from './visit-tools.ts';

/** Everything that is told of what travels to one floor. */
export interface Packing {
  readonly floor: FloorAssessment;
  readonly list: PackingList;
  readonly lifts: readonly Lift[];
  readonly claims: readonly Claim[];
  readonly tools: readonly VisitTool[];
}

/** What travels to a floor of an assessed book: crates, lifts, claims, and tools for its joins and checks. */
export const packingOf = (
  book: Book,
  assessment: Assessment,
  tag: string,
  records: readonly Envelope[] = [],
): Packing => {
  const context = proofContext(book, assessment, tag);
  return {
    floor: context.here,
    list: packingList(book),
    lifts: liftsOf(book, context.here),
    claims: claimsOf(book, records),
    tools: visitTools(book, checksOfBook(context)),
  };
};
