export { bindShift } from './bind-shift.ts';
export type { BoundShift, NextLoop, StepWorth } from './bound-shift.ts';
export { type ShiftProblemCode, shiftProblems } from './problems.ts';
