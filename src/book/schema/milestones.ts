/**
 * Stages of a protocol, in the order of the trade: nothing moves by itself before stops and guards have been shown, and no
 * bottle is run for the count before product runs.
 *
 * Source   order at site, common practice; IEC 62381:2024 for the tests that it falls into (read in its contents alone)
 */
export const stages = [
  'placed',
  'energised',
  'signals',
  'air',
  'water',
  'stops',
  'dry',
  'wet',
  'product',
  'run',
  'handover',
] as const;

/** What a line passes on its way, in order; a signature names them as they stand here. */
export const gateNames = [
  'ready to run off',
  'ready to ship',
  'ready to travel',
  'ready to energise',
  'ready to produce',
  'accepted',
] as const;

/** What may not begin, or be passed, before a wait is over. */
export const milestones = [...stages, ...gateNames] as const;
