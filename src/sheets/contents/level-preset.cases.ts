import type { SheetCase } from '../sheet-case.ts';
import { presetTheory } from './fill-sources.ts';

export const levelPresetCases: readonly SheetCase[] = [
  {
    name: '99.5 % of bottles of 503 mL: preset 1013, overflow 4.64 mL',
    source: { ...presetTheory, place: 'independent script' },
    inputs: {
      afterRun: 6.2e-6,
      perCount: 0.495e-6,
      fillSpread: 1.4e-6,
      capacity: 503e-6,
      capacitySpread: 1.1e-6,
      goal: 0.995,
    },
    outputs: {
      preset: 1013,
      exactPreset: 1012.9013,
      volumeNeeded: 507.58613e-6,
      volume: 507.635e-6,
      spread: 1.780449e-6,
      chance: 0.995383,
      overflow: 4.63758e-6,
      shortfall: 0.0025793e-6,
    },
    tolerance: { relative: 1e-5, reason: 'five to six printed digits' },
  },
];
