import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

const lost = { point: 'hold', missFails: true } as const;

/** What the line does when power or air fails and comes back: nothing may start by itself. */
export const lostSupplyChecks = ({ book }: ProofContext): readonly Check[] => [
  ...((book.line?.drives ?? []).length > 0 ? [makeCheck('powerLoss', [], 'stops', lost)] : []),
  ...((book.line?.airDrops ?? book.line?.cylinders ?? []).length > 0
    ? [makeCheck('airLoss', [], 'stops', lost)]
    : []),
];
