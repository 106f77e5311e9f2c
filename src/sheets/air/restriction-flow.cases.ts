import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const sheetOfValve = {
  title: 'solenoid valve data sheet, flow characteristics, after ISO 6358:1989',
  place: 'front matter, worked example, public archive of manuals',
  mark: 'read',
} as const;
const inputs = {
  conductance: 2e-8,
  criticalRatio: 0.3,
  upstream: 4e5,
  downstream: 3e5,
  atmosphere: 1e5,
};

export const restrictionFlowCases: readonly SheetCase[] = [
  {
    name: 'C 2 dm3/(s bar), b 0.3, 0.4 to 0.3 MPa(g): 420 L/min',
    source: sheetOfValve,
    inputs,
    outputs: { flow: 0.42 / 60, pressureRatio: 0.8, choked: 'not choked' },
    tolerance: { relative: 5e-3, reason: 'as the reference states it; exact 419.9' },
    notes: ['RESTRICTION_DENSITY', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'the same valve passes at most 600 L/min',
    source: sheetOfValve,
    inputs: { ...inputs, downstream: 0 },
    outputs: { flow: 0.6 / 60, chokedFlow: 0.6 / 60, choked: 'choked' },
    tolerance: { relative: 1e-9, reason: 'a product' },
  },
  {
    name: 'the same at 40 degC: 406.3 L/min, 1.185 kg in a cubic metre',
    source: script,
    inputs: { ...inputs, temperature: 313.15 },
    outputs: { flow: 0.4063 / 60, massFlow: (1.185 * 0.4063) / 60 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
  ...(
    [
      [0.2, 250.3],
      [0.5, 311.8],
      [0.528, 320.1],
    ] as const
  ).map(([criticalRatio, flow]) => ({
    name: `C 1.5 dm3/(s bar), 6.5 to 6.0 bar(a): ${flow} L/min where b is ${criticalRatio}`,
    source: script,
    inputs: {
      conductance: 1.5e-8,
      criticalRatio,
      upstream: 5.5e5,
      downstream: 5e5,
      atmosphere: 1e5,
    },
    outputs: { flow: flow / 60_000 },
    tolerance: { relative: 3e-4, reason: 'four digits' },
    notes: criticalRatio > 0.5 ? ['RESTRICTION_NOZZLE'] : [],
  })),
];
