import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';
import { birthDeathScript } from './trial-sources.ts';

const hour = 3600;
const solvedExamples: Source = {
  title: 'public page of solved waiting-line examples, one server and room for three',
  place: '8 come in an hour, 9 are served; P0 and P3',
  mark: 'read',
};
const teachingPages: Source = {
  title: 'Operations Research Models and Methods, teaching pages of the University of Texas',
  place: 'queue problems, two servers and room for five; P0 to P5, throughput and times',
  mark: 'read',
};
const solved = { relative: 1e-12, reason: 'printed digits' };

export const waitingLimitedRoomCases: readonly SheetCase[] = [
  {
    name: '8 an hour come, 9 are done, room for three: empty 0.29574037, full 0.20770791',
    source: solvedExamples,
    inputs: { arrivals: 8 / hour, pace: 9 / hour, heads: 1, room: 3 },
    outputs: { empty: 0.29574037, full: 0.20770791 },
    tolerance: { absolute: 1e-8, reason: 'eight printed digits' },
    notes: ['WAIT_RANDOM_ARRIVALS'],
  },
  {
    name: 'the same: 1.353 present, 6.338 an hour pass, 0.2135 h through',
    source: birthDeathScript,
    inputs: { arrivals: 8 / hour, pace: 9 / hour, heads: 1, room: 3 },
    outputs: {
      present: 1.353346855983773,
      waiting: 0.6490872210953347,
      passed: 6.338336713995943 / hour,
      through: 0.2135176651305684 * hour,
      wait: 0.10240655401945725 * hour,
      use: 0.7042596348884381,
    },
    tolerance: solved,
  },
  {
    name: 'two heads and room for five: the shares of time with 0 to 5 bottles, 4.424 pass, 0.511 and 0.178 s',
    source: teachingPages,
    inputs: { arrivals: 5, pace: 3, heads: 2, room: 5 },
    outputs: {
      shares: [0.143, 0.239, 0.199, 0.166, 0.138, 0.115],
      passed: 4.424,
      through: 0.511,
      wait: 0.178,
    },
    tolerance: { absolute: 5e-4, reason: 'three printed digits after the point' },
  },
  {
    name: 'the same to its digits',
    source: birthDeathScript,
    inputs: { arrivals: 5, pace: 3, heads: 2, room: 5 },
    outputs: {
      empty: 0.1432413513613086,
      full: 0.11513097299487897,
      present: 2.262277566960174,
      waiting: 0.7874958552849722,
      passed: 4.424345135025606,
      through: 0.5113248397035557,
      wait: 0.17799150637022235,
      use: 0.7373908558376009,
    },
    tolerance: solved,
  },
  {
    name: 'as many come as are done, room for nine: every number of bottles as often as another',
    source: birthDeathScript,
    inputs: { arrivals: 4, pace: 4, heads: 1, room: 9 },
    outputs: { empty: 0.1, full: 0.1, present: 4.5, waiting: 3.6, passed: 3.6, through: 1.25, wait: 1 },
    tolerance: solved,
  },
  {
    name: 'four heads with room for twelve, overrun: 0.401 are turned away',
    source: birthDeathScript,
    inputs: { arrivals: 20, pace: 3, heads: 4, room: 12 },
    outputs: {
      empty: 8.192482466370969e-5,
      full: 0.40144794541961193,
      present: 10.539161583315636,
      waiting: 6.5488145527797155,
      passed: 11.971041091607761,
      use: 0.9975867576339801,
    },
    tolerance: solved,
  },
];
