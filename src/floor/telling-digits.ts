import type { Finding } from './assessment.ts';

/** Digits that are needed to tell what is there from what is asked: three, more where they nearly agree. */
export const tellingDigits = ({ have, demand }: Finding): number => {
  if (have.value === undefined || demand.value === undefined || demand.value === 0) return 3;
  // whole bottles, as in the large figures above
  if (have.kind === 'rate') return have.value * 3600 < 999.5 ? 3 : 4;
  const apart = Math.abs(have.value / demand.value - 1);
  if (apart === 0) return 3;
  return Math.min(6, Math.max(3, Math.ceil(-Math.log10(apart)) + 1));
};
