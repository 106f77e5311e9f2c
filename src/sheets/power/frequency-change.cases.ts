import type { SheetCase } from '../sheet-case.ts';

const affinity = {
  title: 'DOE Fundamentals Handbook, Fluid Flow',
  edition: 'HT-03',
  place: 'p. 50, affinity laws; ratios 5/6 and 6/5 worked by hand',
  mark: 'read',
} as const;
const voltsPerHertz = {
  title: 'public page on a 60 Hz motor on 50 Hz',
  place: '460 V, 60 Hz: 7.667 V/Hz',
  mark: 'read',
} as const;
const leakage = {
  title: 'equivalent circuit with leakage reactance only',
  place: 'worked apart from this program',
  mark: 'computed',
} as const;

const wash = {
  platePower: 4000,
  shaftPower: 3600,
  law: 'pump-or-fan',
  plateFrequency: 50,
  supplyFrequency: 60,
  plateVoltage: 400,
  supplyVoltage: 480,
  serviceFactor: 1,
};

export const frequencyChangeCases: readonly SheetCase[] = [
  {
    name: 'a wash pump from 50 to 60 Hz: 1.2 of the flow, 1.44 of the head, 1.728 of the power, and the plate is passed',
    source: affinity,
    inputs: wash,
    outputs: { speedRatio: 1.2, headRatio: 1.44, shaftPower: 1.728 * 3600, loading: (1.728 * 3600) / 4000 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles' },
    notes: ['CAUTION_ELECTRICAL', 'FREQUENCY_OVERLOADS_MOTOR', 'FREQUENCY_PUMP_FASTER'],
  },
  {
    name: 'a pump from 60 to 50 Hz: 0.833, 0.694, 0.579',
    source: affinity,
    inputs: {
      ...wash,
      plateFrequency: 60,
      supplyFrequency: 50,
      plateVoltage: 480,
      supplyVoltage: 400,
      shaftPower: 1000,
    },
    outputs: { speedRatio: 0.833, headRatio: 0.694, shaftPower: 579 },
    tolerance: { relative: 1e-3, reason: 'three digits' },
    notes: ['FREQUENCY_PUMP_SLOWER'],
  },
  {
    name: 'a conveyor of constant torque from 60 to 50 Hz: five sixths of speed and power, the same torque',
    source: affinity,
    inputs: {
      ...wash,
      law: 'constant-torque',
      plateFrequency: 60,
      supplyFrequency: 50,
      plateVoltage: 480,
      supplyVoltage: 400,
    },
    outputs: { speedRatio: 0.83333, shaftPower: 3000, torqueLoading: 0.9 },
    tolerance: { relative: 1e-5, reason: 'five digits' },
    notes: ['FREQUENCY_LINE_SPEED'],
  },
  {
    name: '460 V of 60 Hz at 50 Hz: flux 1.20, the right voltage is 383.3 V',
    source: voltsPerHertz,
    inputs: { ...wash, plateFrequency: 60, supplyFrequency: 50, plateVoltage: 460, supplyVoltage: 460 },
    outputs: { flux: 1.2, rightVoltage: 383.3 },
    tolerance: { relative: 1e-3, reason: 'three to four digits' },
    notes: ['FREQUENCY_FLUX_HIGH'],
  },
  {
    name: '400 V of 50 Hz at 60 Hz: 0.694 of the greatest torque, 0.833 of the starting current, 0.579 of the starting torque',
    source: leakage,
    inputs: { ...wash, supplyVoltage: 400 },
    outputs: { maximumTorque: 0.6944, startCurrent: 0.8333, startTorque: 0.5787 },
    tolerance: { relative: 1e-3, reason: 'four digits' },
    notes: ['FREQUENCY_FLUX_LOW', 'FREQUENCY_STARTING_FROM_LEAKAGE'],
  },
];
