export { bindShift } from './bind-shift.ts';
export type { BoundShift, NextLoop, StepWorth } from './bound-shift.ts';
export type { LoggedCause, StopLog } from './logged-stops.ts';
export { type LostRow, lostRows, timeByOwner } from './lost-times.ts';
export { type FloorShiftProblemCode, floorShiftProblem, floorShiftProblems } from './problems.ts';
export {
  type AllowedRun,
  type ProofPlan,
  proofPlan,
  type RunMade,
  type RunShown,
  runShown,
} from './proof-run.ts';
export {
  type ChangeWorth,
  changeWorth,
  type ShiftAnswer,
  type ShiftEfficiency,
  type ShiftOptions,
  type Shown,
  shiftAnswer,
} from './shift-answer.ts';
export { causesOf, type ShiftChangeTried, shiftChanges, withFillBy, withoutCause } from './shift-changes.ts';
export { shiftMove } from './shift-move.ts';
export type { LoggedRun, ShiftRecords } from './shift-records.ts';
export type { FillFromTrials } from './trial-fill.ts';
export { type ShiftWashing, shiftWashing, type ZoneContact } from './zone-contacts.ts';
