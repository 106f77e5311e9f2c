import type { SheetCase } from '../sheet-case.ts';
import { chainScript } from './trial-sources.ts';

const solved = { absolute: 2e-11, reason: 'twelve printed digits' };
const alike = { stopFirst: 0.01, clearFirst: 0.1, stopSecond: 0.01, clearSecond: 0.1 } as const;

const ofAlike = (room: number, efficiency: number, starved: number): SheetCase => ({
  name: `stations alike, room for ${room}: ${efficiency.toFixed(8)} of the pace`,
  source: chainScript,
  inputs: { ...alike, room },
  outputs: { efficiency, starved, blocked: starved, level: room / 2 },
  tolerance: solved,
  notes: ['ROOM_STOPS_ONLY_RUNNING'],
});

export const twoStationsWithRoomCases: readonly SheetCase[] = [
  ofAlike(4, 0.840936136454, 0.0749702499008),
  ofAlike(10, 0.856174930705, 0.0582075762242),
  ofAlike(20, 0.870540722459, 0.042405205295),
  ofAlike(100, 0.896937115371, 0.0133691730919),
  {
    name: 'limits of the same: 5/6 without room, 10/11 with room without end',
    source: chainScript,
    inputs: { ...alike, room: 10 },
    outputs: { withoutRoom: 0.83333333, endlessRoom: 0.90909091 },
    tolerance: { absolute: 5e-9, reason: 'eight printed digits' },
  },
  {
    name: 'unequal stations, the first the worse: 0.73626233, starved more than blocked',
    source: chainScript,
    inputs: { stopFirst: 0.05, clearFirst: 0.2, stopSecond: 0.02, clearSecond: 0.1, room: 10 },
    outputs: {
      efficiency: 0.736262330054,
      starved: 0.116485203935,
      blocked: 0.0796720874326,
      level: 3.85238976828,
    },
    tolerance: solved,
  },
  {
    name: 'the same the other way round: as much comes through, and the room stands as full as it stood empty',
    source: chainScript,
    inputs: { stopFirst: 0.02, clearFirst: 0.1, stopSecond: 0.05, clearSecond: 0.2, room: 10 },
    outputs: {
      efficiency: 0.736262330054,
      starved: 0.0796720874326,
      blocked: 0.116485203935,
      level: 6.14761023172,
    },
    tolerance: solved,
  },
  {
    name: 'as available each, rare long stops against frequent short ones, room for 50: 0.88407966',
    source: chainScript,
    inputs: { stopFirst: 0.005, clearFirst: 0.05, stopSecond: 0.02, clearSecond: 0.2, room: 50 },
    outputs: { efficiency: 0.884079659261, starved: 0.0275123748129, level: 29.1441234028 },
    tolerance: solved,
  },
  {
    name: 'a first station that stops every third cycle decides alone: 0.75',
    source: chainScript,
    inputs: { stopFirst: 0.3, clearFirst: 0.9, stopSecond: 0.001, clearSecond: 0.05, room: 200 },
    outputs: { efficiency: 0.749999966628, starved: 0.235000034039, level: 1.71177694317 },
    tolerance: solved,
  },
  {
    name: 'the same behind the room, which stands full',
    source: chainScript,
    inputs: { stopFirst: 0.001, clearFirst: 0.05, stopSecond: 0.3, clearSecond: 0.9, room: 200 },
    outputs: { efficiency: 0.749999966628, blocked: 0.235000034039, level: 198.288223057 },
    tolerance: { absolute: 1e-8, reason: 'the equations of the script lose digits where a state is rare' },
  },
  {
    name: 'stops of one cycle before, of two cycles behind',
    source: chainScript,
    inputs: { stopFirst: 0.01, clearFirst: 1, stopSecond: 0.2, clearSecond: 0.5, room: 6 },
    outputs: {
      efficiency: 0.714285710254,
      starved: 5.64399881384e-9,
      blocked: 0.278571432643,
      level: 5.24926748527,
    },
    tolerance: solved,
    notes: ['ROOM_NONE_NEARLY'],
  },
];
