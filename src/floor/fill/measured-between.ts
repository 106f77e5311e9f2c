import type { FloorChange, MeasurableCode } from '../../fill/allowances.ts';
import { readEntry } from '../../quantity/read-entry.ts';

/** How a value of all lanes moved from one floor to another, as its record says it: `3 % ± 1 %`. */
export interface MeasuredAllowance {
  /** Tags of the floors. */
  readonly from: string;
  readonly floor: string;
  readonly of: MeasurableCode;
  readonly value: string;
}

/** The measured lines between two floors as shares; of several of one line the last counts. */
export const measuredBetween = (
  allowances: readonly MeasuredAllowance[],
  from: string,
  to: string,
): NonNullable<FloorChange['measured']> =>
  Object.fromEntries(
    allowances.flatMap((one) => {
      // what was measured one way says nothing of the way back
      if (one.from !== from || one.floor !== to) return [];
      const read = readEntry(one.value, 'ratio', { path: one.of });
      return read.ok
        ? [[one.of, { shift: read.value.value as number, deviation: read.value.sd ?? 0 }] as const]
        : [];
    }),
  );
