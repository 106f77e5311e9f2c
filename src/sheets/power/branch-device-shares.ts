/** Share of the full-load current by kind of motor and device. Source: NEC table 430.52, 2008, transcription read. */
export const branchDeviceShares = {
  'single-phase': [3, 1.75, 8, 2.5],
  polyphase: [3, 1.75, 8, 2.5],
  'design-b-energy-efficient': [3, 1.75, 11, 2.5],
  synchronous: [3, 1.75, 8, 2.5],
  'wound-rotor': [1.5, 1.5, 8, 1.5],
  'direct-current': [1.5, 1.5, 2.5, 1.5],
} as const;

export type BranchMotor = keyof typeof branchDeviceShares;
export const branchMotors = Object.keys(branchDeviceShares) as BranchMotor[];

export const branchDevices = [
  'non-time-delay-fuse',
  'time-delay-fuse',
  'instantaneous-trip-breaker',
  'inverse-time-breaker',
] as const;
export type BranchDevice = (typeof branchDevices)[number];
