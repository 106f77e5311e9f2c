import type { Problem } from '../../quantity/problem.ts';

/** A preset below one pulse cannot be typed: what passes after the count is more than what is wanted. */
export const presetProblems = (preset: number): readonly Problem[] =>
  preset >= 1 ? [] : [{ code: 'PRESET_BELOW_ONE', path: 'afterRun', given: preset, allowed: '>= 1' }];
