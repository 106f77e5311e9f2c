import type { MeasuredAllowance } from '../fill/measured-between.ts';
import type { WeighedTrial } from '../fill/weighed.ts';

/** A run of the line whose stops were written down, as its record says it. */
export interface LoggedRun {
  /** Tag of the floor. */
  readonly floor: string;
  /** Moments, ISO 8601. */
  readonly from: string;
  readonly to: string;
  /** That came out, those that were rejected counted in. */
  readonly bottles: number;
  readonly format?: string;
  /** Absent where nobody wrote down whether anything stood. */
  readonly stops?: readonly { readonly from: string; readonly to: string; readonly cause: string }[];
}

/** What was recorded on the floors of a book, as far as a shift hangs on it. */
export interface ShiftRecords {
  readonly trials?: readonly WeighedTrial[];
  readonly allowances?: readonly MeasuredAllowance[];
  readonly runs?: readonly LoggedRun[];
}
