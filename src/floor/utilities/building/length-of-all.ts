import { lengthsTogetherSheet } from '../../../sheets/building/lengths-together.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Lengths one behind, beside or above the other. */
export const lengthOfAll = (c: Calculation, lengths: readonly (Known | undefined)[]): Known | undefined =>
  c.run(lengthsTogetherSheet, { lengths })?.length;
