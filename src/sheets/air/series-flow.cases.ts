import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const bar = 1e5;
const unit = 1e-8;
const from = { upstream: 6 * bar, downstream: 4.5 * bar, atmosphere: bar };

export const seriesFlowCases: readonly SheetCase[] = [
  ...(
    [
      [[4, 2], [0.35, 0.3], 1.8522, 9.148],
      [[2, 4], [0.3, 0.35], 1.9307, 9.159],
      [[2, 2], [0.3, 0.3], 1.5144, 7.224],
    ] as const
  ).map(([c, b, chain, flow]) => ({
    name: `C ${c.join(' then ')} dm3/(s bar): ${chain} together, ${flow} dm3/s from 7 to 5.5 bar(a)`,
    source: script,
    inputs: { ...from, conductances: c.map((each) => each * unit), criticalRatios: [...b] },
    outputs: { conductance: chain * unit, flow: flow / 1000 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
    notes: ['SERIES_ORDER', 'AIR_REFERENCE'],
  })),
  {
    name: 'a chain of four: 1.8345 dm3/(s bar), 6.999 dm3/s from 6.529 to 5.529 bar(a)',
    source: script,
    inputs: {
      conductances: [12, 8, 3, 2.2].map((each) => each * unit),
      criticalRatios: [0.4, 0.3, 0.35, 0.25],
      upstream: 5.529 * bar,
      downstream: 4.529 * bar,
      atmosphere: bar,
    },
    outputs: { conductance: 1.8345 * unit, flow: 6.999e-3 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
  },
  {
    name: 'one alone is itself, by the equation of a single component: 420 L/min of the valve data sheet',
    source: {
      title: 'solenoid valve data sheet, flow characteristics, after ISO 6358:1989',
      place: 'front matter, worked example, public archive of manuals',
      mark: 'read',
    },
    inputs: {
      conductances: [2 * unit],
      criticalRatios: [0.3],
      upstream: 4 * bar,
      downstream: 3 * bar,
      atmosphere: bar,
    },
    outputs: { flow: 0.42 / 60, conductance: 2 * unit, criticalRatio: 0.3, pressures: [3 * bar] },
    tolerance: { relative: 5e-3, reason: 'as the reference states it; exact 419.9' },
  },
];
