import { heatTogetherSheet } from '../../../sheets/heat/heat-together.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Heat of several places; one alone is itself. */
export const heatOfAll = (c: Calculation, heats: readonly (Known | undefined)[]): Known | undefined =>
  heats.length === 1 ? heats[0] : c.run(heatTogetherSheet, { heats })?.heat;
