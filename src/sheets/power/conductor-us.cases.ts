import type { SheetCase } from '../sheet-case.ts';
import { journeymanTest, machineExample, necStudyNotes } from './sources.ts';
import { ampacityTable } from './us-conductors.ts';

const exact = { relative: 1e-9, reason: 'an exact product and figures of a table' } as const;
const plain = { insulation: '75', terminals: '75', ambient: 303.15, conductors: 3, edition: 'from-2011' };

export const conductorUsCases: readonly SheetCase[] = [
  {
    name: 'study notes: 7 1/2 hp at 230 V, 22 A: 27.5 A, 10 AWG',
    source: necStudyNotes,
    inputs: { ...plain, current: 22, load: 'motor' },
    outputs: { needed: 27.5, size: '10 AWG', allowed: 35 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_310_16'],
  },
  {
    name: 'practice test: 25 hp at 208 V, 115 °F: 93.5 A, over 0.75 124.7 A, 1 AWG',
    source: journeymanTest,
    inputs: { ...plain, current: 74.8, load: 'motor', ambient: 319.2611 },
    outputs: { needed: 93.5, tableNeeded: 124.6, size: '1 AWG' },
    tolerance: { absolute: 0.1, reason: 'printed to a tenth; the test prints 124.6 for 124.67' },
  },
  {
    name: 'practice test: 40 hp on 480 V, 52 A: 65 A, 6 AWG, equality passes',
    source: journeymanTest,
    inputs: { ...plain, current: 52, load: 'motor' },
    outputs: { needed: 65, size: '6 AWG', allowed: 65 },
    tolerance: exact,
  },
  {
    name: 'table 310.16: 18 A at 60 °C terminals: 12 AWG from 2011 on, 14 AWG in 2008, and that is said',
    source: ampacityTable,
    inputs: { ...plain, insulation: '60', terminals: '60', current: 18, load: 'ampacity-as-given' },
    outputs: { size: '12 AWG', allowed: 20 },
    tolerance: exact,
    notes: ['EDITION_OTHER_SIZE'],
  },
  {
    name: 'machine of four motors: 71.9 A wants 4 AWG in the 75 °C column',
    source: machineExample,
    inputs: { ...plain, current: 71.9, load: 'ampacity-as-given' },
    outputs: { needed: 71.9, size: '4 AWG', allowed: 85 },
    tolerance: exact,
  },
  {
    name: 'machine of four motors: 71.9 A wants 3 AWG in the 60 °C column',
    source: machineExample,
    inputs: { ...plain, terminals: '60', current: 71.9, load: 'ampacity-as-given' },
    outputs: { size: '3 AWG', allowed: 85 },
    tolerance: exact,
  },
];
