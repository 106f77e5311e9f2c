/** What a line passes on its way, in order; a signature names them as they stand here. */
export const gateNames = [
  'ready to run off',
  'ready to ship',
  'ready to travel',
  'ready to energise',
  'ready to produce',
  'accepted',
] as const;

export type GateName = (typeof gateNames)[number];
