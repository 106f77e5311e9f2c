import type { SheetCase } from '../sheet-case.ts';
import { switchgearAppendix } from './sources.ts';
import { typicalTable } from './typical-currents.ts';

const exact = { relative: 1e-12, reason: 'a figure of a table' } as const;

export const motorCurrentIecCases: readonly SheetCase[] = [
  {
    name: '15 kW: 29.3 A in one handbook, 28.5 A in another',
    source: switchgearAppendix,
    inputs: { power: 15000 },
    outputs: { highest: 29.3, lowest: 28.5 },
    tolerance: exact,
    notes: ['TYPICAL_ONLY'],
  },
  {
    name: '2.2 kW: 5.0 A in one handbook, 4.8 A in another',
    source: typicalTable,
    inputs: { power: 2200 },
    outputs: { highest: 5, lowest: 4.8 },
    tolerance: exact,
  },
  {
    name: '55 kW: only a row from memory',
    source: { title: 'IEC 60947-4-1', place: 'annex G', mark: 'memory' },
    inputs: { power: 55000 },
    outputs: { highest: 97, lowest: 97 },
    tolerance: exact,
    notes: ['TYPICAL_FROM_MEMORY'],
  },
];
