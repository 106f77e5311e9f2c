import type { SheetCase } from '../sheet-case.ts';
import { fullLoadTables } from './full-load-currents.ts';
import { horsepower } from './horsepower.ts';
import { journeymanTest, necStudyNotes } from './sources.ts';

const exact = { relative: 1e-12, reason: 'a figure of a table' } as const;

export const motorCurrentUsCases: readonly SheetCase[] = [
  {
    name: 'study notes: 7 1/2 hp at 230 V is 22 A',
    source: necStudyNotes,
    inputs: { power: 7.5 * horsepower, voltage: 230, phases: 'three-phase' },
    outputs: { current: 22, column: 230 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'NEC_430_248'],
  },
  {
    name: 'practice test: 25 hp at 208 V is 74.8 A',
    source: journeymanTest,
    inputs: { power: 25 * horsepower, voltage: 208, phases: 'three-phase' },
    outputs: { current: 74.8, column: 208 },
    tolerance: exact,
  },
  {
    name: 'practice test: 40 hp on a 480 V system is 52 A, of the 460 V column',
    source: journeymanTest,
    inputs: { power: 40 * horsepower, voltage: 480, phases: 'three-phase' },
    outputs: { current: 52, column: 460 },
    tolerance: exact,
  },
  {
    name: 'table 430.248: 3 hp, single phase, at 115 V is 34 A, rated by 746 W a horsepower',
    source: fullLoadTables,
    inputs: { power: 3 * 746, voltage: 120, phases: 'single-phase' },
    outputs: { current: 34, column: 115 },
    tolerance: exact,
  },
  {
    name: 'table 430.250: 1 1/2 hp at 575 V is 2.4 A, and a copy that prints 2.1 A is named',
    source: fullLoadTables,
    inputs: { power: 1.5 * horsepower, voltage: 575, phases: 'three-phase' },
    outputs: { current: 2.4 },
    tolerance: exact,
    notes: ['FULL_LOAD_COPIES_DIFFER'],
  },
];
