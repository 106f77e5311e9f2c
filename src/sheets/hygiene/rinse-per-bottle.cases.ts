import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const rinsePerBottleCases: readonly SheetCase[] = [
  {
    name: '12 L/min, index 12 s, five lanes: 480 mL running, 320 mL gated with 4 s dead',
    source: script,
    inputs: { flow: 0.0002, index: 12, lanes: 5, dead: 4 },
    outputs: { running: 480e-6, gated: 320e-6 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
