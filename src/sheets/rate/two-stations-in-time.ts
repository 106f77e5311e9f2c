import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { ratesAboveZero } from './bounds.ts';
import { places, stopTimes } from './trial-bounds.ts';

interface InTimeInputs {
  readonly betweenStops: number;
  readonly clearing: number;
  readonly rate: number;
  readonly room: number;
}

interface InTime {
  readonly efficiency: number;
  readonly throughput: number;
  readonly withoutRoom: number;
  readonly endlessRoom: number;
}

/**
 * Two stations alike with room between them, by the times of their stops.
 *
 * Method   1/E = 1 + D/U + (D/U)/(1 + (1/U + 1/D) N/(2 R))
 * Symbols  U  betweenStops  scalar  s      > 0, mean running time from stop to stop of each
 *          D  clearing      scalar  s      > 0, mean time of a stop
 *          R  rate          scalar  1/s    > 0, of each while it runs
 *          N  room          count          >= 0
 * Returns  efficiency; rate that comes through, 1/s; efficiency with no room and with endless room
 * Assumes  both alike; times vary like the gaps between chance events; an idle station does not stop
 * Cost     O(1)
 * Source   the line by cycles with ever shorter ones
 */
export const twoStationsInTime = ({ betweenStops, clearing, rate, room }: InTimeInputs): InTime => {
  const lost = clearing / betweenStops;
  const relief = 1 + ((1 / betweenStops + 1 / clearing) * room) / (2 * rate);
  const efficiency = 1 / (1 + lost + lost / relief);
  return {
    efficiency,
    throughput: efficiency * rate,
    withoutRoom: 1 / (1 + 2 * lost),
    endlessRoom: 1 / (1 + lost),
  };
};

const limitOfCycles: Source = {
  title: 'two-machine line in continuous time, limit of the line by cycles',
  place: 'derived; agrees with the Markov chain of ever shorter cycles',
  mark: 'computed',
};

export const twoStationsInTimeSheet = defineSheet<InTimeInputs, InTime>({
  id: 'rate/two-stations-in-time',
  version: 1,
  inputs: {
    betweenStops: numberField('time', 'U', stopTimes),
    clearing: numberField('time', 'D', stopTimes),
    rate: numberField('rate', 'R', ratesAboveZero),
    room: numberField('count', 'N', places),
  },
  outputs: {
    efficiency: numberField('ratio', 'E'),
    throughput: numberField('rate', 'E R'),
    withoutRoom: numberField('ratio', 'E_0'),
    endlessRoom: numberField('ratio', 'E_\\infty'),
  },
  formula: [
    '\\frac{1}{E} = 1 + \\frac{D}{U} + \\frac{D/U}{1 + \\left( \\frac{1}{U} + \\frac{1}{D} \\right) \\frac{N}{2 R}}',
    'E_0 = \\frac{1}{1 + 2 D/U}, \\quad E_\\infty = \\frac{1}{1 + D/U}',
  ],
  limits: [{ code: 'ROOM_STOPS_ONLY_RUNNING', broken: () => true }],
  sources: [limitOfCycles],
  compute: twoStationsInTime,
});
