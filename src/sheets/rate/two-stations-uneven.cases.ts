import type { SheetCase } from '../sheet-case.ts';
import { birthDeathScript } from './trial-sources.ts';

const exact = { relative: 1e-12, reason: 'a quotient of small numbers' };

const alike = (room: number, share: number): SheetCase => ({
  name: `two alike, room for ${room}: ${room + 2}/${room + 3} of the rate of one`,
  source: birthDeathScript,
  inputs: { first: 0.25, second: 0.25, room },
  outputs: { throughput: 0.25 * share, starved: 1 - share, blocked: 1 - share },
  tolerance: exact,
  notes: ['ROOM_VERY_UNEVEN'],
});

export const twoStationsUnevenCases: readonly SheetCase[] = [
  alike(0, 2 / 3),
  alike(1, 3 / 4),
  alike(2, 4 / 5),
  alike(5, 7 / 8),
  alike(10, 12 / 13),
  {
    name: 'a quicker second station, room for three',
    source: birthDeathScript,
    inputs: { first: 0.2, second: 0.25, room: 3 },
    outputs: {
      throughput: 0.18223610026888715,
      starved: 0.27105559892445136,
      blocked: 0.08881949865556424,
    },
    tolerance: exact,
  },
  {
    name: 'the same the other way round: the same rate',
    source: birthDeathScript,
    inputs: { first: 0.25, second: 0.2, room: 3 },
    outputs: {
      throughput: 0.18223610026888715,
      starved: 0.08881949865556424,
      blocked: 0.27105559892445136,
    },
    tolerance: exact,
  },
];
