import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { frequencies } from './bounds.ts';
import { always, caution } from './caution.ts';

/**
 * Synchronous speed of an alternating-current motor.
 *
 * Method   n_s = 2 f/p, which is 120 f/p in rev/min
 * Symbols  f  frequency  scalar  Hz;  p  poles  count  even
 * Returns  rev/s
 * Cost     O(1)
 * Source   definition
 */
export const synchronousSpeed = (frequency: number, poles: number): number => (2 * frequency) / poles;

interface MotorSpeedInputs {
  readonly frequency: number;
  readonly poles: number;
  readonly slip: number;
  readonly gearRatio: number;
}

export const motorSpeedSheet = defineSheet({
  id: 'power/motor-speed',
  version: 1,
  inputs: {
    frequency: numberField('frequency', 'f', frequencies),
    poles: numberField('count', 'p', { least: 2, most: 48 }),
    slip: numberField('ratio', 's', { least: 0, most: 0.99 }),
    gearRatio: numberField('ratio', 'i', { least: 0.01, most: 10000, assumed: 1 }),
  },
  outputs: {
    synchronous: numberField('rotationalSpeed', 'n_s'),
    motor: numberField('rotationalSpeed', 'n'),
    driven: numberField('rotationalSpeed', 'n_2'),
  },
  formula: ['n_s = \\frac{2 f}{p}, \\quad n = n_s (1 - s), \\quad n_2 = \\frac{n}{i}'],
  limits: [caution, always('SPEED_PLATE_GIVES_SLIP')],
  sources: [{ title: 'definition of synchronous speed and slip', place: '120 f/p', mark: 'computed' }],
  check: ({ poles }) =>
    Number.isInteger(poles / 2)
      ? []
      : [{ code: 'POLES_ODD', path: 'poles', given: poles, allowed: '2, 4, 6, 8' }],
  compute: (i: MotorSpeedInputs) => {
    const synchronous = synchronousSpeed(i.frequency, i.poles);
    const motor = synchronous * (1 - i.slip);
    return { synchronous, motor, driven: motor / i.gearRatio };
  },
});
