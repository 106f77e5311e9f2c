import type { SheetCase } from '../sheet-case.ts';
import { byHand } from './sources.ts';

const clause = { title: 'IEC 60204-1', edition: '2016', place: '18.3', mark: 'memory' } as const;

export const insulationLimitCases: readonly SheetCase[] = [
  {
    name: 'conductors of a power circuit at 500 V DC: 1 Mohm',
    source: clause,
    inputs: {},
    outputs: { least: 1e6 },
    tolerance: { relative: 1e-12, reason: 'a figure of the clause' },
    notes: ['CAUTION_GUARDING', 'INSULATION_MEMORY', 'INSULATION_DISCONNECT'],
  },
  {
    name: 'collectors and slip rings: 50 kohm',
    source: clause,
    inputs: { part: 'collectors' },
    outputs: { least: 5e4 },
    tolerance: { relative: 1e-12, reason: 'a figure of the clause' },
  },
  {
    name: 'half a milliampere at 500 V over 1 Mohm; a quarter at 250 V, which is not the voltage of the clause',
    source: byHand,
    inputs: { voltage: 250 },
    outputs: { current: 2.5e-4 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['INSULATION_VOLTAGE'],
  },
];
