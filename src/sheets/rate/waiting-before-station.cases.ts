import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';
import { queueTheory } from './trial-sources.ts';

const chains: Source = {
  title: 'stationary state of the queue, solved as linear equations over its states',
  place: 'independent script: service in several equal phases, and steady service seen at each departure',
  mark: 'computed',
};
const solved = { relative: 1e-9, reason: 'the chain of the script is cut off where less than that is left' };
const exact = { relative: 1e-12, reason: 'a few quotients' };

export const waitingBeforeStationCases: readonly SheetCase[] = [
  {
    name: 'nine tenths of what the station can do, irregular times: 9 present, 9 s wait, 10 s through',
    source: queueTheory,
    inputs: { arrivals: 0.9, pace: 1, variation: 1 },
    outputs: { load: 0.9, wait: 9, through: 10, waiting: 8.1, present: 9 },
    tolerance: exact,
    notes: ['WAIT_RANDOM_ARRIVALS'],
  },
  {
    name: 'steady times at a load of 0.8: half the wait of irregular ones, 2 s instead of 4',
    source: chains,
    inputs: { arrivals: 0.8, pace: 1, variation: 0 },
    outputs: { wait: 2, present: 2.4 },
    tolerance: solved,
  },
  {
    name: 'times in two phases at 0.8: 3 s',
    source: chains,
    inputs: { arrivals: 0.8, pace: 1, variation: Math.SQRT1_2 },
    outputs: { wait: 3, through: 4, present: 3.2 },
    tolerance: solved,
  },
  {
    name: 'times in four phases at 0.9: 5.625 s',
    source: chains,
    inputs: { arrivals: 0.9, pace: 1, variation: 0.5 },
    outputs: { wait: 5.625, through: 6.625, present: 5.9625 },
    tolerance: solved,
  },
];
