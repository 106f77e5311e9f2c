import type { Problem } from '../../quantity/problem.ts';

/** What is wrong with the number of packages drawn from a lot. */
export const drawnProblems = (lotSize: number, drawn: number, path: string): readonly Problem[] => [
  ...(Number.isInteger(lotSize) ? [] : [{ code: 'LOT_NOT_WHOLE', path: 'lotSize', given: lotSize }]),
  ...(drawn > lotSize ? [{ code: 'LOT_MORE_THAN_LOT', path, given: drawn, allowed: `${lotSize}` }] : []),
];
