import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, periods } from './bounds.ts';
import { definition } from './sources.ts';

/**
 * Time in which the heads of a station finish the bottles of one fill.
 *
 * Method   t = ceil(l/h) tau
 * Symbols  l    lanes      count   >= 1   bottles that come together
 *          h    heads      count   >= 1
 *          tau  perBottle  scalar  s      a head with one bottle
 * Returns  time, s
 * Assumes  heads work at the same time; a head takes its next bottle when all are done
 * Cost     O(1)
 * Source   definition
 */
export const headsTime = (lanes: number, heads: number, perBottle: number): number =>
  Math.ceil(lanes / heads) * perBottle;

/**
 * Rate of a station with several heads that is fed a fill at a time.
 *
 * Method   R = l/(ceil(l/h) tau); at most h/tau, reached where the heads go into the lanes without rest
 * Symbols  as in `headsTime`; tau > 0
 * Returns  rate, bottles a second
 * Assumes  always fed, never blocked, no stop: a ceiling
 * Cost     O(1)
 * Source   definition
 */
export const stationRate = (lanes: number, heads: number, perBottle: number): number =>
  lanes / headsTime(lanes, heads, perBottle);

/** Half a head would be rounded up in silence. */
const notWhole = (path: string, given: number): Problem[] =>
  Number.isInteger(given) ? [] : [{ code: 'STATION_NOT_WHOLE', path, given, allowed: '1, 2, 3 …' }];

interface StationRateInputs {
  readonly heads: number;
  readonly perBottle: number;
  readonly lanes: number;
}

export const stationRateSheet = defineSheet({
  id: 'rate/station-rate',
  version: 1,
  inputs: {
    heads: numberField('count', 'h', oneOrMore),
    perBottle: numberField('time', '\\tau', periods),
    lanes: numberField('count', 'l', { ...oneOrMore, assumed: 1 }),
  },
  outputs: { rate: numberField('rate', 'R'), setTime: numberField('time', 't') },
  formula: ['t = \\left\\lceil \\frac{l}{h} \\right\\rceil \\tau', 'R = \\frac{l}{t} \\le \\frac{h}{\\tau}'],
  limits: [
    {
      code: 'STATION_HEADS_IDLE',
      broken: ({ lanes, heads }) => lanes % heads !== 0,
      parts: ({ lanes, heads }) => ({ idle: Math.ceil(lanes / heads) * heads - lanes }),
    },
    { code: 'RATE_CEILING', broken: () => true },
  ],
  sources: [definition],
  check: ({ heads, lanes }) => [...notWhole('heads', heads), ...notWhole('lanes', lanes)],
  compute: ({ heads, perBottle, lanes }: StationRateInputs) => ({
    rate: stationRate(lanes, heads, perBottle),
    setTime: headsTime(lanes, heads, perBottle),
  }),
});
