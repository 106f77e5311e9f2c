import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const motorSpeed: Source = {
  title: 'article on what sets the speed of a motor',
  place: 'built for 50 Hz, 20 % faster on 60 Hz; built for 60 Hz, 83.3 % on 50 Hz; public page',
  mark: 'read',
};

export const indexPeriodCases: readonly SheetCase[] = [
  {
    name: 'built on 50 Hz, run on 60 Hz, 20 % faster: a stroke of 6 s takes 5 s, a timed dwell stays',
    source: motorSpeed,
    inputs: { stroke: 6, dwell: 6, stretch: 50 / 60, dwellBy: 'timer' },
    outputs: { strokeHere: 5, dwellHere: 6, index: 11 },
    tolerance: { relative: 1e-12, reason: 'one multiplication' },
    notes: ['INDEX_OTHER_FREQUENCY'],
  },
  {
    name: 'built on 60 Hz, run on 50 Hz, 83.3 % of the speed: 12 s of cam take 14.4 s',
    source: motorSpeed,
    inputs: { stroke: 4, dwell: 8, stretch: 60 / 50, dwellBy: 'drive' },
    outputs: { strokeHere: 4 / 0.833, dwellHere: 8 / 0.833, index: 12 / 0.833 },
    tolerance: { relative: 5e-4, reason: 'three printed digits of the share' },
  },
  {
    name: 'on its own frequency the index is stroke and dwell: 4 s and 12 s make 16 s',
    source: arithmetic,
    inputs: { stroke: 4, dwell: 12, stretch: 1, dwellBy: 'drive' },
    outputs: { strokeHere: 4, dwellHere: 12, index: 16 },
    tolerance: { relative: 1e-12, reason: 'one addition' },
  },
  {
    name: 'on 50 Hz instead of 60, its cylinders 0.3 s slower: 4.8 s and 0.3 s, with 8 s of timer 13.1 s',
    source: arithmetic,
    inputs: { stroke: 4, dwell: 8, stretch: 60 / 50, dwellBy: 'timer', added: 0.3 },
    outputs: { strokeHere: 5.1, dwellHere: 8, index: 13.1 },
    tolerance: { relative: 1e-12, reason: 'one multiplication and two additions' },
    notes: ['INDEX_OTHER_FREQUENCY', 'INDEX_CYLINDERS_ADDED'],
  },
];
