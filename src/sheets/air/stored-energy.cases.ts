import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const storedEnergyCases: readonly SheetCase[] = [
  {
    name: '25 L at 5.516 bar(g): 16.6 kJ, upper figure 34.5 kJ',
    source: script,
    inputs: { volume: 0.025, pressure: 5.516e5 },
    outputs: { energy: 16_600, upperFigure: 34_500 },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
    notes: ['ENERGY_RESIDUAL', 'CAUTION_COMPRESSED_AIR'],
  },
];
