/** A sentence that always stands under the figures of a sheet. */
export const always = (code: string) => ({ code, broken: (): boolean => true });

/** Stands under every figure of guarding and stopping. */
export const guardingCaution = always('CAUTION_GUARDING');
