import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { partTimes, stopTimes } from './bounds.ts';
import { guardingCaution } from './caution.ts';
import { iso13855 } from './sources.ts';

interface OverallStopTimeInputs {
  readonly device: number;
  readonly control: number;
  readonly machine: number;
}

/**
 * Time from entering a field, or letting a button go, until the danger has ended.
 *
 * Method   T = t_d + t_c + t_m
 * Symbols  t_d  device   scalar  s  until its output has switched
 *          t_c  control  scalar  s  relays, program cycle, contactors or valves
 *          t_m  machine  scalar  s  until the last part stands
 * Returns  s
 * Assumes  each at its longest; a machine time measured from the device counts the others in, which are then 0
 * Cost     O(1)
 * Source   ISO 13855:2010
 */
export const overallStopTime = ({ device, control, machine }: OverallStopTimeInputs): number =>
  device + control + machine;

export const overallStopTimeSheet = defineSheet({
  id: 'safety/overall-stop-time',
  version: 1,
  inputs: {
    device: numberField('time', 't_d', partTimes),
    control: numberField('time', 't_c', partTimes),
    machine: numberField('time', 't_m', stopTimes),
  },
  outputs: { time: numberField('time', 'T') },
  formula: ['T = t_d + t_c + t_m'],
  limits: [guardingCaution, { code: 'STOP_COUNTED_ONCE', broken: () => true }],
  sources: [iso13855],
  compute: (i: OverallStopTimeInputs) => ({ time: overallStopTime(i) }),
});
