import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BranchDevice, branchDevices, branchMotors } from './branch-device-shares.ts';
import { branchDeviceUs } from './branch-device-us.ts';
import { powerEntries } from './entries.ts';
import { feederUsSheet } from './feeder-us.ts';
import { threePhaseRows } from './full-load-currents.ts';
import { groundingConductorUs, groundingSizes } from './grounding-conductor-us.ts';
import { horsepower } from './horsepower.ts';
import { machineSupplyUsSheet } from './machine-supply-us.ts';
import { motorOn50Hz } from './motor-on-50-hz.ts';
import { standardRatings } from './standard-ratings.ts';
import { transformerDeviceUs } from './transformer-device-us.ts';

/** Sheets that choose a size of a list, each with its law here or beside it. */
const choosing = [
  'power/branch-device-us',
  'power/conductor-iec',
  'power/conductor-us',
  'power/feeder-us',
  'power/grounding-conductor-us',
  'power/machine-supply-us',
  'power/motor-on-50-hz',
  'power/standard-device',
  'power/transformer-device-us',
  'power/transformer-size',
  'power/wire-gauge',
];

/** What an autotransformer must be rated for, and a rating that is asked, are of no list. */
const ofNoList = ['power/autotransformer'];

const chosen = /^(size|metric|rating|deviceRating|highestRating)$/;

const amperes = fc.double({ min: 5, max: 400, noNaN: true });
const within = 1 + 1e-9;

const neighbours = (rating: number, list: readonly number[]) => {
  const place = list.indexOf(rating);
  expect(place).toBeGreaterThanOrEqual(0);
  return { smaller: list[place - 1], larger: list[place + 1] };
};

/** The largest of the list within a limit: the next larger one is beyond it. */
const largestWithin = (rating: number, limit: number, list: readonly number[]): void => {
  const { larger } = neighbours(rating, list);
  expect(rating).toBeLessThanOrEqual(limit * within);
  if (larger !== undefined) expect(larger).toBeGreaterThan(limit);
};

/** The least of the list that holds: the next smaller one does not. */
const leastThatHolds = (rating: number, asked: number, list: readonly number[]): void => {
  const { smaller } = neighbours(rating, list);
  expect(rating * within).toBeGreaterThanOrEqual(asked);
  if (smaller !== undefined) expect(smaller).toBeLessThan(asked);
};

const listOf = (device: BranchDevice) =>
  standardRatings[device === 'inverse-time-breaker' ? 'us-breaker' : 'us-fuse'];

describe('a size that is chosen is the last that will do', () => {
  it('in every sheet that chooses one', () => {
    const ids = powerEntries
      .filter(({ sheet }) => Object.keys(sheet.outputs).some((name) => chosen.test(name)))
      .map(({ sheet }) => sheet.id)
      .filter((id) => !ofNoList.includes(id));
    expect(ids.toSorted()).toEqual(choosing);
  });

  it('of the devices of a motor branch, up, and within the ceiling, down', () => {
    const ordered = branchDevices.filter((device) => device !== 'instantaneous-trip-breaker');
    fc.assert(
      fc.property(
        amperes,
        fc.constantFrom(...branchMotors),
        fc.constantFrom(...ordered),
        (current, motor, device) => {
          const answer = branchDeviceUs(current, motor, device)!;
          leastThatHolds(answer.rating, answer.computed, listOf(device));
          if (answer.highestRating > answer.rating) {
            largestWithin(answer.highestRating, answer.ceiling, listOf(device));
          }
        },
      ),
    );
  });

  it('of the devices before a feeder and before a machine, down', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(amperes, fc.constantFrom(20, 45, 110)), { minLength: 1, maxLength: 4 }),
        (all) => {
          const motors = all.map(([current]) => current);
          const devices = all.map(([, device]) => device);
          const feeder = feederUsSheet.compute({ motors, devices, continuous: 0, other: 7 });
          const machine = machineSupplyUsSheet.compute({
            voltage: 460,
            motors,
            devices,
            heating: 12,
            apparatus: 3,
          });
          for (const { deviceRating, deviceLimit } of [feeder, machine]) {
            largestWithin(deviceRating, deviceLimit, standardRatings['us-breaker']);
          }
        },
      ),
    );
  });

  it('of the devices at a transformer, up or down as the rule says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 400, noNaN: true }),
        fc.constantFrom('primary-alone', 'primary-with-secondary', 'secondary'),
        (current, side) => {
          const { rating, limit } = transformerDeviceUs(current, side)!;
          const up = current >= 9 && side !== 'primary-with-secondary';
          (up ? leastThatHolds : largestWithin)(rating, limit, standardRatings['us-fuse']);
        },
      ),
    );
  });

  it('of the grounding conductors', () => {
    const rows = [15, 20, 60, 100, 200, 300, 400, 500, 600, 800];
    for (let device = 1; device <= 800; device += 7) {
      leastThatHolds(rows[groundingSizes.indexOf(groundingConductorUs(device)!)]!, device, rows);
    }
  });

  it('of the plates for 50 Hz, on every supply and in either enclosure', () => {
    const plates = threePhaseRows.map(({ hp }) => hp * horsepower);
    for (const supply of ['190/380/475', '200/400/500', '208/415/520'] as const) {
      for (const enclosure of ['open', 'enclosed'] as const) {
        for (let hp = 0.4; hp < 60; hp += 1.7) {
          const { rating, share } = motorOn50Hz(hp * horsepower, supply, enclosure);
          leastThatHolds(rating!, (hp * horsepower) / share, plates);
        }
      }
    }
  });
});
