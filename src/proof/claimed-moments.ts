import type { Problem } from '../quantity/problem.ts';
import type { Clocked } from '../record/clocked.ts';
import { byText } from '../record/heads.ts';
import { proofProblem } from './problems.ts';

/** When each record was written, as far as its device and its chain can tell. */
export interface ClaimedMoments {
  /** Earlier before later, of equal ones by id. */
  readonly sorted: <T extends { readonly id: string }>(some: readonly T[]) => readonly T[];
  /** Devices whose clock went back between two records of one chain: which of the two it was wrong at is not known. */
  readonly doubts: readonly Problem[];
}

/** The order of records by the moments that their devices claim, where no clock can turn a chain round. */
export const claimedMoments = ({ moments, doubts }: Pick<Clocked, 'moments' | 'doubts'>): ClaimedMoments => ({
  sorted: (some) => {
    // looked up once for each, not at every comparison
    const at = some.map(({ id }) => moments.get(id) ?? 0);
    return some
      .map((_, i) => i)
      .sort((a, b) => at[a]! - at[b]! || byText(some[a]!.id, some[b]!.id))
      .map((i) => some[i]!);
  },
  doubts: doubts.map(({ record, given, writer, before }) =>
    proofProblem('PROOF_CLOCK_BACK', `/records/${record}/deviceTime`, { given, parts: { writer, before } }),
  ),
});
