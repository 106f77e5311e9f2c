import type { SheetCase } from '../sheet-case.ts';
import { feederDiscussion, machineExample, necExampleD8, necMotorArticle } from './sources.ts';

const exact = { relative: 1e-12, reason: 'an exact product and a figure of a list' } as const;

export const branchDeviceUsCases: readonly SheetCase[] = [
  {
    name: 'example D8: 25 hp design B, 34 A, fuse without delay: 102 A, 110 A',
    source: necExampleD8,
    inputs: { current: 34, motor: 'design-b-energy-efficient', device: 'non-time-delay-fuse' },
    outputs: { share: 3, computed: 102, rating: 110 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_430', 'ROUNDED_UP'],
  },
  {
    name: 'example D8: the same with a time-delay fuse: 59.5 A, 60 A',
    source: necExampleD8,
    inputs: { current: 34, motor: 'design-b-energy-efficient', device: 'time-delay-fuse' },
    outputs: { computed: 59.5, rating: 60 },
    tolerance: exact,
  },
  {
    name: 'example D8: 30 hp wound rotor, 40 A: 60 A',
    source: necExampleD8,
    inputs: { current: 40, motor: 'wound-rotor', device: 'non-time-delay-fuse' },
    outputs: { computed: 60, rating: 60 },
    tolerance: exact,
  },
  {
    name: 'discussion of a feeder: 124 A by breaker: 310 A, 350 A',
    source: feederDiscussion,
    inputs: { current: 124, motor: 'polyphase', device: 'inverse-time-breaker' },
    outputs: { computed: 310, rating: 350 },
    tolerance: exact,
  },
  {
    name: 'NEC 430.52 exception 2, breaker over 100 A: 300 % of 124 A is 372 A, so 350 A',
    source: { ...necMotorArticle, place: '430.52(C)(1), exception 2', mark: 'read' },
    inputs: { current: 124, motor: 'polyphase', device: 'inverse-time-breaker' },
    outputs: { ceilingShare: 3, ceiling: 372, highestRating: 350 },
    tolerance: exact,
  },
  {
    name: 'NEC 430.52 exception 2, breaker to 100 A: 400 % of 34 A is 136 A, so 125 A',
    source: { ...necMotorArticle, place: '430.52(C)(1), exception 2', mark: 'read' },
    inputs: { current: 34, motor: 'polyphase', device: 'inverse-time-breaker' },
    outputs: { ceilingShare: 4, ceiling: 136, highestRating: 125 },
    tolerance: exact,
  },
  {
    name: 'NEC 430.52 exception 2, fuse: 400 % up to a fuse of 600 A, 300 % over it: 160 A may have 600 A, not 640 A',
    source: { ...necMotorArticle, place: '430.52(C)(1), exception 2', mark: 'read' },
    inputs: { current: 160, motor: 'polyphase', device: 'non-time-delay-fuse' },
    outputs: { rating: 500, ceiling: 600, highestRating: 600 },
    tolerance: exact,
  },
  {
    name: 'machine of four motors: 5 hp at 208 V, 16.7 A by breaker: 45 A',
    source: machineExample,
    inputs: { current: 16.7, motor: 'polyphase', device: 'inverse-time-breaker' },
    outputs: { rating: 45 },
    tolerance: exact,
  },
];
