import type { WeighedLot } from '../../fill/weighed-lot.ts';

const whole = /^\d{1,6}$/;
const factor = /^\d{1,2}(?:\.\d{1,6})?$/;

/** `12; 0.826; 1`: packages, factor, how many of them may be short; undefined where it is no plan. */
export const typedPlan = (text: string): WeighedLot['typedPlan'] => {
  const [sample = '', by = '', allowed = '', ...more] = text.split(';').map((part) => part.trim());
  const fits = whole.test(sample) && factor.test(by) && whole.test(allowed) && more.length === 0;
  return fits && Number(sample) > 0 && Number(allowed) < Number(sample)
    ? { sample: Number(sample), factor: Number(by), allowed: Number(allowed) }
    : undefined;
};
