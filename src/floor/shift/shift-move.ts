import type { Book } from '../../book/index.ts';
import { goodsOfShifts, type RunParts } from '../../line/shift/index.ts';
import { makeTracer } from '../tracer.ts';
import { bindShift } from './bind-shift.ts';
import { changeWorth, type Shown } from './shift-answer.ts';
import type { ShiftRecords } from './shift-records.ts';

/**
 * Good bottles a shift that a change of the book gives on one floor, by shifts that met the same chances.
 *
 * Returns  undefined where either book can't be run
 */
export const shiftMove = (
  before: Book,
  after: Book,
  floor: number,
  plan: {
    readonly format?: string;
    readonly recorded?: ShiftRecords;
    readonly seed: number;
    readonly shifts: number;
    readonly runParts?: RunParts;
  },
): Shown | undefined => {
  const one = bindShift(before, floor, plan.format, plan.recorded);
  const other = bindShift(after, floor, plan.format, plan.recorded);
  if (one.line === undefined || other.line === undefined || plan.shifts < 2) return undefined;
  const { working: _, ...shown } =
    changeWorth(
      makeTracer(),
      goodsOfShifts(one.line, plan),
      goodsOfShifts(other.line, plan),
      other.confidence,
    ) ?? {};
  return 'mean' in shown ? shown : undefined;
};
