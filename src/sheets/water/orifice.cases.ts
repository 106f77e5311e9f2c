import type { SheetCase } from '../sheet-case.ts';
import { britannica } from './sources.ts';

export const orificeCases: readonly SheetCase[] = [
  ...(
    [
      [0.62, 0.3402],
      [0.82, 0.4499],
      [0.97, 0.5322],
    ] as const
  ).map(([dischargeCoefficient, litres]) => ({
    name: `12 mm under 1.2 m, C_d ${dischargeCoefficient}`,
    source: britannica,
    inputs: { head: 1.2, bore: 0.012, dischargeCoefficient, velocityCoefficient: 1 },
    outputs: { flow: litres * 1e-3, jetVelocity: 4.851 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
  })),
];
