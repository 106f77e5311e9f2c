/** A sentence that always stands under the figures of a sheet. */
export const always = (code: string) => ({ code, broken: (): boolean => true });

/** Stands under every figure of lifting. */
export const liftingCaution = always('CAUTION_LIFTING');
