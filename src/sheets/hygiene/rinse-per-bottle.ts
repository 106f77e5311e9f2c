import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, oneOrMore, times, timesAboveZero } from './bounds.ts';
import { derived } from './sources.ts';
import { wettedTime } from './wetted-time.ts';
import { wholeProblems } from './whole.ts';

interface RinseInputs {
  readonly flow: number;
  readonly index: number;
  readonly lanes: number;
  readonly dead: number;
  readonly timeOut: number;
}

/**
 * Rinse water that one bottle gets in a zone.
 *
 * Method   q = Q t/L
 * Symbols  Q  flow   scalar  m3/s  of the whole zone
 *          t  open   scalar  s     the index for a spray that runs on, `wettedTime` for a gated one
 *          L  lanes  count
 * Returns  volume, m3
 * Cost     O(1)
 * Source   balance
 */
export const rinseForBottle = (flow: number, open: number, lanes: number): number => (flow * open) / lanes;

export const rinsePerBottleSheet = defineSheet({
  id: 'hygiene/rinse-per-bottle',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', flows),
    index: numberField('time', '\\tau', timesAboveZero),
    lanes: numberField('count', 'L', oneOrMore),
    dead: numberField('time', 't_d', { ...times, assumed: 0 }),
    timeOut: numberField('time', 't_{\\max}', { ...timesAboveZero, assumed: 1e7 }),
  },
  outputs: {
    running: numberField('volume', 'q'),
    gated: numberField('volume', 'q_g'),
  },
  formula: [
    'q = \\frac{Q \\tau}{L}, \\quad q_g = \\frac{Q}{L} \\min ( \\max ( \\tau - t_d, 0 ), t_{\\max} )',
  ],
  limits: [{ code: 'RINSE_LESS_WHEN_FAST', broken: () => true }],
  sources: [derived],
  check: ({ lanes }) => wholeProblems({ lanes }),
  compute: ({ flow, index, lanes, dead, timeOut }: RinseInputs) => ({
    running: rinseForBottle(flow, index, lanes),
    gated: rinseForBottle(flow, wettedTime(index, dead, timeOut), lanes),
  }),
});
