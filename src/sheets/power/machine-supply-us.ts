import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';
import { commonDeviceProblems, largestDeviceLimit, motorsAmpacity } from './largest-device-limit.ts';
import { necMachineryArticle } from './sources.ts';
import { standardRating } from './standard-device.ts';

interface MachineSupplyUsInputs {
  readonly voltage: number;
  readonly motors: readonly number[];
  readonly devices: readonly number[];
  readonly heating: number;
  readonly apparatus: number;
}

const limit = (i: MachineSupplyUsInputs): number =>
  largestDeviceLimit(i.motors, i.devices) + 1.25 * i.heating + i.apparatus;

const running = (i: MachineSupplyUsInputs): number =>
  i.motors.reduce((sum, motor) => sum + motor, 0) + i.heating + i.apparatus;

/** Supply conductors and main device of one machine, three-phase: NEC 670.4 and NFPA 79. */
export const machineSupplyUsSheet = defineSheet({
  id: 'power/machine-supply-us',
  version: 1,
  inputs: {
    voltage: numberField('voltage', 'U', voltages),
    motors: listField('current', 'I_i', { least: 0.1, most: 1000 }),
    devices: listField('current', 'I_{n,i}', { least: 1, most: 6000 }),
    heating: numberField('current', 'I_h', { ...currents, assumed: 0 }),
    apparatus: numberField('current', 'I_{\\text{app}}', { ...currents, assumed: 0 }),
  },
  outputs: {
    ampacity: numberField('current', 'I_z'),
    deviceLimit: numberField('current', 'I_{\\max}'),
    deviceRating: numberField('current', 'I_n'),
    running: numberField('current', 'I'),
    apparentPower: numberField('apparentPower', 'S'),
  },
  formula: [
    'I_z = 1.25\\, I_h + 1.25\\, \\max_i I_i + \\sum_{\\text{others}} I_i + I_{\\text{app}}',
    'I_{\\max} = \\max_i I_{n,i} + 1.25\\, I_h + \\sum_{\\text{others}} I_i + I_{\\text{app}}, \\quad I_n = \\max \\{ r \\le I_{\\max} \\}',
    'I = \\sum_i I_i + I_h + I_{\\text{app}}, \\quad S = \\sqrt{3}\\, U I',
  ],
  limits: [
    caution,
    always('NEC_670'),
    always('DEVICE_FROM_MEMORY'),
    always('ROUNDED_DOWN'),
    always('CONSERVATIVE_SUM'),
  ],
  sources: [necMachineryArticle],
  check: (i) => commonDeviceProblems(i, limit(i)),
  compute: (i: MachineSupplyUsInputs) => ({
    ampacity: 1.25 * i.heating + motorsAmpacity(i.motors) + i.apparatus,
    deviceLimit: limit(i),
    deviceRating: standardRating(limit(i), 'us-breaker', 'down')!,
    running: running(i),
    apparentPower: Math.sqrt(3) * i.voltage * running(i),
  }),
});
