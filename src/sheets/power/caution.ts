/** Stands under every figure of power: nothing here replaces those who decide. */
export const caution = { code: 'CAUTION_ELECTRICAL', broken: (): boolean => true } as const;

/** A sentence that always stands under the figures of a sheet, such as the edition of its table. */
export const always = (code: string) => ({ code, broken: (): boolean => true });
