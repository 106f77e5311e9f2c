import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, caution } from './caution.ts';

export type LoopSystem = 'tn' | 'tt';
export type LoopCircuit = 'final-up-to-32-a' | 'distribution-or-over-32-a';

/** Highest voltage to earth of a row in V, seconds in TN and in TT; final circuits up to 32 A. */
const rows: readonly (readonly [number, number, number])[] = [
  [120, 0.8, 0.3],
  [230, 0.4, 0.2],
  [400, 0.2, 0.07],
  [Number.POSITIVE_INFINITY, 0.1, 0.04],
];
/** Distribution and larger circuits, s. */
const longTimes = { tn: 5, tt: 1 } as const;
/** Touch voltage that a residual-current device has to end in TT, V. */
const touchVoltage = 50;

/**
 * Time within which an earth fault must be disconnected.
 *
 * Symbols  voltage  scalar  V to earth, over 50
 * Returns  s
 * Cost     O(rows)
 * Source   IEC 60364-4-41 as in BS 7671 table 41.1; 5 s and 1 s from memory
 */
export const disconnectionTime = (voltage: number, system: LoopSystem, circuit: LoopCircuit): number => {
  if (circuit === 'distribution-or-over-32-a') return longTimes[system];
  const [, tn, tt] = rows.find(([most]) => voltage <= most)!;
  return system === 'tn' ? tn : tt;
};

interface EarthFaultLoopInputs {
  readonly system: LoopSystem;
  readonly circuit: LoopCircuit;
  readonly voltage: number;
  readonly tripCurrent: number;
  readonly residualCurrent: number;
}

export const earthFaultLoopSheet = defineSheet({
  id: 'power/earth-fault-loop',
  version: 1,
  inputs: {
    system: choiceField<LoopSystem>('\\text{system}', ['tn', 'tt']),
    circuit: choiceField<LoopCircuit>('\\text{circuit}', ['final-up-to-32-a', 'distribution-or-over-32-a']),
    voltage: numberField('voltage', 'U_0', { above: 50, most: 1000 }),
    tripCurrent: numberField('current', 'I_a', { least: 0.01, most: 1e5 }),
    residualCurrent: numberField('current', 'I_{\\Delta n}', { least: 0.005, most: 30, assumed: 0.03 }),
  },
  outputs: {
    time: numberField('time', 't'),
    loop: numberField('resistance', 'Z_s'),
    electrode: numberField('resistance', 'R_A'),
  },
  formula: [
    'Z_s\\, I_a \\le U_0 \\Rightarrow Z_s = \\frac{U_0}{I_a}, \\quad R_A\\, I_{\\Delta n} \\le 50\\,\\mathrm{V} \\Rightarrow R_A = \\frac{50\\,\\mathrm{V}}{I_{\\Delta n}}',
    't = \\text{table}(\\text{system}, U_0)',
  ],
  limits: [
    caution,
    always('LOOP_RULE_SET'),
    { code: 'LOOP_LONG_TIMES_FROM_MEMORY', broken: ({ circuit }) => circuit !== 'final-up-to-32-a' },
    { code: 'LOOP_TT_DEVICE', broken: ({ system }) => system === 'tt' },
    always('LOOP_MEASURE_QUALIFIED'),
  ],
  sources: [
    {
      title: 'BS 7671 table 41.1 (IEC 60364-4-41)',
      edition: '17th',
      place: 'final circuits up to 32 A, alternating current; public transcription',
      mark: 'read',
    },
  ],
  compute: (i: EarthFaultLoopInputs) => ({
    time: disconnectionTime(i.voltage, i.system, i.circuit),
    loop: i.voltage / i.tripCurrent,
    electrode: touchVoltage / i.residualCurrent,
  }),
});
