import { valueAt } from '../../book/index.ts';
import { rangeOf } from '../../floor/utilities/drains/drain-quality.ts';
import type { Check } from '../check.ts';
import type { Limit } from '../limit.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** At the begin, in the middle and at the end of letting a bath go: common practice. */
const overTheDump = 3;

/** What goes into the drains of the site: no more acid or caustic than it may. */
export const drainChecks = (c: ProofContext): readonly Check[] => {
  if (c.here.role === 'built on') return [];
  const path = `/floors/${c.hereIndex}/drains/acidity`;
  const said = valueAt(c.book, path);
  const range = typeof said === 'string' ? rangeOf(said) : undefined;
  const [low, high] = range ?? [];
  const bound = (sense: Limit['sense'], value: number | undefined): Limit => ({
    sense,
    figure: {
      id: 'drainAcidity',
      kind: 'acidity',
      path,
      assumed: [],
      missing: value === undefined ? [path] : [],
      ...(value === undefined ? {} : { value }),
    },
  });
  return c.here.utilities.findings
    .filter(({ question }) => question === 'drainAcidity')
    .map((finding) =>
      makeCheck('drainAcidity', [finding.of ?? finding.tieIn ?? ''].filter(Boolean), 'wet', {
        point: 'witness',
        instrument: 'phMeter',
        readings: overTheDump,
        limits: [bound('least', low), bound('most', high)],
        missing: range === undefined ? [path] : [],
        foreseen: finding.verdict,
        places: [...c.asked(finding).places, path],
      }),
    );
};
