import type { SheetCase } from '../sheet-case.ts';
import { chainScript } from './trial-sources.ts';

const shorter = {
  relative: 1e-5,
  reason: 'the chain is solved for two short cycles and carried on to none, which leaves that much',
};

export const twoStationsInTimeCases: readonly SheetCase[] = [
  {
    name: 'stops of 10 cycles every 100, room for 20 cycles: 0.871370',
    source: chainScript,
    inputs: { betweenStops: 100, clearing: 10, rate: 1, room: 20 },
    outputs: {
      efficiency: 0.87136975,
      throughput: 0.87136975,
      withoutRoom: 0.83333333,
      endlessRoom: 0.90909091,
    },
    tolerance: shorter,
    notes: ['ROOM_STOPS_ONLY_RUNNING'],
  },
  {
    name: 'stops of 10 cycles every 20, room for 10 cycles: 0.560003',
    source: chainScript,
    inputs: { betweenStops: 20, clearing: 10, rate: 1, room: 10 },
    outputs: { efficiency: 0.560003, endlessRoom: 2 / 3 },
    tolerance: shorter,
  },
  {
    name: '675/h, stops of 1.5 min every half hour of running, 40 bottles between: 0.932595, 629.5/h',
    source: chainScript,
    inputs: { betweenStops: 1800, clearing: 90, rate: 675 / 3600, room: 40 },
    outputs: { efficiency: 0.93259508, throughput: (0.93259508 * 675) / 3600 },
    tolerance: shorter,
  },
];
