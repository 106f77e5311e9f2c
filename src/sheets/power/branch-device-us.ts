import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import {
  type BranchDevice,
  type BranchMotor,
  branchDeviceShares,
  branchDevices,
  branchMotors,
} from './branch-device-shares.ts';
import { always, caution } from './caution.ts';
import { necMotorArticle } from './sources.ts';
import { standardRating } from './standard-device.ts';
import { necRatingsTable, type RatingList } from './standard-ratings.ts';

const listOf = (device: BranchDevice): RatingList =>
  device === 'inverse-time-breaker' ? 'us-breaker' : 'us-fuse';

/** Fuses up to this rating may go to 400 %, larger ones to 300 %. */
const largeFuse = 600;

/** Current that no increase may exceed (430.52(C)(1), exceptions 2; of instantaneous trip (C)(3)). */
const ceilingOf = (current: number, motor: BranchMotor, device: BranchDevice): number => {
  switch (device) {
    case 'non-time-delay-fuse':
      return Math.max(Math.min(4 * current, largeFuse), 3 * current);
    case 'time-delay-fuse':
      return 2.25 * current;
    case 'inverse-time-breaker':
      return (current > 100 ? 3 : 4) * current;
    case 'instantaneous-trip-breaker':
      return (motor === 'design-b-energy-efficient' ? 17 : 13) * current;
  }
};

export interface BranchDeviceAnswer {
  readonly share: number;
  readonly computed: number;
  readonly rating: number;
  readonly ceilingShare: number;
  readonly ceiling: number;
  readonly highestRating: number;
}

/**
 * Short-circuit and ground-fault device of one motor by US rules.
 *
 * Method   share of the table current by motor and device; rating: next standard one up;
 *          where the motor doesn't start: greatest standard one within the ceiling, never under the rating.
 *          An instantaneous-trip breaker is set, not chosen: its settings stay unrounded
 * Symbols  current  scalar  A, table full-load current
 * Returns  share, product, rating, share of the ceiling, ceiling, highest rating; undefined beyond the list
 * Cost     O(ratings)
 * Source   NEC 430.52 and table 430.52, 240.6(A)
 */
export const branchDeviceUs = (
  current: number,
  motor: BranchMotor,
  device: BranchDevice,
): BranchDeviceAnswer | undefined => {
  const share = branchDeviceShares[motor][branchDevices.indexOf(device)]!;
  const computed = share * current;
  const ceiling = ceilingOf(current, motor, device);
  const most = ceiling / current;
  if (device === 'instantaneous-trip-breaker') {
    return { share, computed, rating: computed, ceilingShare: most, ceiling, highestRating: ceiling };
  }
  const rating = standardRating(computed, listOf(device), 'up');
  if (rating === undefined) return undefined;
  const highestRating = Math.max(rating, standardRating(ceiling, listOf(device), 'down') ?? rating);
  return { share, computed, rating, ceilingShare: most, ceiling, highestRating };
};

interface BranchDeviceUsInputs {
  readonly current: number;
  readonly motor: BranchMotor;
  readonly device: BranchDevice;
}

export const branchDeviceUsSheet = defineSheet({
  id: 'power/branch-device-us',
  version: 1,
  inputs: {
    current: numberField('current', 'I_{\\mathrm{FLC}}', { least: 0.1, most: 1000 }),
    motor: choiceField<BranchMotor>('\\text{motor}', branchMotors),
    device: choiceField<BranchDevice>('\\text{device}', branchDevices),
  },
  outputs: {
    share: numberField('ratio', 's'),
    computed: numberField('current', 'I_c'),
    rating: numberField('current', 'I_n'),
    ceilingShare: numberField('ratio', 's_{\\max}'),
    ceiling: numberField('current', 'I_{\\max}'),
    highestRating: numberField('current', 'I_{n,\\max}'),
  },
  formula: [
    'I_c = s\\, I_{\\mathrm{FLC}}, \\quad I_n = \\min \\{ r \\ge I_c \\}',
    'I_{\\max} = s_{\\max}\\, I_{\\mathrm{FLC}}, \\quad I_{n,\\max} = \\max \\{ r \\le I_{\\max} \\}',
  ],
  limits: [
    caution,
    always('NEC_430'),
    { code: 'ROUNDED_UP', broken: (_, { computed, rating }) => rating > computed * (1 + 1e-9) },
    {
      code: 'INSTANTANEOUS_TRIP',
      broken: ({ device }) => device === 'instantaneous-trip-breaker',
    },
    always('MARKED_VALUE_WINS'),
  ],
  sources: [necMotorArticle],
  check: ({ current, motor, device }) =>
    branchDeviceUs(current, motor, device) === undefined
      ? [beyondTable('current', current, '6000 A', necRatingsTable)]
      : [],
  compute: (i: BranchDeviceUsInputs) => branchDeviceUs(i.current, i.motor, i.device)!,
});
