import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { definition } from './sources.ts';

/**
 * Time for which the sensor of a chute is covered by one cap that goes past.
 *
 * Method   t = s/v
 * Symbols  s  pitch  scalar  m    > 0, of caps that follow each other
 *          v  speed  scalar  m/s  > 0, of the caps at the sensor
 * Returns  time, s; a sensor must see "covered" for longer before the sorter may stop
 * Assumes  caps in single file
 * Cost     O(1)
 * Source   definition
 */
export const capSensorDelay = (pitch: number, speed: number): number => pitch / speed;

interface CapSensorInputs {
  readonly pitch: number;
  readonly speed: number;
}

export const capSensorDelaySheet = defineSheet({
  id: 'rate/cap-sensor-delay',
  version: 1,
  inputs: {
    pitch: numberField('length', 's', { above: 0, most: 1 }),
    speed: numberField('velocity', 'v', { above: 0, most: 100 }),
  },
  outputs: { delay: numberField('time', 't') },
  formula: ['t > \\frac{s}{v}'],
  limits: [{ code: 'CAP_DELAY_LEAST', broken: () => true }],
  sources: [definition],
  compute: ({ pitch, speed }: CapSensorInputs) => ({ delay: capSensorDelay(pitch, speed) }),
});
