/**
 * Stages of a protocol, in the order of the trade: nothing moves by itself before stops and guards have been shown, and
 * no bottle is run for the count before product runs.
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

export type Stage = (typeof stages)[number];

/** Place of a stage in the order. */
export const stageOrder = (stage: Stage): number => stages.indexOf(stage);
