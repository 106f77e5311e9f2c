import type { SheetCase } from '../sheet-case.ts';

export const levelVolumeCases: readonly SheetCase[] = [
  {
    name: 'a millimetre in a neck of 22 mm is 0.3801 mL',
    source: { title: 'geometry', place: 'hand calculation: 121 pi/1000 = 0.38013', mark: 'computed' },
    inputs: { bore: 0.022, step: 0.001 },
    outputs: { volume: 0.380133e-6 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
];
