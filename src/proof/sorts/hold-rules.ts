import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** One good row says little of a rule that must hold every time: three in a row, common practice. */
const rows = 3;

/** A station that waits really waits: shown with a starved supply, so that the wait is long enough to be seen. */
export const holdRuleChecks = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.holdRules ?? []).map(({ tag, holds, while: holder, until }, i) =>
    makeCheck('holdRule', [tag, holds, holder], 'product', {
      id: `holdRule ${tag}`,
      point: 'witness',
      missFails: true,
      readings: rows,
      places: [`/line/holdRules/${i}`],
      parts: { until: until ?? 'release' },
    }),
  );
