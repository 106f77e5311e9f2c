import type { Sheet } from './frame.ts';
import type { SheetCase } from './sheet-case.ts';
import type { SheetText } from './sheet-text.ts';

/** A sheet with its evidence and its words. */
export interface SheetEntry {
  readonly sheet: Sheet;
  readonly cases: readonly SheetCase[];
  readonly text: SheetText;
}

/**
 * Puts a sheet, its cases and its words together. The types of its inputs are given up here, and only here:
 * `runSheet` checks every value against its field before the sheet sees it.
 */
export const sheetEntry = <I extends object, O extends object>(
  sheet: Sheet<I, O>,
  cases: readonly SheetCase[],
  text: SheetText,
): SheetEntry => ({ sheet: sheet as unknown as Sheet, cases, text });
