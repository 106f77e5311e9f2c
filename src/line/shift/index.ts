export { type HoldRule, waitsForBottles } from '../hold-rule.ts';
export { boundsOf, shiftsWanted } from './bounds-of.ts';
export { checkShift } from './check-shift.ts';
export type { Draw } from './draw.ts';
export { lineAt } from './line-at.ts';
export { meanTimes } from './mean-times.ts';
export { nextWait } from './next-wait.ts';
export { mergeChanges, runChange, shiftChange } from './run-change.ts';
export {
  goodsOfShifts,
  type PartRan,
  type RunAsked,
  type RunPart,
  type RunParts,
  runPart,
  sumsOfShifts,
} from './run-parts.ts';
export { mergeTallies, runShifts } from './run-shifts.ts';
export { shiftFigures } from './shift-figures.ts';
export type * from './shift-line.ts';
export type { BottleGroup, ChuteMoment, LineMoment, StationMoment } from './shift-moment.ts';
export type * from './shift-result.ts';
export type { ChangeTally, ShiftPlan, ShiftTally } from './shift-tally.ts';
export { type LineStop, type Owner, owners, type StopCause, type StopPattern } from './stop-cause.ts';
export { type TimeWorth, timeWorth, type WorthOf } from './time-worth.ts';
export { type ShiftTrace, traceShift } from './trace-shift.ts';
export { workPerBottle } from './work-per-bottle.ts';
