/** A sentence that always stands under the figures of a sheet. */
export const always = (code: string) => ({ code, broken: (): boolean => true });

/** Stands under every load on a floor. */
export const structuralCaution = always('CAUTION_STRUCTURE');

/** Stands under everything that is moved. */
export const movingCaution = always('CAUTION_MOVING');
