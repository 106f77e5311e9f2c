import type { SheetCase } from '../sheet-case.ts';

const hp = 745.6998715822702;

export const deratedPlateCases: readonly SheetCase[] = [
  {
    name: 'unbalance of 1.96 %: a motor of 10 hp gives 9.5 hp, whatever its service factor',
    source: {
      title: 'public page on voltage unbalance',
      place: 'worked example of a 10 hp motor',
      mark: 'read',
    },
    inputs: { platePower: 10 * hp, serviceFactor: 1.15, unbalance: 0.95 },
    outputs: { frequency: 1, share: 0.95, power: 9.5 * hp },
    tolerance: { relative: 1e-9, reason: 'the factor is printed as it is used' },
    notes: ['CAUTION_ELECTRICAL', 'DERATED_NO_SERVICE_FACTOR'],
  },
  {
    name: 'enclosed, 460 V 60 Hz on 380 V 50 Hz: 12.5 hp on the plate give 10 hp',
    source: {
      title: 'instruction of a motor maker on 50 Hz operation of 60 Hz motors',
      place: 'worked example, public page',
      mark: 'read',
    },
    inputs: { platePower: 12.5 * hp, speedRatio: 50 / 60, flux: 380 / 50 / (460 / 60), capacity: 0.8 },
    outputs: { frequency: 0.8, share: 0.8, power: 10 * hp },
    tolerance: { relative: 1e-9, reason: 'the share is printed as it is used' },
  },
  {
    name: 'the voltage of the same flux at 50 Hz leaves the torque of the plate, so five sixths of its power',
    source: {
      title: 'torque of an induction motor at constant volts per hertz',
      place: '383.3 V at 50 Hz for 460 V at 60 Hz; 0.8333',
      mark: 'computed',
    },
    inputs: { platePower: 6000, speedRatio: 50 / 60, flux: 1 },
    outputs: { frequency: 0.833333, share: 0.833333, power: 5000 },
    tolerance: { relative: 1e-6, reason: 'six digits' },
  },
  {
    name: '50 degC and 2000 m on 2 % of unbalance: 0.86 times 0.95',
    source: {
      title: 'application manual of a motor maker, and public page on voltage unbalance',
      place: 'their factors, multiplied by hand',
      mark: 'computed',
    },
    inputs: { platePower: 1000, unbalance: 0.95, surroundings: 0.86 },
    outputs: { share: 0.817, power: 817 },
    tolerance: { relative: 1e-9, reason: 'exact product' },
  },
];
