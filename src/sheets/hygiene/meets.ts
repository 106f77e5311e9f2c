/** A figure that was read and turned into another unit still meets the figure that it equals. */
const rounding = 1e-9;

/** Whether a value reaches a least one; a rule that states none asks nothing. */
export const reaches = (value: number, least: number | undefined): boolean =>
  least === undefined || value >= least * (1 - rounding);

/** Whether a value stays within a highest one; a rule that states none asks nothing. */
export const staysWithin = (value: number, most: number | undefined): boolean =>
  most === undefined || value <= most * (1 + rounding);
