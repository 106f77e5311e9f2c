import type { Book } from '../../book/index.ts';
import { makeTracer } from '../tracer.ts';
import { bindShift } from './bind-shift.ts';
import { changeWorth, goodsOf, type Shown } from './shift-answer.ts';

/**
 * Good bottles a shift that a change of the book gives on one floor, by shifts that met the same chances.
 *
 * Returns  undefined where either book can't be run
 */
export const shiftMove = (
  before: Book,
  after: Book,
  floor: number,
  plan: { readonly format?: string; readonly seed: number; readonly shifts: number },
): Shown | undefined => {
  const one = bindShift(before, floor, plan.format);
  const other = bindShift(after, floor, plan.format);
  if (one.line === undefined || other.line === undefined || plan.shifts < 2) return undefined;
  const { working: _, ...shown } =
    changeWorth(
      makeTracer(),
      goodsOf(one.line, plan.seed, plan.shifts),
      goodsOf(other.line, plan.seed, plan.shifts),
      other.confidence,
    ) ?? {};
  return 'mean' in shown ? shown : undefined;
};
