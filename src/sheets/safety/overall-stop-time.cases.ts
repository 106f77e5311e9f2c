import type { SheetCase } from '../sheet-case.ts';

export const overallStopTimeCases: readonly SheetCase[] = [
  {
    name: 'machine 290, device 20 and control 10 ms: 320 ms',
    source: {
      title: 'public manual of a light curtain',
      place: 'example of the distance of a vertical field',
      mark: 'read',
    },
    inputs: { device: 0.02, control: 0.01, machine: 0.29 },
    outputs: { time: 0.32 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['CAUTION_GUARDING', 'STOP_COUNTED_ONCE'],
  },
  {
    name: 'devices of 20, 15 and 95 ms and a machine of 170 ms: 0.3 s',
    source: {
      title: 'public catalogue of a maker of guarding components',
      place: 'example of distance calculations',
      mark: 'read',
    },
    inputs: { device: 0.02, control: 0.015 + 0.095, machine: 0.17 },
    outputs: { time: 0.3 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
  },
];
