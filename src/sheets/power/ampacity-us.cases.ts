import type { SheetCase } from '../sheet-case.ts';
import { journeymanTest, necStudyNotes } from './sources.ts';
import { ampacityTable } from './us-conductors.ts';

const exact = { relative: 1e-9, reason: 'figures of a table' } as const;
const plain = { insulation: '75', terminals: '75', ambient: 303.15, conductors: 3, edition: 'from-2011' };

export const ampacityUsCases: readonly SheetCase[] = [
  {
    name: 'study notes: 10 AWG carries 35 A in the 75 °C column',
    source: necStudyNotes,
    inputs: { ...plain, size: '10 AWG' },
    outputs: { table: 35, terminals: 35, allowed: 35 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_310_16', 'SMALL_CONDUCTOR', 'TERMINALS_75'],
  },
  {
    name: 'practice test: 1 AWG of 130 A at 115 °F keeps 0.75 of it',
    source: journeymanTest,
    inputs: { ...plain, size: '1 AWG', ambient: 319.2611 },
    outputs: { table: 130, corrected: 97.5, allowed: 97.5 },
    tolerance: exact,
  },
  {
    name: 'practice test: 6 AWG carries 65 A',
    source: journeymanTest,
    inputs: { ...plain, size: '6 AWG' },
    outputs: { allowed: 65 },
    tolerance: exact,
  },
  {
    name: 'table 310.16 of 2008: 14 AWG, 60 °C, 20 A; from 2011 on 15 A, and the other edition is named',
    source: ampacityTable,
    inputs: { ...plain, size: '14 AWG', insulation: '60', terminals: '60', edition: 'to-2008' },
    outputs: { allowed: 20 },
    tolerance: exact,
    notes: ['EDITIONS_DIFFER'],
  },
  {
    name: 'tables 310.16 and of grouping: 4 AWG, 90 °C, eight conductors: 66.5 A',
    source: ampacityTable,
    inputs: { ...plain, size: '4 AWG', insulation: '90', conductors: 8 },
    outputs: { table: 95, corrected: 66.5, terminals: 85, allowed: 66.5 },
    tolerance: exact,
  },
];
