import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const inputs = { pressure: 4e5, atmosphere: 1e5, conductance: 2e-8, criticalRatio: 0.3 };

export const restrictionOutletCases: readonly SheetCase[] = [
  {
    name: 'C 2 dm3/(s bar), b 0.3: 420 L/min from 0.4 MPa(g) arrive at 0.3 MPa(g)',
    source: {
      title: 'solenoid valve data sheet, flow characteristics, after ISO 6358:1989',
      place: 'front matter, worked example, public archive of manuals',
      mark: 'read',
    },
    inputs: { ...inputs, flow: 0.42 / 60 },
    outputs: { outletPressure: 3e5, loss: 1e5 },
    tolerance: { relative: 2e-3, reason: 'three printed digits of the flow; exact 419.9' },
    notes: ['AIR_REFERENCE', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'the same at 40 degC with 406.3 L/min',
    source: script,
    inputs: { ...inputs, temperature: 313.15, flow: 0.4063 / 60 },
    outputs: { outletPressure: 3e5, loss: 1e5 },
    tolerance: { relative: 1e-3, reason: 'four printed digits of the flow' },
  },
  ...(
    [
      [0.2, 250.3],
      [0.5, 311.8],
      [0.528, 320.1],
    ] as const
  ).map(([criticalRatio, flow]) => ({
    name: `C 1.5 dm3/(s bar): ${flow} L/min from 6.5 bar(a) arrive at 6.0 where b is ${criticalRatio}`,
    source: script,
    inputs: {
      flow: flow / 60_000,
      pressure: 5.5e5,
      atmosphere: 1e5,
      conductance: 1.5e-8,
      criticalRatio,
    },
    outputs: { outletPressure: 5e5, loss: 0.5e5 },
    tolerance: { relative: 1e-3, reason: 'four printed digits of the flow, squared' },
    notes: criticalRatio > 0.5 ? ['RESTRICTION_NOZZLE'] : [],
  })),
];
