import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const tippingEdgeCases: readonly SheetCase[] = [
  {
    name: 'a section of 3.4 by 1.2 m on wheels 2.4 by 0.9 m apart, its centre 100 mm off the middle both ways',
    source: arithmetic,
    inputs: { length: 3.4, width: 1.2, base: 2.4, track: 0.9, along: 1.8, across: 0.5 },
    outputs: { alongEdge: 1.1, acrossEdge: 0.35, nearest: 0.35 },
    tolerance: { relative: 1e-12, reason: 'differences of stated figures' },
    notes: ['CAUTION_MOVING'],
  },
  {
    name: 'a centre 600 mm off the middle of wheels that are 1 m apart hangs out by 100 mm',
    source: arithmetic,
    inputs: { length: 3, width: 1, base: 1, track: 1, along: 2.1, across: 0.5 },
    outputs: { alongEdge: -0.1, acrossEdge: 0.5, nearest: -0.1 },
    tolerance: { relative: 1e-9, reason: 'differences of stated figures' },
    notes: ['EDGE_OUTSIDE'],
  },
];
