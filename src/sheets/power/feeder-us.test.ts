import { expect, it } from 'vitest';
import { largestDeviceLimit, motorsAmpacity } from './largest-device-limit.ts';

it('the motor of the largest device need not be the largest motor', () => {
  // the 40 A motors are larger, the 34 A motor has the larger device: published example D8
  expect(largestDeviceLimit([34, 40, 40], [110, 60, 60])).toBe(190);
  expect(motorsAmpacity([34, 40, 40])).toBe(124);
});

it('of two equal devices one counts', () => {
  expect(largestDeviceLimit([10, 10], [30, 30])).toBe(40);
  // the sum that leaves out the larger motor is the smaller, so the stricter, one
  expect(largestDeviceLimit([10, 12], [30, 30])).toBe(40);
});

it('the order of the motors changes nothing', () => {
  expect(largestDeviceLimit([77, 124, 11], [200, 350, 30])).toBe(
    largestDeviceLimit([11, 77, 124], [30, 200, 350]),
  );
  expect(motorsAmpacity([77, 124, 11])).toBe(motorsAmpacity([124, 11, 77]));
});
