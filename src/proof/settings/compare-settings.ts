import type { SettingMoment } from '../../record/setting-moments.ts';
import type { RegisterRow, SettingAt, SettingRegister } from './register.ts';
import type { SettingRow } from './setting-row.ts';

/** A setting that is another at the second moment. */
export interface SettingChange {
  readonly row: SettingRow;
  readonly from: SettingAt;
  readonly to: SettingAt;
}

export interface SettingComparison {
  readonly from: SettingMoment;
  readonly to: SettingMoment;
  readonly changed: readonly SettingChange[];
  readonly same: readonly SettingRow[];
  /** Recorded at one of the two moments, or at neither: nobody can tell whether it changed. */
  readonly untold: readonly { readonly row: SettingRow; readonly missing: readonly SettingMoment[] }[];
}

/** Two numbers apart by less than this share of the larger are one, typed in two units. */
const still = 1e-9;

/** Whether two values of one setting are the same, whatever unit they were typed in. */
export const isSameSetting = (a: SettingAt, b: SettingAt): boolean =>
  a.value === undefined || b.value === undefined
    ? a.text.trim() === b.text.trim()
    : Math.abs(a.value - b.value) <= still * Math.max(Math.abs(a.value), Math.abs(b.value));

/** What of the register changed from one moment to another. */
export const compareSettings = (
  { rows }: SettingRegister,
  from: SettingMoment,
  to: SettingMoment,
): SettingComparison => {
  const pairs = rows.map(({ row, at }: RegisterRow) => ({ row, was: at[from], is: at[to] }));
  const both = pairs.flatMap(({ row, was, is }) =>
    was === undefined || is === undefined ? [] : [{ row, from: was, to: is }],
  );
  return {
    from,
    to,
    changed: both.filter((one) => !isSameSetting(one.from, one.to)),
    same: both.filter((one) => isSameSetting(one.from, one.to)).map(({ row }) => row),
    untold: pairs.flatMap(({ row, was, is }) => {
      const missing = [...(was === undefined ? [from] : []), ...(is === undefined ? [to] : [])];
      return missing.length === 0 ? [] : [{ row, missing }];
    }),
  };
};
