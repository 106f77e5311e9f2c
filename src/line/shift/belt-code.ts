/** What lets a belt run on: a set that begins, or one that is gone and leaves its station to what comes; 0: neither. */
export const nothing = 0;
export const begun = (set: number): number => set + 1;
export const whenGone = (set: number): number => -1 - set;
export const isBegun = (code: number): boolean => code > 0;
export const setOf = (code: number): number => Math.abs(code) - 1;
