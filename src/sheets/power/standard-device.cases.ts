import type { SheetCase } from '../sheet-case.ts';
import { feederDiscussion, necExampleD8 } from './sources.ts';

const exact = { relative: 1e-12, reason: 'a figure of a list' } as const;

export const standardDeviceCases: readonly SheetCase[] = [
  {
    name: 'example D8: 102 A goes up to 110 A',
    source: necExampleD8,
    inputs: { current: 102, list: 'us-fuse', rounding: 'up' },
    outputs: { rating: 110 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_240_6'],
  },
  {
    name: 'example D8: a feeder of 190 A goes down to 175 A',
    source: necExampleD8,
    inputs: { current: 190, list: 'us-fuse', rounding: 'down' },
    outputs: { rating: 175 },
    tolerance: exact,
  },
  {
    name: 'discussion of a feeder: 562 A goes down to 500 A',
    source: feederDiscussion,
    inputs: { current: 562, list: 'us-breaker', rounding: 'down' },
    outputs: { rating: 500 },
    tolerance: exact,
  },
  {
    name: 'IEC list: 14 A goes up to 16 A',
    source: { title: 'usual rated currents of IEC devices', edition: 'IEC 60898', mark: 'memory' },
    inputs: { current: 14, list: 'iec', rounding: 'up' },
    outputs: { rating: 16 },
    tolerance: exact,
    notes: ['IEC_RATINGS_FROM_MEMORY'],
  },
];
