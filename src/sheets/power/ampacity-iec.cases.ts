import type { SheetCase } from '../sheet-case.ts';
import { iecAmpacityTable } from './iec-conductors.ts';

const instruction = {
  title: 'instruction books of compressors quoting IEC 60364-5-52',
  edition: 'method B2',
  place: 'cable tables at 30, 40 and 50 °C, public transcription',
  mark: 'read',
} as const;
const printed = { absolute: 0.5, reason: 'printed in whole amperes, rounded down' } as const;

export const ampacityIecCases: readonly SheetCase[] = [
  {
    name: '4 mm2, B2: 27 A at 30 °C',
    source: instruction,
    inputs: { size: '4 mm2', method: 'b2-multicore', ambient: 303.15, circuits: 1 },
    outputs: { table: 27, allowed: 27 },
    tolerance: printed,
    notes: ['CAUTION_ELECTRICAL', 'IEC_60364_5_52'],
  },
  {
    name: '4 mm2, B2: 23 A at 40 °C',
    source: instruction,
    inputs: { size: '4 mm2', method: 'b2-multicore', ambient: 313.15, circuits: 1 },
    outputs: { allowed: 23 },
    tolerance: printed,
  },
  {
    name: '4 mm2, B2: 19 A at 50 °C',
    source: instruction,
    inputs: { size: '4 mm2', method: 'b2-multicore', ambient: 323.15, circuits: 1 },
    outputs: { allowed: 19 },
    tolerance: printed,
  },
  {
    name: 'three circuits together keep 0.70: 16 mm2 single cores in conduit, 68 A, 47.6 A',
    source: iecAmpacityTable,
    inputs: { size: '16 mm2', method: 'b1-single-core', ambient: 303.15, circuits: 3 },
    outputs: { table: 68, allowed: 47.6 },
    tolerance: { relative: 1e-9, reason: 'figures of two tables' },
  },
  {
    name: 'IEC 60204-1 at 40 °C: 4 mm2, method C, 28 A',
    source: { title: 'IEC 60204-1', place: 'table of ampacities at 40 °C', mark: 'memory' },
    inputs: { size: '4 mm2', method: 'c-multicore', ambient: 313.15, circuits: 1 },
    outputs: { allowed: 28 },
    tolerance: printed,
    notes: ['IEC_METHODS_DIFFER'],
  },
];
