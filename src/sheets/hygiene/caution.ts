/** A sentence that always stands under the figures of a sheet. */
export const always = (code: string) => ({ code, broken: (): boolean => true });

/** Stands under every figure of a chemical: label, safety data sheet and those who decide come first. */
export const chemicalCaution = always('CAUTION_CHEMICAL');

/** Stands under every figure of hot water or steam. */
export const heatCaution = always('CAUTION_SCALD');

/** Stands under every figure that speaks of killing germs. */
export const authority = always('HYGIENE_AUTHORITY');
