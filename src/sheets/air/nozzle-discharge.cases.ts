import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const psi = 6894.757293;
const inch = 0.0254;
/** Free air at 14.7 psia and 70 degF, in normal air. */
const cfm = ((0.0004719474432 * 14.7 * psi) / 1e5) * (293.15 / (529.67 / 1.8));
const table = {
  title: 'Discharge of air through an orifice, handbook table for a coefficient of 1',
  place: 'public transcription',
  mark: 'read',
} as const;

export const nozzleDischargeCases: readonly SheetCase[] = [
  ...(
    [
      [20, 1 / 64, 0.123],
      [20, 1 / 32, 0.491],
      [20, 1 / 16, 1.96],
      [20, 1 / 8, 7.86],
      [20, 1 / 4, 31.4],
      [20, 3 / 8, 70.7],
      [50, 1 / 64, 0.229],
      [50, 1 / 8, 14.7],
      [50, 1 / 4, 58.6],
      [50, 3 / 8, 132],
      [70, 1 / 32, 1.2],
      [70, 1 / 8, 19.2],
      [70, 3 / 8, 173],
      [80, 1 / 64, 0.335],
      [80, 1 / 32, 1.34],
      [80, 1 / 16, 5.36],
      [80, 1 / 8, 21.4],
      [80, 1 / 4, 85.7],
      [80, 3 / 8, 193],
      [100, 1 / 64, 0.406],
      [100, 1 / 16, 6.49],
      [100, 1 / 4, 104],
      [100, 3 / 8, 234],
    ] as const
  ).map(([gauge, diameter, flow]) => ({
    name: `${gauge} psig through ${diameter} in: ${flow} cfm of free air`,
    source: table,
    inputs: {
      diameter: diameter * inch,
      coefficient: 1,
      pressure: gauge * psi,
      atmosphere: 14.7 * psi,
      temperature: 529.67 / 1.8,
    },
    outputs: { flow: flow * cfm, averageFlow: flow * cfm, choked: 'choked' },
    tolerance: { relative: 1e-2, reason: 'as the table is reproduced; three printed digits' },
    notes: ['NOZZLE_COEFFICIENT'],
  })),
  {
    name: 'a hole of 1 mm at 6 bar(g), coefficient 0.65: 42.7 L/min',
    source: script,
    inputs: { diameter: 0.001, coefficient: 0.65, pressure: 6e5 },
    outputs: { flow: 42.7e-3 / 60, massFlow: (42.7e-3 / 60) * 1.18835 },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
    notes: ['AIR_CLEANING_RULES'],
  },
];
