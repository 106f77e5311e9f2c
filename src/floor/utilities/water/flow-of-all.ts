import { flowsTogetherSheet } from '../../../sheets/water/flows-together.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Several flows at once; one alone is itself. */
export const flowOfAll = (c: Calculation, flows: readonly (Known | undefined)[]): Known | undefined =>
  flows.length === 1 ? flows[0] : c.run(flowsTogetherSheet, { flows })?.flow;
