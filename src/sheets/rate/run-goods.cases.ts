import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const runGoodsCases: readonly SheetCase[] = [
  {
    name: 'one hour at 1 050 an hour with a tenth to spare: 1 155 bottles; 320 L of 20 g/L and 6 mL a bottle: 6.5386 kg',
    source: arithmetic,
    inputs: { rate: 1050 / 3600, duration: 3600, bath: 0.32, concentration: 20, carry: 6e-6 },
    outputs: { bottles: 1155, detergent: 6.5386 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
  },
  {
    name: 'eight hours at 600 an hour, none to spare: 4 800 bottles, no bath',
    source: arithmetic,
    inputs: { rate: 600 / 3600, duration: 8 * 3600, spare: 0 },
    outputs: { bottles: 4800, detergent: 0 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['GOODS_NO_SPARE'],
  },
];
