import type { Kind } from '../../quantity/index.ts';

/** The unit in which a check speaks of a value, where it is another than the usual one of the reader. */
export const checkUnit = (kind: Kind, value: number): string | undefined => {
  if (kind === 'ratio') return '%';
  // a bond is read in milliohms, an insulation in megohms
  if (kind === 'resistance' && Math.abs(value) < 0.1) return 'mohm';
  if (kind === 'resistance' && Math.abs(value) >= 1e6) return 'Mohm';
  return undefined;
};
