import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const causticMakeUpCases: readonly SheetCase[] = [
  {
    name: '600 bottles/h that carry 4 mL at 20 g/L take 48 g/h; with 12 g/h to carbonate 60 g/h',
    source: script,
    inputs: { rate: 600 / 3600, carry: 4e-6, bath: 20, otherLoss: 0.012 / 3600 },
    outputs: { makeUp: 0.06 / 3600 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
