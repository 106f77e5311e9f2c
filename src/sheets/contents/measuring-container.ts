import type { Problem } from '../../quantity/problem.ts';
import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type LotVerdict, lotVerdicts } from './lot-verdicts.ts';
import {
  measuringContainerFactors,
  measuringContainerSample,
  measuringContainerTolerance,
} from './measuring-container-table.ts';
import { measuringContainers } from './rule-sources.ts';
import { isBelow } from './short-packages.ts';
import { labels, someVolumes } from './weighing-bounds.ts';

interface MeasuringContainerInputs {
  readonly capacity: number;
  readonly measured: readonly number[];
}

interface MeasuringContainerOutputs {
  readonly verdict: LotVerdict;
  readonly tolerance: number;
  readonly more: number;
  readonly mean: number;
  readonly spread: number;
  readonly upper: number;
  readonly lower: number;
  readonly largestSpread: number;
}

/**
 * Batch of bottles that are measuring containers, by 35 of them.
 *
 * Method   mean + 1.57 s <= C + T;  mean - 1.57 s >= C - T;  s <= 0.266 (2 T)
 * Symbols  capacity  scalar  m3, C, stated, nominal or brimful
 *          measured  [n]     m3 at 20 degC, of the same kind; the first 35 count
 * Returns  verdict with all that it rests on
 * Cost     O(n)
 * Source   OIML R 138:2007, 5.1.2 and annex A
 */
const judgeContainers = ({ capacity, measured }: MeasuringContainerInputs): MeasuringContainerOutputs => {
  const tolerance = measuringContainerTolerance(capacity)!;
  const judged = measured.slice(0, measuringContainerSample);
  const { mean, sd = 0 } = univariate(judged);
  const upper = mean + measuringContainerFactors.spread * sd;
  const lower = mean - measuringContainerFactors.spread * sd;
  const largestSpread = measuringContainerFactors.spreadShare * 2 * tolerance;
  const more = measuringContainerSample - judged.length;
  const verdict = (): LotVerdict => {
    if (more > 0) return 'take more';
    const outside =
      isBelow(capacity + tolerance, upper) ||
      isBelow(lower, capacity - tolerance) ||
      isBelow(largestSpread, sd);
    return outside ? 'reject' : 'accept';
  };
  return { verdict: verdict(), tolerance, more, mean, spread: sd, upper, lower, largestSpread };
};

const unreached = ({ capacity }: MeasuringContainerInputs): readonly Problem[] =>
  measuringContainerTolerance(capacity) === undefined
    ? [{ code: 'CONTAINER_NOT_REACHED', path: 'capacity', given: capacity, allowed: '50 mL to 5 L' }]
    : [];

export const measuringContainerSheet = defineSheet<MeasuringContainerInputs, MeasuringContainerOutputs>({
  id: 'contents/measuring-container',
  version: 1,
  inputs: {
    capacity: weighedField('volume', 'C', labels),
    measured: weighedList('volume', 'C_i', { ...someVolumes, fewest: 2 }),
  },
  outputs: {
    verdict: choiceField<LotVerdict>('\\text{verdict}', lotVerdicts),
    tolerance: weighedField('volume', 'T'),
    more: numberField('count', '35 - n_0'),
    mean: weighedField('volume', '\\bar C'),
    spread: weighedField('volume', 's'),
    upper: weighedField('volume', '\\bar C + 1.57 s'),
    lower: weighedField('volume', '\\bar C - 1.57 s'),
    largestSpread: weighedField('volume', 's_{\\max}'),
  },
  formula: [
    '\\bar C + 1.57\\, s \\le C + T, \\quad \\bar C - 1.57\\, s \\ge C - T, \\quad s \\le 0.266\\, (2 T)',
  ],
  limits: [
    { code: 'RULE_AUTHORITY', broken: () => true },
    {
      code: 'CONTAINER_SURPLUS',
      broken: ({ measured }) => measured.length > measuringContainerSample,
    },
    {
      // the maker may not use the tolerance systematically: 2 standard errors to one side of the stated one
      code: 'CONTAINER_ONE_SIDED',
      broken: ({ capacity, measured }, { mean, spread }) =>
        Math.abs(mean - capacity) > (2 * spread) / Math.sqrt(Math.min(measured.length, 35)),
    },
  ],
  sources: [measuringContainers],
  check: unreached,
  compute: judgeContainers,
});
