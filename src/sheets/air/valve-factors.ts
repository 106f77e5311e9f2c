/**
 * Factors of US valve sizing as two public documents print them, read. The compression factor is (p + 14.7)/14.7
 * within a figure of the table, the drop factor 0.978 sqrt(dp p_2) within 1.2 %.
 */
export const valvePressures = ['40', '60', '80', '90', '100'] as const;
export type ValvePressure = (typeof valvePressures)[number];
export const valveLosses = ['2', '5', '10'] as const;
export type ValveLoss = (typeof valveLosses)[number];

/** By the pressure in psig. */
export const compressionFactors: Readonly<Record<ValvePressure, number>> = {
  '40': 3.7,
  '60': 5.1,
  '80': 6.4,
  '90': 7.1,
  '100': 7.8,
};

/** By the pressure in psig, then the loss in psi; what is not printed is not there. */
export const dropFactors: Readonly<Partial<Record<ValvePressure, Partial<Record<ValveLoss, number>>>>> = {
  '80': { '2': 13.2, '5': 20.5, '10': 28.2 },
  '90': { '5': 21.6 },
  '100': { '5': 22.7, '10': 31.3 },
};
