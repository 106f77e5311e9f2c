import type { SheetCase } from '../sheet-case.ts';

const table = {
  title: 'BS 7671 table 41.1 (IEC 60364-4-41)',
  edition: '17th',
  place: 'final circuits up to 32 A; public transcription',
  mark: 'read',
} as const;
const ohm = {
  title: 'Ohm’s law with the limit of the rule',
  place: 'hand calculation',
  mark: 'computed',
} as const;
const exact = { relative: 1e-9, reason: 'figures of a table' } as const;
const circuit = { circuit: 'final-up-to-32-a', tripCurrent: 100, residualCurrent: 0.03 };

export const earthFaultLoopCases: readonly SheetCase[] = [
  {
    name: 'TN at 230 V: 0.4 s',
    source: table,
    inputs: { ...circuit, system: 'tn', voltage: 230 },
    outputs: { time: 0.4 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'LOOP_RULE_SET'],
  },
  {
    name: 'TN at 277 V: 0.2 s',
    source: table,
    inputs: { ...circuit, system: 'tn', voltage: 277 },
    outputs: { time: 0.2 },
    tolerance: exact,
  },
  {
    name: 'TN at 120 V: 0.8 s',
    source: table,
    inputs: { ...circuit, system: 'tn', voltage: 120 },
    outputs: { time: 0.8 },
    tolerance: exact,
  },
  {
    name: 'TT at 230 V: 0.2 s',
    source: table,
    inputs: { ...circuit, system: 'tt', voltage: 230 },
    outputs: { time: 0.2 },
    tolerance: exact,
    notes: ['LOOP_TT_DEVICE'],
  },
  {
    name: 'TT at 400 V: 0.07 s',
    source: table,
    inputs: { ...circuit, system: 'tt', voltage: 400 },
    outputs: { time: 0.07 },
    tolerance: exact,
  },
  {
    name: '230 V and a breaker that opens at 160 A: 1.4375 ohm; 30 mA: 1667 ohm of electrode',
    source: ohm,
    inputs: { ...circuit, system: 'tt', voltage: 230, tripCurrent: 160 },
    outputs: { loop: 1.4375, electrode: 1666.67 },
    tolerance: { relative: 1e-5, reason: 'six digits' },
  },
];
