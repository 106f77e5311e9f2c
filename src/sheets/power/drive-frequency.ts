import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { frequencies } from './bounds.ts';
import { caution } from './caution.ts';

/**
 * Frequency at which a drive gives a wanted speed, and the torque it can still give there.
 *
 * Method   f_2 = f_1 n_2/n_1; below the plate the torque is held, above it falls as f_N/f_2
 * Symbols  f_1, f_N  Hz now and on the plate;  n_1, n_2  rev/s now and wanted
 * Returns  Hz, and the share of the rated torque
 * Assumes  slip in proportion, field weakened above the plate's frequency
 * Cost     O(1)
 * Source   volts per hertz kept until the voltage of the supply ends
 */
export const driveFrequency = (frequency: number, speed: number, wanted: number): number =>
  (frequency * wanted) / speed;

interface DriveFrequencyInputs {
  readonly frequency: number;
  readonly speed: number;
  readonly wanted: number;
  readonly plateFrequency: number;
}

export const driveFrequencySheet = defineSheet({
  id: 'power/drive-frequency',
  version: 1,
  inputs: {
    frequency: numberField('frequency', 'f_1', frequencies),
    speed: numberField('rotationalSpeed', 'n_1', { least: 1e-4, most: 1000 }),
    wanted: numberField('rotationalSpeed', 'n_2', { least: 1e-4, most: 1000 }),
    plateFrequency: numberField('frequency', 'f_N', frequencies),
  },
  outputs: {
    frequency: numberField('frequency', 'f_2'),
    torqueShare: numberField('ratio', 'T / T_N'),
    voltageShare: numberField('ratio', 'U / U_N'),
  },
  formula: [
    'f_2 = f_1 \\frac{n_2}{n_1}, \\quad \\frac{T}{T_N} = \\min \\left( 1, \\frac{f_N}{f_2} \\right), \\quad \\frac{U}{U_N} = \\min \\left( 1, \\frac{f_2}{f_N} \\right)',
  ],
  limits: [
    caution,
    {
      code: 'DRIVE_FIELD_WEAK',
      broken: ({ plateFrequency }, { frequency }) => frequency > plateFrequency * (1 + 1e-9),
    },
    {
      code: 'DRIVE_SLOW_COOLING',
      broken: ({ plateFrequency }, { frequency }) => frequency < 0.5 * plateFrequency,
    },
  ],
  sources: [
    {
      title: 'volts per hertz of an induction motor',
      place: 'flux kept, then weakened; derived',
      mark: 'computed',
    },
  ],
  compute: (i: DriveFrequencyInputs) => {
    const frequency = driveFrequency(i.frequency, i.speed, i.wanted);
    return {
      frequency,
      torqueShare: Math.min(1, i.plateFrequency / frequency),
      voltageShare: Math.min(1, frequency / i.plateFrequency),
    };
  },
});
