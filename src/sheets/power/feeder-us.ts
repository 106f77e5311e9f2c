import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { commonDeviceProblems, largestDeviceLimit, motorsAmpacity } from './largest-device-limit.ts';
import { necMotorArticle } from './sources.ts';
import { standardRating } from './standard-device.ts';

interface FeederUsInputs {
  readonly motors: readonly number[];
  readonly devices: readonly number[];
  readonly continuous: number;
  readonly other: number;
}

const limit = (i: FeederUsInputs): number =>
  largestDeviceLimit(i.motors, i.devices) + 1.25 * i.continuous + i.other;

/** Conductors and device of a feeder with several motors: 430.24 and 430.62, other loads by 430.63. */
export const feederUsSheet = defineSheet({
  id: 'power/feeder-us',
  version: 1,
  inputs: {
    motors: listField('current', 'I_i', { least: 0.1, most: 1000 }),
    devices: listField('current', 'I_{n,i}', { least: 1, most: 6000 }),
    continuous: numberField('current', 'I_{\\text{cont}}', { ...currents, assumed: 0 }),
    other: numberField('current', 'I_{\\text{other}}', { ...currents, assumed: 0 }),
  },
  outputs: {
    ampacity: numberField('current', 'I_z'),
    deviceLimit: numberField('current', 'I_{\\max}'),
    deviceRating: numberField('current', 'I_n'),
  },
  formula: [
    'I_z = 1.25\\, \\max_i I_i + \\sum_{\\text{others}} I_i + 1.25\\, I_{\\text{cont}} + I_{\\text{other}}',
    'I_{\\max} = \\max_i I_{n,i} + \\sum_{\\text{others}} I_i + 1.25\\, I_{\\text{cont}} + I_{\\text{other}}, \\quad I_n = \\max \\{ r \\le I_{\\max} \\}',
  ],
  limits: [
    caution,
    always('NEC_430'),
    always('ROUNDED_DOWN'),
    always('LARGEST_DEVICE'),
    { code: 'FEEDER_OTHER_LOADS_DISPUTED', broken: ({ continuous, other }) => continuous + other > 0 },
  ],
  sources: [necMotorArticle],
  check: (i) => commonDeviceProblems(i, limit(i)),
  compute: (i: FeederUsInputs) => ({
    ampacity: motorsAmpacity(i.motors) + 1.25 * i.continuous + i.other,
    deviceLimit: limit(i),
    deviceRating: standardRating(limit(i), 'us-breaker', 'down')!,
  }),
});
