import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const volumeAt20Cases: readonly SheetCase[] = [
  ...(
    [
      [85, 0.97035],
      [60, 0.98496],
      [5, 1.00176],
    ] as const
  ).map(([celsius, litres]) => ({
    name: `one litre filled at ${celsius} degC, by IAPWS-95 densities`,
    source: iapws95,
    inputs: { volume: 1e-3, temperature: celsius + 273.15 },
    outputs: { volumeAt20: litres * 1e-3, ratio: litres },
    tolerance: { relative: 1e-5, reason: 'five printed digits' },
  })),
];
