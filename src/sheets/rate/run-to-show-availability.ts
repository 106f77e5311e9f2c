import { normalQuantile } from '../../statistics/normal.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { availabilityVariance } from './availability-shown.ts';
import { assumedConfidence, stopTimes } from './trial-bounds.ts';
import { renewal } from './trial-sources.ts';

interface RunInputs {
  readonly betweenStops: number;
  readonly clearing: number;
  readonly agreed: number;
  readonly confidence: number;
  readonly passing: number;
}

interface Run {
  readonly margin: number;
  readonly duration: number;
  readonly stops: number;
}

const marginOf = ({ betweenStops, clearing, agreed }: RunInputs): number =>
  betweenStops / (betweenStops + clearing) - agreed;

/**
 * Length of a run that shows an agreed availability to a line which has a better one.
 *
 * Method   T = (z_P + z_beta)^2 2 U^2 D^2/((U + D)^3 delta^2),  delta = U/(U + D) - A0
 * Symbols  U     betweenStops  scalar  s   > 0, mean running time that the line is thought to have
 *          D     clearing      scalar  s   > 0, mean time of a stop
 *          A0    agreed        ratio       < U/(U + D)
 *          P     confidence    scalar      one-sided
 *          beta  passing       scalar      chance with which such a line is to pass; 0.5: as often as not
 * Returns  margin delta; length, stops and all, s; stops to be expected in it
 * Assumes  times vary like the gaps between chance events; many stops in the run
 * Cost     O(1)
 * Source   alternating renewal process
 */
export const runToShowAvailability = (i: RunInputs): Run => {
  const margin = marginOf(i);
  const z = normalQuantile(i.confidence) + normalQuantile(i.passing);
  const duration = (z * z * availabilityVariance(i.betweenStops, i.clearing)) / (margin * margin);
  return { margin, duration, stops: duration / (i.betweenStops + i.clearing) };
};

/** Stops under which the normal law is too crude for the length. */
const fewStopsExpected = 10;

export const runToShowAvailabilitySheet = defineSheet<RunInputs, Run>({
  id: 'rate/run-to-show-availability',
  version: 1,
  inputs: {
    betweenStops: numberField('time', 'U', stopTimes),
    clearing: numberField('time', 'D', stopTimes),
    agreed: numberField('ratio', 'A_0', { least: 0, most: 0.999999 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
    passing: numberField('ratio', '\\beta', { least: 0.5, most: 0.999999, assumed: 0.5 }),
  },
  outputs: {
    margin: numberField('ratio', '\\delta'),
    duration: numberField('time', 'T'),
    stops: numberField('count', 'k'),
  },
  formula: [
    '\\delta = \\frac{U}{U + D} - A_0, \\quad T = \\frac{(z_P + z_\\beta)^2\\, 2\\, U^2 D^2}{(U + D)^3\\, \\delta^2}, \\quad k = \\frac{T}{U + D}',
  ],
  limits: [
    { code: 'AVAILABILITY_NORMAL', broken: (_, { stops }) => stops < fewStopsExpected },
    { code: 'RUN_PASSES_BY_HALVES', broken: ({ passing }) => passing === 0.5 },
  ],
  sources: [renewal],
  check: (i) =>
    marginOf(i) > 0
      ? []
      : [
          {
            code: 'AVAILABILITY_BELOW_AGREED',
            path: 'agreed',
            given: i.agreed,
            allowed: `< ${i.betweenStops / (i.betweenStops + i.clearing)}`,
          },
        ],
  compute: runToShowAvailability,
});
