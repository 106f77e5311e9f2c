import type { SheetCase } from '../sheet-case.ts';

/** Packages of 500 mL, defective below 485 mL: `bad` at 480 first or last, the others a little over the label. */
export const halfLitres = (bad: number, all: number): readonly number[] =>
  Array.from({ length: all }, (_, i) => (i < bad ? 480e-6 : 502e-6));

/** A decision of a plan, as the plan prints it. */
export const decided = (
  name: string,
  source: SheetCase['source'],
  inputs: SheetCase['inputs'],
  outputs: SheetCase['outputs'],
): SheetCase => ({
  name,
  source,
  inputs: { quantity: 5e-4, ...inputs },
  outputs,
  tolerance: { absolute: 1e-12, reason: 'counts and words' },
  notes: ['RULE_AUTHORITY'],
});
